package org.honorsdue.determination.crosscheck.points;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;

/**
 * A length of time in whole months and left-over days; thirty days make a month when several are added.
 *
 * @param days 0 to 30
 */
public record MonthsAndDays(int months, int days) {
    public static final MonthsAndDays NONE = new MonthsAndDays(0, 0);

    public MonthsAndDays {
        if (months < 0 || days < 0 || days > 30) {
            throw new IllegalArgumentException("Not a length of time: %d months %d days.".formatted(months, days));
        }
    }

    /** From the first day up to the last, the last not counted; nothing when the last lies before the first. */
    public static MonthsAndDays between(LocalDate first, LocalDate last) {
        if (!first.isBefore(last)) {
            return NONE;
        }
        var period = Period.between(first, last);
        return new MonthsAndDays((int) period.toTotalMonths(), period.getDays());
    }

    public static MonthsAndDays sum(List<MonthsAndDays> parts) {
        if (parts.size() == 1) {
            return parts.get(0);
        }
        int months = parts.stream().mapToInt(MonthsAndDays::months).sum();
        int days = parts.stream().mapToInt(MonthsAndDays::days).sum();
        return new MonthsAndDays(months + days / 30, days % 30);
    }

    /** This length less so many days, thirty to the month; never less than nothing. */
    public MonthsAndDays less(int lostDays) {
        int left = Math.max(0, months * 30 + Math.min(days, 29) - lostDays);
        return new MonthsAndDays(left / 30, left % 30);
    }

    /** The months that score a point each. */
    public int counted(MonthRounding rounding) {
        return switch (rounding) {
            case DROPPED -> months;
            case NEAREST -> days >= 15 ? months + 1 : months;
            case COUNTED_WHOLE -> days > 0 ? months + 1 : months;
        };
    }
}
