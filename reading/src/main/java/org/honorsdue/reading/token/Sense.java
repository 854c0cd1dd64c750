package org.honorsdue.reading.token;

/**
 * One meaning of a word or phrase.
 *
 * @param id what it names: award, campaign or device id, weapon, place, or the id of a fixed word
 * @param words the meaning in plain words
 * @param note something the reader of the meaning should know; else empty
 * @param standing how surely the words mean this
 */
public record Sense(SenseKind kind, String id, String words, String note, Standing standing) {
    /** How surely the words mean it. */
    public enum Standing {
        /** The name or a usual abbreviation of it. */
        NAME,
        /** A name people use that is not the official one; the note says so. */
        POPULAR,
        /** Wider or narrower than the thing itself: a place for a campaign. Never settles anything alone. */
        LOOSE
    }

    static Sense of(SenseKind kind, String id, String words) {
        return new Sense(kind, id, words, "", Standing.NAME);
    }
}
