package org.honorsdue.determination.unit;

import java.util.Optional;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.PartialDate;

/**
 * One assignment of his to a unit of the tables.
 *
 * @param id the most specific id, as in {@code infantry-regiment-331/company-b}
 */
public record Stint(Assignment assignment, String id, Unit unit) {
    /** Whether days of the assignment are given, so that his presence can be shown or ruled out. */
    public boolean dated() {
        return assignment.from().isPresent() || assignment.to().isPresent();
    }

    /** Whether he surely was a member on some day from {@code first} to {@code last}. */
    boolean surelyTouches(long first, long last) {
        if (assignment.from().isEmpty() || assignment.to().isEmpty()) {
            return inside(assignment.from(), first, last) || inside(assignment.to(), first, last);
        }
        return latest(assignment.from()) <= last && earliest(assignment.to()) >= first;
    }

    /** Whether he may have been a member on some day from {@code first} to {@code last}. */
    boolean mayTouch(long first, long last) {
        return assignment.from().map(date -> date.earliest().toEpochDay()).orElse(Long.MIN_VALUE) <= last
                && assignment.to().map(date -> date.latest().toEpochDay()).orElse(Long.MAX_VALUE) >= first;
    }

    /** Whether he surely was a member on every day from {@code first} to {@code last}. */
    boolean surelyCovers(long first, long last) {
        return assignment.from().isPresent()
                && assignment.to().isPresent()
                && latest(assignment.from()) <= first
                && earliest(assignment.to()) >= last;
    }

    private static boolean inside(Optional<PartialDate> date, long first, long last) {
        return date.map(day ->
                        day.earliest().toEpochDay() >= first && day.latest().toEpochDay() <= last)
                .orElse(false);
    }

    private static long earliest(Optional<PartialDate> date) {
        return date.orElseThrow().earliest().toEpochDay();
    }

    private static long latest(Optional<PartialDate> date) {
        return date.orElseThrow().latest().toEpochDay();
    }
}
