package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Crosscheck.Outcome;
import org.honorsdue.reference.Reference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every planted error of each kind is found by the check it belongs to. {@code -Dhonors.planted=2000} plants as many of
 * each as the published recall rests on.
 */
@DisplayName("Planted errors")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PlantedErrorRecallTest {
    private static final int WANTED = Integer.getInteger("honors.planted", 150);
    private static final int SEEDS = WANTED * 400;

    private final Reference reference = Reference.published();
    private final Crosschecks checks = Crosschecks.of(reference);

    @ParameterizedTest
    @EnumSource(PlantedError.class)
    void are_named_every_time(PlantedError error) {
        int planted = 0;
        int disagreed = 0;
        var missed = new ArrayList<Long>();
        for (long seed = 0; seed < SEEDS && planted < WANTED; seed++) {
            var soldier = new InventedSoldier(seed, reference);
            if (error.plantIn(soldier, reference)) {
                planted++;
                var results = checks.run(soldier.facts()).stream()
                        .filter(result -> result.check().equals(error.check))
                        .filter(result -> !result.entries().isEmpty())
                        .toList();
                if (results.stream().anyMatch(result -> result.outcome() == Outcome.DISAGREES)) {
                    disagreed++;
                } else if (!error.check.equals("points-score") || !namedBesideAnother(results)) {
                    missed.add(seed);
                }
            }
        }
        System.out.printf(
                "%-45s %5d planted, %5d disagree, %5d named beside another reading, %d missed%n",
                error, planted, disagreed, planted - disagreed - missed.size(), missed.size());
        assertThat(planted).as("soldiers with room for the error").isPositive();
        // Service and overseas months rounded differently explain a wrong score about once in a hundred.
        assertThat(missed)
                .as("soldiers whose error was not named, of %d", planted)
                .hasSizeLessThanOrEqualTo(error.check.equals("points-score") ? planted / 50 : 0);
        assertThat(disagreed).as("errors that stand alone, of %d", planted).isGreaterThan(planted * 3 / 4);
    }

    /** The score may be the figure of May carried over: then one cannot tell, but the points too many are told. */
    private static boolean namedBesideAnother(List<Crosscheck> results) {
        return results.stream()
                .anyMatch(result -> result.outcome() == Outcome.CANNOT_TELL
                        && result.says().contains("carried over")
                        && result.says().contains("does not follow from the paper"));
    }
}
