package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Crosscheck.Outcome;
import org.honorsdue.reference.Reference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/**
 * A consistent paper raises no alarm. {@code -Dhonors.soldiers=100000} runs as many as the published rate rests on; the
 * ordinary run takes fewer, to stay quick.
 */
@DisplayName("Consistent soldiers")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ConsistentSoldiersTest {
    private static final int SOLDIERS = Integer.getInteger("honors.soldiers", 4000);

    private final Reference reference = Reference.published();
    private final Crosschecks checks = Crosschecks.of(reference);

    @Test
    void raise_no_alarm() {
        var alarms = new TreeMap<String, Integer>();
        var first = new TreeMap<String, String>();
        LongStream.range(0, SOLDIERS).forEach(seed -> {
            for (var result : checks.run(new InventedSoldier(seed, reference).facts())) {
                if (result.outcome() == Outcome.DISAGREES) {
                    alarms.merge(result.check(), 1, Integer::sum);
                    first.putIfAbsent(result.check(), "soldier " + seed + ": " + result.says());
                }
            }
        });
        assertThat(alarms)
                .as("false alarms in %d soldiers; the first of each: %s", SOLDIERS, first)
                .isEmpty();
    }

    /** A silent check raises no false alarm either, so each must be seen to speak. */
    @Test
    void every_check_finds_something_to_agree_with() {
        Map<String, Long> agreements = new TreeMap<>();
        LongStream.range(0, 1000)
                .forEach(seed -> checks.run(new InventedSoldier(seed, reference).facts()).stream()
                        .filter(result -> result.outcome() == Outcome.AGREES)
                        .map(Crosscheck::check)
                        .forEach(check -> agreements.merge(check, 1L, Long::sum)));
        // One needs a badge in two entries, the other a real unit: no invented soldier has them.
        var silent = Set.of("qualifications-against-decorations", "campaign-unit");
        assertThat(checks.ids().stream().filter(id -> !silent.contains(id)))
                .allSatisfy(
                        id -> assertThat(agreements.getOrDefault(id, 0L)).as(id).isPositive());
    }
}
