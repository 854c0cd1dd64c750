package org.honorsdue.reference.score;

import java.time.LocalDate;
import org.honorsdue.reference.Provenance;

/**
 * A day up to which points were counted.
 *
 * @param day the last day that counts, inclusive
 */
public record RatingDay(LocalDate day, String name, String note, Provenance provenance) {}
