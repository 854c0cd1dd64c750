package org.honorsdue.reference.history;

import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Theater;

/**
 * The dates and the limits of one theatre, as the law on its medal gives them.
 *
 * @param medal id of the campaign medal
 * @param dates service in the theatre counts from the first to the last day, both inclusive
 * @param east its eastern limit in words
 * @param west its western limit in words
 */
public record TheaterWindow(
        Theater theater,
        String name,
        String medal,
        DateSpan dates,
        String east,
        String west,
        String note,
        Provenance provenance) {}
