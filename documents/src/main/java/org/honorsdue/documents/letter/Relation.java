package org.honorsdue.documents.letter;

import java.util.Arrays;
import java.util.Optional;

/**
 * How the reader is related to the soldier. Asked once; it answers three different questions, because the offices apply
 * two different tests of next of kin, and families mix them up.
 *
 * <p>Records: National Archives at St. Louis, archival programs (open to all 62 years after separation). Medals: the
 * Army's list as the records center and local guides print it (secondary). Correction: applicant's guide of the Army
 * Board for Correction of Military Records (secondary).
 */
public enum Relation {
    VETERAN("veteran", "the veteran", true, true),
    SPOUSE("spouse", "his or her surviving spouse", true, true),
    ELDEST_CHILD("eldest-child", "the eldest living child", true, true),
    CHILD("child", "a child, not the eldest", false, true),
    PARENT("parent", "a parent", true, true),
    ELDEST_SIBLING("eldest-sibling", "the eldest living brother or sister", true, true),
    SIBLING("sibling", "a brother or sister, not the eldest", false, true),
    ELDEST_GRANDCHILD("eldest-grandchild", "the eldest living grandchild", true, false),
    LEGAL_REPRESENTATIVE("legal-representative", "a legal representative", false, true),
    OTHER("other", "none of these", false, false);

    private final String id;
    private final String words;
    private final boolean freeMedals;
    private final boolean mayAskCorrection;

    Relation(String id, String words, boolean freeMedals, boolean mayAskCorrection) {
        this.id = id;
        this.words = words;
        this.freeMedals = freeMedals;
        this.mayAskCorrection = mayAskCorrection;
    }

    public String id() {
        return id;
    }

    public String words() {
        return words;
    }

    /** Whether the Army's medal list names this relation, all nearer kin being dead. */
    public boolean freeMedals() {
        return freeMedals;
    }

    /** Whether the board's guide lets this relation apply; for a dead veteran with proof of death and of kinship. */
    public boolean mayAskCorrection() {
        return mayAskCorrection;
    }

    public static Optional<Relation> ofId(String id) {
        return Arrays.stream(values())
                .filter(relation -> relation.id.equals(id))
                .findFirst();
    }
}
