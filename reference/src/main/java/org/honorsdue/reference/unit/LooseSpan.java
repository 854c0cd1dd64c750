package org.honorsdue.reference.unit;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.honorsdue.reference.DateSpan;

/** A stretch of time whose ends are known as far as a source gives them; an empty end is open. Both ends belong to it. */
public record LooseSpan(Optional<LooseDate> from, Optional<LooseDate> to) {
    /** Open at both ends. */
    public static final LooseSpan ALWAYS = new LooseSpan(Optional.empty(), Optional.empty());

    public LooseSpan {
        if (from.isPresent()
                && to.isPresent()
                && to.orElseThrow().latest().isBefore(from.orElseThrow().earliest())) {
            throw new IllegalArgumentException(
                    "A span ends %s, before it starts %s. Check whether the two were swapped."
                            .formatted(to.orElseThrow(), from.orElseThrow()));
        }
    }

    /** Whether the two could share a day, the unknown parts of a date taken generously. */
    public boolean mayOverlap(DateSpan span) {
        return !from.map(LooseDate::earliest).orElse(LocalDate.MIN).isAfter(span.last())
                && !to.map(LooseDate::latest).orElse(LocalDate.MAX).isBefore(span.first());
    }

    /** Whether every day of the other span surely lies within this one. An open end counts as without limit. */
    public boolean surelyCovers(DateSpan span) {
        return !from.map(LooseDate::latest).orElse(LocalDate.MIN).isAfter(span.first())
                && !to.map(LooseDate::earliest).orElse(LocalDate.MAX).isBefore(span.last());
    }

    /** The days it spans at the most, when both ends are given. */
    public Optional<DateSpan> widest() {
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new DateSpan(from.orElseThrow().earliest(), to.orElseThrow().latest()));
    }

    /** {@code 6 June 1944 to 9 June 1944}, {@code from June 1944}, {@code to 1945}, one day alone, or empty. */
    public String words() {
        return said(LooseDate::words);
    }

    /** {@code 1944-06-06 to 1944-06-09}, {@code from 1944-06}, {@code to 1945}, one day alone, or empty. */
    public String text() {
        return said(LooseDate::toString);
    }

    private String said(Function<LooseDate, String> as) {
        if (from.isPresent() && from.equals(to)) {
            return as.apply(from.orElseThrow());
        }
        if (from.isPresent() && to.isPresent()) {
            return as.apply(from.orElseThrow()) + " to " + as.apply(to.orElseThrow());
        }
        return from.map(first -> "from " + as.apply(first))
                .or(() -> to.map(last -> "to " + as.apply(last)))
                .orElse("");
    }
}
