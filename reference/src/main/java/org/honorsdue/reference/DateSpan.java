package org.honorsdue.reference;

import static java.time.temporal.ChronoUnit.DAYS;

import java.time.LocalDate;
import java.util.Optional;

/** A span of calendar days. Both the first and the last day belong to it. */
public record DateSpan(LocalDate first, LocalDate last) {
    public DateSpan {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException(
                    "A span ends %s, before it starts %s. Check whether the two dates were swapped."
                            .formatted(last, first));
        }
    }

    /** The number of days, counting both ends. */
    public long days() {
        return DAYS.between(first, last) + 1;
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }

    public boolean overlaps(DateSpan other) {
        return !first.isAfter(other.last) && !other.first.isAfter(last);
    }

    /** The days both spans share, if any. */
    public Optional<DateSpan> intersection(DateSpan other) {
        if (!overlaps(other)) {
            return Optional.empty();
        }
        return Optional.of(new DateSpan(
                first.isAfter(other.first) ? first : other.first, last.isBefore(other.last) ? last : other.last));
    }
}
