package org.honorsdue.determination.law;

import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.reference.law.LawClause;

/**
 * A clause of the law with the test that asks it of a soldier.
 *
 * @param dated whether the law said so only from or until some day
 */
public record Clause(LawClause law, Test test, boolean dated) {
    public Clause(LawClause law, Test test) {
        this(law, test, law.inForceFrom().isPresent() || law.inForceUntil().isPresent());
    }

    /** A small question about the facts. */
    @FunctionalInterface
    public interface Test {
        Answer about(Dossier soldier);
    }

    public Answer about(Dossier soldier) {
        return test.about(soldier);
    }
}
