package org.honorsdue.reading.token;

/** What a word or phrase names. */
public enum SenseKind {
    AWARD,
    DEVICE,
    CAMPAIGN,
    /** Marksman, sharpshooter, expert. */
    LEVEL,
    /** A weapon, by the bar it earns. */
    WEAPON,
    PLACE,
    THEATER,
    COMPONENT,
    ARM,
    GRADE,
    UNIT,
    /** A kind of order or its issuer. */
    ORDER,
    MONTH,
    SCHOOL,
    SPECIALTY,
    /** A rating of character. */
    CHARACTER,
    /** None, not applicable: the clerk says that there is nothing. */
    NOTHING,
    /** Words that join others: with, and, for. */
    LINK,
    /** A fixed word of remarks, dates or pay, by its id. */
    TERM,
    /** Known from the table of abbreviations; carries no fact by itself. */
    WORD;

    private final int bit = 1 << ordinal();

    int bit() {
        return bit;
    }
}
