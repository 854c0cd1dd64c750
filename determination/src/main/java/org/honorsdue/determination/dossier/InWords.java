package org.honorsdue.determination.dossier;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import org.honorsdue.service.fact.PartialDate;

/** Dates and numbers as they stand in a sentence. */
public final class InWords {
    private static final String[] MONTHS = {
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December"
    };

    private static final String[] ORDINALS = {
        "no", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"
    };

    private InWords() {}

    /** {@code 29 August 1944}. */
    public static String day(LocalDate day) {
        return day.getDayOfMonth() + " " + MONTHS[day.getMonthValue() - 1] + " " + day.getYear();
    }

    public static String day(long epochDay) {
        return day(LocalDate.ofEpochDay(epochDay));
    }

    /** A day, {@code March 1944}, {@code 1944}, or the two ends. */
    public static String date(PartialDate date) {
        return span(date.earliest().toEpochDay(), date.latest().toEpochDay());
    }

    static String span(long earliest, long latest) {
        if (earliest == latest) {
            return day(earliest);
        }
        if (earliest <= Stretch.LONG_AGO || latest >= Stretch.LONG_AFTER) {
            return "a day not shown";
        }
        var from = LocalDate.ofEpochDay(earliest);
        var to = LocalDate.ofEpochDay(latest);
        if (YearMonth.from(from).equals(YearMonth.from(to))
                && from.getDayOfMonth() == 1
                && to.equals(YearMonth.from(to).atEndOfMonth())) {
            return MONTHS[from.getMonthValue() - 1] + " " + from.getYear();
        }
        if (from.getYear() == to.getYear()
                && from.getDayOfYear() == 1
                && to.getMonthValue() == 12
                && to.getDayOfMonth() == 31) {
            return Integer.toString(from.getYear());
        }
        return "a day from " + day(from) + " to " + day(to);
    }

    /** {@code second}, {@code third}; from the eleventh on in figures. */
    public static String ordinal(int number) {
        return number >= 0 && number < ORDINALS.length ? ORDINALS[number] : String.format(Locale.ROOT, "%dth", number);
    }
}
