package org.honorsdue.determination.law;

import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.reference.law.LawClause;

/** A clause of the law with the test that asks it of a soldier. */
public record Clause(LawClause law, Test test) {
    /** A small question about the facts. */
    @FunctionalInterface
    public interface Test {
        Answer about(Dossier soldier);
    }

    public Answer about(Dossier soldier) {
        return test.about(soldier);
    }
}
