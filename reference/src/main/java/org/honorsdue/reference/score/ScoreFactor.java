package org.honorsdue.reference.score;

import java.time.LocalDate;
import java.util.Optional;
import org.honorsdue.reference.Provenance;

/**
 * One of the four sources of points.
 *
 * @param id {@code service}, {@code overseas}, {@code combat} or {@code parenthood}
 * @param points points for each unit
 * @param unit what is counted, as in {@code month}
 * @param from first day that counts, inclusive; empty where days do not matter
 * @param maximum the most units that count; empty when there is no limit
 */
public record ScoreFactor(
        String id,
        int points,
        String unit,
        Optional<LocalDate> from,
        Optional<Integer> maximum,
        String rule,
        Provenance provenance) {}
