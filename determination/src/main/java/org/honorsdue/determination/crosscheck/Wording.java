package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.List;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceTotal;

/** Dates, spans and counts in plain words, the same on every machine. */
final class Wording {
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private Wording() {}

    /** {@code 6 Jun 1944}. */
    static String day(LocalDate day) {
        return day.getDayOfMonth() + " " + MONTHS.get(day.getMonthValue() - 1) + " " + day.getYear();
    }

    static String span(DateSpan span) {
        return day(span.first()) + " to " + day(span.last());
    }

    /** As far as it is given: {@code 6 Jun 1944}, {@code Jun 1944}, {@code 1944}. */
    static String date(PartialDate date) {
        if (date.isDay()) {
            return day(date.earliest());
        }
        var text = date.toString();
        if (text.length() == 7) {
            return MONTHS.get(date.earliest().getMonthValue() - 1) + " "
                    + date.earliest().getYear();
        }
        if (text.length() == 4) {
            return text;
        }
        return "between " + day(date.earliest()) + " and " + day(date.latest());
    }

    /** {@code 1 day}, {@code 34 days}. */
    static String days(long days) {
        return many(days, "day");
    }

    /** {@code 1 star}, {@code 3 stars}. */
    static String many(long count, String noun) {
        return count + " " + (count == 1 ? noun : noun + "s");
    }

    /** {@code 1 year 2 months 18 days}; parts that are nothing are left out. */
    static String total(ServiceTotal total) {
        var text = new StringBuilder();
        append(text, total.years(), "year");
        append(text, total.months(), "month");
        append(text, total.days(), "day");
        return text.length() == 0 ? "nothing" : text.toString();
    }

    /** {@code a}, {@code a and b}, {@code a, b and c}. */
    static String list(List<String> items) {
        if (items.size() < 2) {
            return String.join("", items);
        }
        return String.join(", ", items.subList(0, items.size() - 1)) + " and " + items.get(items.size() - 1);
    }

    /** The characters a fact rests on first, or nothing. */
    static String typed(ServiceFact fact) {
        var origins = fact.basis().origins();
        return origins.isEmpty() ? "" : origins.get(0).text();
    }

    static String theater(Theater theater) {
        return switch (theater) {
            case CONTINENTAL_US -> "the continental United States";
            case AMERICAN -> "the American Theater";
            case EAME -> "the European-African-Middle Eastern Theater";
            case ASIATIC_PACIFIC -> "the Asiatic-Pacific Theater";
        };
    }

    private static void append(StringBuilder text, int count, String noun) {
        if (count != 0) {
            text.append(text.length() == 0 ? "" : " ").append(many(count, noun));
        }
    }
}
