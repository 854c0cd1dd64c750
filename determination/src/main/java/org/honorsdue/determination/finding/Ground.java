package org.honorsdue.determination.finding;

import java.util.List;
import org.honorsdue.reference.Citation;
import org.honorsdue.service.fact.Origin;

/**
 * One step of the proof.
 *
 * @param clause id of the law clause, or of the cross-check that touches the award
 * @param says the clause in plain words, with what was found about this soldier
 */
public record Ground(String clause, String says, Citation authority, Verdict verdict, List<Origin> evidence) {
    public Ground {
        evidence = List.copyOf(evidence);
    }
}
