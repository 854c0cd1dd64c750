package org.honorsdue.determination.nextsteps;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.honorsdue.service.fact.PartialDate;

/** Finds the dates in a sentence of our own making: {@code 29 August 1944}, {@code Dec 1944}, {@code 1944-12-19}. */
final class DatesInWords {
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private static final Pattern WORDS = Pattern.compile(
            "(?:\\b(\\d{1,2}) )?\\b(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\\.? (\\d{4})\\b");
    private static final Pattern ISO = Pattern.compile("\\b(\\d{4})-(\\d{2})(?:-(\\d{2}))?\\b");

    private DatesInWords() {}

    /** In the order in which they stand; what looks like a date and is none is left out. */
    static List<PartialDate> in(String sentence) {
        var dates = new ArrayList<PartialDate>();
        var words = WORDS.matcher(sentence);
        while (words.find()) {
            int month = MONTHS.indexOf(words.group(2).toLowerCase(Locale.ROOT)) + 1;
            add(dates, Integer.parseInt(words.group(3)), month, words.group(1) == null ? "" : words.group(1));
        }
        var iso = ISO.matcher(sentence);
        while (iso.find()) {
            add(
                    dates,
                    Integer.parseInt(iso.group(1)),
                    Integer.parseInt(iso.group(2)),
                    iso.group(3) == null ? "" : iso.group(3));
        }
        return dates;
    }

    private static void add(List<PartialDate> dates, int year, int month, String day) {
        try {
            dates.add(
                    day.isEmpty()
                            ? PartialDate.month(YearMonth.of(year, month))
                            : PartialDate.day(LocalDate.of(year, month, Integer.parseInt(day))));
        } catch (DateTimeException noSuchDay) {
            // "31 June 1944" in somebody's statement narrows nothing down, so the question keeps its whole window.
            return;
        }
    }
}
