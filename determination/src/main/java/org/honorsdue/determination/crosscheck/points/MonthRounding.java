package org.honorsdue.determination.crosscheck.points;

/**
 * What becomes of a part of a month. No text was seen that fixes it; only {@link #COUNTED_WHOLE} reproduces the one
 * complete published example, so it is preferred and the others are tried.
 */
public enum MonthRounding {
    COUNTED_WHOLE("part-months counted whole"),
    NEAREST("part-months of 15 days and more counted whole"),
    DROPPED("part-months dropped");

    private final String words;

    MonthRounding(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
