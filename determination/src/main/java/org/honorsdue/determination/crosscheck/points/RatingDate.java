package org.honorsdue.determination.crosscheck.points;

import java.time.LocalDate;

/** The two days up to which service was counted for the score. Nothing earned by time after the day counts. */
public enum RatingDate {
    /** The first computation, 12 May 1945. Source: Time, 1945, on the readjustment day. */
    FIRST(LocalDate.of(1945, 5, 12)),
    /** The second, after the surrender of Japan, 2 September 1945. Source: Time, 17 September 1945. */
    SECOND(LocalDate.of(1945, 9, 2));

    private final LocalDate day;

    RatingDate(LocalDate day) {
        this.day = day;
    }

    public LocalDate day() {
        return day;
    }
}
