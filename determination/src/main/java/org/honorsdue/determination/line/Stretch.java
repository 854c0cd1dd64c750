package org.honorsdue.determination.line;

import java.time.LocalDate;
import java.util.Optional;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.service.fact.PartialDate;

/** A stretch of time as far as its ends are given; both ends belong to it, a missing end is open. */
public record Stretch(Optional<PartialDate> from, Optional<PartialDate> to) {
    public static Stretch of(DateSpan span) {
        return new Stretch(Optional.of(PartialDate.day(span.first())), Optional.of(PartialDate.day(span.last())));
    }

    /** The days it spans at the most, within the extent of the line; empty when it lies wholly outside. */
    public Optional<DateSpan> within(DateSpan extent) {
        var first = from.map(PartialDate::earliest).orElse(extent.first());
        var last = to.map(PartialDate::latest).orElse(extent.last());
        return last.isBefore(first) ? Optional.empty() : new DateSpan(first, last).intersection(extent);
    }

    /** Whether it may hold a day of the other. */
    boolean mayOverlap(DateSpan span) {
        return !from.map(PartialDate::earliest).orElse(LocalDate.MIN).isAfter(span.last())
                && !to.map(PartialDate::latest).orElse(LocalDate.MAX).isBefore(span.first());
    }
}
