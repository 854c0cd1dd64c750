package org.honorsdue.reading.token;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.PartialDate;
import org.jspecify.annotations.Nullable;

/**
 * A date as typed.
 *
 * @param to one past its last word
 * @param date null when no year is typed
 */
public record TypedDate(
        int to, @Nullable PartialDate date, Certainty certainty, String note, List<String> alternatives) {
    static TypedDate plain(int to, PartialDate date) {
        return new TypedDate(to, date, Certainty.PLAIN, "", List.of());
    }

    /** {@code 15 December 1944}, {@code December 1944}, {@code 1944}. */
    String words() {
        return date == null ? "day and month without a year" : words(date);
    }

    static String words(PartialDate date) {
        if (date.isDay()) {
            return words(date.earliest());
        }
        var month = YearMonth.from(date.earliest());
        if (date.equals(PartialDate.month(month))) {
            return name(month.getMonthValue()) + " " + month.getYear();
        }
        if (date.equals(PartialDate.year(month.getYear()))) {
            return Integer.toString(month.getYear());
        }
        return words(date.earliest()) + " or " + words(date.latest());
    }

    static String words(LocalDate day) {
        return day.getDayOfMonth() + " " + name(day.getMonthValue()) + " " + day.getYear();
    }

    private static String name(int month) {
        return java.time.Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
