package org.honorsdue.determination.finding;

/** How an award stands. */
public enum Standing {
    /** The law's conditions are met by what the papers and the evidence show. */
    AUTHORIZED("authorized"),
    /** The normal case points to it; one named fact is not shown. */
    PRESUMED("presumed"),
    /** It could be; the needs say exactly what would decide it. */
    UNSETTLED("unsettled"),
    /** A condition fails. */
    NOT_AUTHORIZED("not-authorized");

    private final String id;

    Standing(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }
}
