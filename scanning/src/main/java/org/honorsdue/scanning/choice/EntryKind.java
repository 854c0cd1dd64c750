package org.honorsdue.scanning.choice;

import org.honorsdue.service.paper.Entry;

/** What can stand in an entry, as far as it helps to choose between readings. */
public enum EntryKind {
    /** A day: 12 JAN 43. */
    DATE,
    /** Counts without words: years, months and days, a board's number, children. */
    COUNT,
    /** Dollars, or NONE. */
    MONEY,
    /** Mustering-out pay: one, two or three hundred dollars, and its first payment. */
    PAY,
    /** Feet and inches. */
    HEIGHT,
    WEIGHT,
    /** An Army serial number, with or without its letter. */
    SERIAL_NUMBER,
    /** Names of persons and towns, which no list knows. */
    NAMES,
    /** The clerk's usual words, abbreviations and orders. */
    WORDS;

    /** Whether figures, and as a rule nothing else, stand there. */
    public boolean isFigures() {
        return this != NAMES && this != WORDS;
    }

    public static EntryKind of(Entry entry) {
        return switch (entry) {
            case SEPARATED, DATE_OF_BIRTH, INDUCTED, ENLISTED, ENTERED_ACTIVE_SERVICE, ALLOTMENT_ENDS, NEXT_PREMIUM ->
                DATE;
            case DEPENDENTS,
                    LOCAL_BOARD,
                    LENGTH_OF_SERVICE,
                    CONTINENTAL_SERVICE,
                    FOREIGN_SERVICE,
                    EDUCATION,
                    LONGEVITY -> COUNT;
            case MUSTERING_OUT_PAY -> PAY;
            case SOLDIER_DEPOSITS, TRAVEL_PAY, PREMIUM -> MONEY;
            case HEIGHT -> HEIGHT;
            case WEIGHT -> WEIGHT;
            case SERIAL_NUMBER -> SERIAL_NUMBER;
            case NAME,
                    PERMANENT_ADDRESS,
                    PLACE_OF_BIRTH,
                    EMPLOYMENT_ADDRESS,
                    COUNTY_AND_STATE,
                    HOME_ADDRESS,
                    TOTAL_PAY,
                    CIVILIAN_OCCUPATION,
                    PERSONNEL_OFFICER -> NAMES;
            default -> WORDS;
        };
    }
}
