package org.honorsdue.determination.crosscheck.points;

import java.util.List;
import java.util.Optional;

/**
 * The score of one paper, worked backwards.
 *
 * @param score as typed
 * @param listed what the paper lists
 * @param solutions every life that gives the score, likeliest first, each sum once
 */
public record PointsSheet(int score, Listed listed, Children children, List<PointsSolution> solutions) {
    public PointsSheet {
        solutions = List.copyOf(solutions);
    }

    public Optional<PointsSolution> likeliest() {
        return solutions.stream().findFirst();
    }

    public boolean fits() {
        return likeliest().map(PointsSolution::fits).orElse(false);
    }
}
