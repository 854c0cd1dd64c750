package org.honorsdue.documents.letter;

import java.util.Arrays;
import java.util.Optional;

/**
 * How whoever writes is related to the soldier. Asked once; it answers three different questions, because the offices
 * apply two different tests of next of kin, and families mix them up.
 *
 * <p>Records: National Archives at St. Louis, archival programs (open to all 62 years after separation). Medals: the
 * Army's list as the records center and local guides print it (secondary). Correction: applicant's guide of the Army
 * Board for Correction of Military Records (secondary).
 */
public enum Relation {
    /** Not told yet: letters leave a line for it, and give every rule. */
    NOT_STATED("not-stated", "", "not stated yet", Answer.DEPENDS, Answer.DEPENDS),
    VETERAN("veteran", "I am the veteran.", "the veteran", Answer.YES, Answer.YES),
    SPOUSE("spouse", "I am the surviving spouse.", "the surviving spouse", Answer.YES, Answer.YES),
    ELDEST_CHILD("eldest-child", "I am the eldest living child.", "the eldest living child", Answer.YES, Answer.YES),
    CHILD("child", "I am a child, not the eldest.", "a child who is not the eldest", Answer.NO, Answer.YES),
    PARENT("parent", "I am a parent.", "a parent", Answer.YES, Answer.YES),
    ELDEST_SIBLING(
            "eldest-sibling",
            "I am the eldest living brother or sister.",
            "the eldest living brother or sister",
            Answer.YES,
            Answer.YES),
    SIBLING(
            "sibling",
            "I am a brother or sister, not the eldest.",
            "a brother or sister who is not the eldest",
            Answer.NO,
            Answer.YES),
    ELDEST_GRANDCHILD(
            "eldest-grandchild",
            "I am the eldest living grandchild.",
            "the eldest living grandchild",
            Answer.YES,
            Answer.NO),
    LEGAL_REPRESENTATIVE(
            "legal-representative", "I am the legal representative.", "a legal representative", Answer.NO, Answer.YES),
    OTHER(
            "other",
            "I am not one of the relatives whom the offices list.",
            "somebody outside these lists",
            Answer.NO,
            Answer.NO);

    /** Whether a list names a relation. */
    enum Answer {
        YES,
        NO,
        DEPENDS
    }

    private final String id;
    private final String sentence;
    private final String words;
    private final Answer freeMedals;
    private final Answer mayAskCorrection;

    Relation(String id, String sentence, String words, Answer freeMedals, Answer mayAskCorrection) {
        this.id = id;
        this.sentence = sentence;
        this.words = words;
        this.freeMedals = freeMedals;
        this.mayAskCorrection = mayAskCorrection;
    }

    /** The word that names it on the command line. */
    public String id() {
        return id;
    }

    /** As a letter says it; empty when it is not stated. */
    public String sentence() {
        return sentence;
    }

    /** As a third person says it. */
    public String words() {
        return words;
    }

    /** Whether the Army's medal list names this relation, all nearer kin being dead. */
    Answer freeMedals() {
        return freeMedals;
    }

    /** Whether the board's guide lets this relation apply; for a dead veteran with proof of death and of kinship. */
    Answer mayAskCorrection() {
        return mayAskCorrection;
    }

    public static Optional<Relation> ofId(String id) {
        return Arrays.stream(values())
                .filter(relation -> relation.id.equals(id))
                .findFirst();
    }
}
