package org.honorsdue.determination.nextsteps;

import java.util.List;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.ServiceFacts;

/**
 * The open questions of all findings and cross-checks together and the least work that would settle them.
 *
 * @param steps what settles most for least effort first
 * @param beyond questions that no kind of document known to the tables would settle
 * @param questions how many questions the steps settle
 * @param effort of all steps together, as {@link org.honorsdue.reference.paper.ProofDocument#effort} counts it, with
 *     {@value Likely#BURNED} added where the fire took most files and {@value Likely#WEAK} where a paper supports an
 *     award and seldom settles it
 * @param proven whether no easier choice of documents exists; false when the search was cut short
 * @param reasoning how the choice was made, in plain words
 */
public record NextSteps(
        List<Step> steps, List<OpenQuestion> beyond, int questions, int effort, boolean proven, String reasoning) {
    public NextSteps {
        steps = List.copyOf(steps);
        beyond = List.copyOf(beyond);
    }

    /** Works out the steps. Reads no clock; the same findings and facts give the same steps. */
    public static NextSteps of(Findings findings, ServiceFacts facts, Reference reference) {
        return new Planner(facts, reference).plan(findings);
    }
}
