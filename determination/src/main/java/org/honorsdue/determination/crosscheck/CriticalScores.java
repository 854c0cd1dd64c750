package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.score.CriticalScore;

/**
 * The score at which enlisted men and women were let go, from 12 May 1945 to the end of that year, when length of service
 * took its place. Half of the steps and their days are from memory, so a score is measured against the lowest figure in
 * force on the day of separation or within {@value #GRACE} days after it.
 */
final class CriticalScores {
    static final String MEN = "enlisted men";
    static final String WOMEN = "enlisted women";
    private static final int GRACE = 30;
    private static final LocalDate LENGTH_OF_SERVICE_INSTEAD = LocalDate.of(1946, 1, 1);

    private final Reference reference;

    CriticalScores(Reference reference) {
        this.reference = reference;
    }

    /** The lowest figure that may have applied on that day; empty when none was in force or none is known. */
    Optional<CriticalScore> lowest(LocalDate separated, boolean woman) {
        if (!separated.isBefore(LENGTH_OF_SERVICE_INSTEAD)) {
            return Optional.empty();
        }
        var group = woman ? WOMEN : MEN;
        var figures = reference.criticalScores().stream()
                .filter(figure -> figure.who().equals(group))
                .toList();
        // The women's later figures are not in the table: beyond its last day nothing can be said of them.
        boolean known = figures.stream().anyMatch(figure -> figure.heldOn(separated));
        return known
                ? figures.stream()
                        .filter(figure -> heldSoonAfter(figure, separated))
                        .min(Comparator.comparingInt(CriticalScore::points))
                : Optional.empty();
    }

    private static boolean heldSoonAfter(CriticalScore figure, LocalDate day) {
        return !figure.from().isAfter(day.plusDays(GRACE))
                && figure.until().map(until -> !until.isBefore(day)).orElse(true);
    }
}
