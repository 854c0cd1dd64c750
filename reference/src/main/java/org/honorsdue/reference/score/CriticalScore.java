package org.honorsdue.reference.score;

import java.time.LocalDate;
import java.util.Optional;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Provenance;

/**
 * The points that let a group go home.
 *
 * @param who the group, as in {@code enlisted men}
 * @param from first day on which the figure held, inclusive
 * @param until last day, inclusive; empty when no end was found
 */
public record CriticalScore(
        String who, int points, LocalDate from, Optional<LocalDate> until, String note, Provenance provenance) {
    /** Whether the figure held on that day, as far as its end is known. */
    public boolean heldOn(LocalDate day) {
        return !day.isBefore(from)
                && until.map(end -> new DateSpan(from, end).contains(day)).orElse(true);
    }
}
