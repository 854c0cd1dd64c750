package org.honorsdue.determination.finding;

/** The answer of one clause. Unknown is an answer and not a no. */
public enum Verdict {
    MET("met"),
    NOT_MET("not-met"),
    UNKNOWN("unknown");

    private final String id;

    Verdict(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    /** A failed part decides, whatever else is open. */
    public Verdict and(Verdict other) {
        if (this == NOT_MET || other == NOT_MET) {
            return NOT_MET;
        }
        return this == UNKNOWN || other == UNKNOWN ? UNKNOWN : MET;
    }

    /** A met part decides, whatever else is open. */
    public Verdict or(Verdict other) {
        if (this == MET || other == MET) {
            return MET;
        }
        return this == UNKNOWN || other == UNKNOWN ? UNKNOWN : NOT_MET;
    }

    public Verdict not() {
        return switch (this) {
            case MET -> NOT_MET;
            case NOT_MET -> MET;
            case UNKNOWN -> UNKNOWN;
        };
    }
}
