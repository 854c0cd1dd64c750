package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;

/**
 * The score at which enlisted men and women were let go, week by week from 12 May 1945 to the end of that year, when
 * length of service took its place. Half of the steps are from memory, so a score is measured against the lowest figure
 * in force within {@value #GRACE} days of the separation.
 */
final class CriticalScores {
    private static final int GRACE = 14;
    private static final LocalDate BEGIN = LocalDate.of(1945, 5, 12);
    private static final LocalDate LENGTH_OF_SERVICE_INSTEAD = LocalDate.of(1946, 1, 1);
    private static final Provenance TIME =
            new Provenance("Time, 17 September 1945, critical scores of 2 September 1945", Grade.SECONDARY);
    private static final Provenance MEMORY = new Provenance("memory of the later lowerings", Grade.MEMORY);
    private static final List<Step> MEN = List.of(
            new Step(BEGIN, 85, new Provenance("Time, 21 May 1945, interim critical score", Grade.SECONDARY)),
            new Step(
                    LocalDate.of(1945, 9, 2),
                    75,
                    new Provenance(
                            "80 by Time, 17 September 1945; 75 by two unit histories; the lower is used",
                            Grade.SECONDARY)),
            new Step(LocalDate.of(1945, 10, 1), 70, MEMORY),
            new Step(
                    LocalDate.of(1945, 11, 1),
                    60,
                    new Provenance("60 in November 1945 by a soldier's papers; the day from memory", Grade.SECONDARY)),
            new Step(LocalDate.of(1945, 12, 1), 55, MEMORY),
            new Step(LocalDate.of(1945, 12, 31), 50, MEMORY));
    private static final List<Step> WOMEN =
            List.of(new Step(BEGIN, 44, MEMORY), new Step(LocalDate.of(1945, 9, 2), 41, TIME));
    /** The women's figure was lowered too; by how much is not known, so it is used for September 1945 only. */
    private static final LocalDate WOMEN_UNTIL = LocalDate.of(1945, 9, 30);

    private CriticalScores() {}

    /** The score from that day on. */
    record Step(LocalDate from, int points, Provenance source) {}

    /** The lowest figure that may have applied on that day; empty when none was in force or none is known. */
    static Optional<Step> lowest(LocalDate separated, boolean woman) {
        if (separated.isBefore(BEGIN)
                || !separated.isBefore(LENGTH_OF_SERVICE_INSTEAD)
                || woman && separated.isAfter(WOMEN_UNTIL)) {
            return Optional.empty();
        }
        var steps = woman ? WOMEN : MEN;
        return steps.stream()
                .filter(step -> !step.from().isAfter(separated.plusDays(GRACE)))
                .reduce((earlier, later) -> later);
    }
}
