package org.honorsdue.reference.law;

import java.time.LocalDate;
import java.util.Optional;
import org.honorsdue.reference.Citation;

/**
 * One clause of the law on one award, in our own words.
 *
 * @param id unique, award id first, as in {@code eame-campaign-medal/assigned-in-theater}
 * @param award award id
 * @param role what the clause does
 * @param text one plain sentence
 * @param citation publication, pinpoint, edition and grade of verification
 * @param inForceFrom first day on which the law said so, whatever earlier service it covers; empty: as old as the award
 * @param inForceUntil last day on which the law said so; empty: still does
 * @param source what was read, by the name of the publication
 * @param note where texts differ: which is followed and why; else empty
 */
public record LawClause(
        String id,
        String award,
        Role role,
        String text,
        Citation citation,
        Optional<LocalDate> inForceFrom,
        Optional<LocalDate> inForceUntil,
        String source,
        String note) {
    /** What a clause does. */
    public enum Role {
        /** A condition to be met. */
        CONDITION,
        /** A bar: if it applies, the award is not due. */
        EXCLUSION,
        /** What is worn, and when. */
        DEVICE,
        /** A consequence of later law. */
        LATER_LAW,
        /** Told to the reader; decides nothing. */
        NOTE
    }

    /** Whether the clause was law on that day. */
    public boolean inForceOn(LocalDate day) {
        return inForceFrom.map(from -> !day.isBefore(from)).orElse(true)
                && inForceUntil.map(until -> !day.isAfter(until)).orElse(true);
    }
}
