package org.honorsdue.casebook;

/** Somebody else changed the case in the meantime; nothing was saved. */
public final class StaleRevision extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient KeptCase current;

    StaleRevision(KeptCase current, int startedFrom) {
        super(
                "This case was changed elsewhere (revision %d; yours started from %d). Nothing of yours was saved over it:"
                                .formatted(current.revision(), startedFrom)
                        + " look at the newer state, then save yours again.");
        this.current = current;
    }

    /** The case as it stands now. */
    public KeptCase current() {
        return current;
    }
}
