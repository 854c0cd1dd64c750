package org.honorsdue.reading.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.honorsdue.reference.unit.UnitTables;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/**
 * Organizations of an outside examiner, who wrote the units expected before the reader was run on any of them; the
 * figures of that first run stand in the head of {@code organization-blind.tsv}.
 */
@DisplayName("Organizations nobody had seen")
@DisplayNameGeneration(ReplaceUnderscores.class)
class OrganizationBlindTest {
    private final OrganizationReader reader = new OrganizationReader(UnitTables.published());
    private final List<OrganizationCorpus.Line> lines = OrganizationCorpus.lines("organization-blind.tsv");

    @Test
    void are_read_as_meant_for_at_least_the_share_measured() {
        assertThat(lines).hasSize(260);
        double odd = share(1);
        double even = share(0);
        System.out.printf("organization blind: odd %.1f %%, even %.1f %% right%n", odd, even);
        assertThat(odd).as("share right, odd").isGreaterThanOrEqualTo(99.0);
        assertThat(even).as("share right, even").isGreaterThanOrEqualTo(97.5);
    }

    @Test
    void are_never_matched_wrongly_in_silence() {
        var wrong = lines.stream()
                .filter(line -> line.silentlyWrong(reader.read(line.typed())))
                .toList();
        System.out.printf(
                "organization blind: wrong in silence %d odd, %d even%n",
                wrong.stream().filter(line -> line.number() % 2 == 1).count(),
                wrong.stream().filter(line -> line.number() % 2 == 0).count());
        assertThat(wrong).as("lines given a wrong unit without a doubt").isEmpty();
    }

    private double share(int parity) {
        var half = lines.stream().filter(line -> line.number() % 2 == parity).toList();
        long right = half.stream()
                .filter(line -> line.readRight(reader.read(line.typed())))
                .count();
        if (Boolean.getBoolean("show.wrong") && parity == 1) {
            half.stream()
                    .filter(line -> !line.readRight(reader.read(line.typed())))
                    .forEach(line -> show(line, reader.read(line.typed())));
        }
        return 100.0 * right / half.size();
    }

    private static void show(OrganizationCorpus.Line line, OrganizationReading reading) {
        System.out.printf(
                "%d\t%s\texpected %s %s\tread %s %s %s unread %s%s%n",
                line.number(),
                line.typed(),
                line.kind(),
                line.expected(),
                reading.outcome(),
                reading.certainty(),
                reading.chain(),
                reading.unread(),
                line.silentlyWrong(reading) ? "\tSILENT" : "");
    }
}
