package org.honorsdue.determination.nextsteps;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** A run of months, both ends inclusive, any one of which would answer a question. */
record Window(YearMonth first, YearMonth last) {
    Window {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("A window ends in %s, before it begins in %s.".formatted(last, first));
        }
    }

    static Window of(LocalDate first, LocalDate last) {
        return new Window(YearMonth.from(first), YearMonth.from(last.isBefore(first) ? first : last));
    }

    boolean contains(YearMonth month) {
        return !month.isBefore(first) && !month.isAfter(last);
    }

    List<YearMonth> months() {
        var months = new ArrayList<YearMonth>();
        for (var month = first; !month.isAfter(last); month = month.plusMonths(1)) {
            months.add(month);
        }
        return months;
    }
}
