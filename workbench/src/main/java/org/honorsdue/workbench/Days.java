package org.honorsdue.workbench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.honorsdue.service.fact.PartialDate;

/** Days and moments in the words of the pages. */
public final class Days {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

    private Days() {}

    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** A moment in the time of this machine. */
    public static String moment(Instant moment) {
        return MOMENT.withZone(ZoneId.systemDefault()).format(moment);
    }

    /** A date as far as it is known. */
    public static String partial(PartialDate date) {
        if (date.isDay()) {
            return day(date.earliest());
        }
        if (date.equals(PartialDate.month(YearMonth.from(date.earliest())))) {
            return MONTH.format(date.earliest());
        }
        if (date.equals(PartialDate.year(date.earliest().getYear()))) {
            return Integer.toString(date.earliest().getYear());
        }
        return day(date.earliest()) + " to " + day(date.latest());
    }
}
