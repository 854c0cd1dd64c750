package org.honorsdue.reference.unit;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * A date as far as a source gives it: a day, a month or a year. The true day lies between the two ends, both inclusive.
 */
public record LooseDate(LocalDate earliest, LocalDate latest) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("yyyy", Locale.ENGLISH);

    public LooseDate {
        if (latest.isBefore(earliest)) {
            throw new IllegalArgumentException(
                    "The latest day %s lies before the earliest day %s.".formatted(latest, earliest));
        }
    }

    /**
     * Reads {@code 1944}, {@code 1944-06} or {@code 1944-06-06}.
     *
     * @throws IllegalArgumentException when it is none of these
     */
    public static LooseDate parse(String text) {
        try {
            switch (text.length()) {
                case 4 -> {
                    int year = Integer.parseInt(text);
                    return new LooseDate(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
                }
                case 7 -> {
                    var month = YearMonth.parse(text);
                    return new LooseDate(month.atDay(1), month.atEndOfMonth());
                }
                case 10 -> {
                    var day = LocalDate.parse(text);
                    return new LooseDate(day, day);
                }
                default -> throw new IllegalArgumentException(notADate(text));
            }
        } catch (DateTimeException | NumberFormatException e) {
            throw new IllegalArgumentException(notADate(text), e);
        }
    }

    private static String notADate(String text) {
        return "\"%s\" is not a date. Write yyyy, yyyy-MM or yyyy-MM-dd.".formatted(text);
    }

    public boolean isDay() {
        return earliest.equals(latest);
    }

    /** As people write it: {@code 6 June 1944}, {@code June 1944} or {@code 1944}. */
    public String words() {
        return (isDay() ? DAY : earliest.getMonth() == latest.getMonth() ? MONTH : YEAR).format(earliest);
    }

    /** As it was written: a day, a month or a year. */
    @Override
    public String toString() {
        if (isDay()) {
            return earliest.toString();
        }
        return earliest.getMonth() == latest.getMonth()
                ? YearMonth.from(earliest).toString()
                : Integer.toString(earliest.getYear());
    }
}
