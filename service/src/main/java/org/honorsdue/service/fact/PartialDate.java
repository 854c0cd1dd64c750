package org.honorsdue.service.fact;

import java.time.LocalDate;
import java.time.YearMonth;

/**
 * A date as far as it is given: a day, a month, or a year. The true day lies between the two ends, both inclusive.
 */
public record PartialDate(LocalDate earliest, LocalDate latest) implements Comparable<PartialDate> {
    public PartialDate {
        if (latest.isBefore(earliest)) {
            throw new IllegalArgumentException(
                    "The latest day %s lies before the earliest day %s.".formatted(latest, earliest));
        }
    }

    public static PartialDate day(LocalDate day) {
        return new PartialDate(day, day);
    }

    public static PartialDate month(YearMonth month) {
        return new PartialDate(month.atDay(1), month.atEndOfMonth());
    }

    public static PartialDate year(int year) {
        return new PartialDate(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
    }

    /** Whether the very day is known. */
    public boolean isDay() {
        return earliest.equals(latest);
    }

    @Override
    public int compareTo(PartialDate other) {
        int byStart = earliest.compareTo(other.earliest);
        return byStart != 0 ? byStart : latest.compareTo(other.latest);
    }

    /** {@code 1945-03-06} for a day, {@code 1945-03} for a month, {@code 1945} for a year, else both ends. */
    @Override
    public String toString() {
        if (isDay()) {
            return earliest.toString();
        }
        var month = YearMonth.from(earliest);
        if (month(month).latest.equals(latest) && earliest.getDayOfMonth() == 1) {
            return month.toString();
        }
        if (year(earliest.getYear()).equals(new PartialDate(earliest, latest))) {
            return Integer.toString(earliest.getYear());
        }
        return earliest + "/" + latest;
    }
}
