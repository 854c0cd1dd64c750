package org.honorsdue.reading.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.honorsdue.reference.unit.UnitTables;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** The corpus is the outside source: its writer had not seen the reader. The odd lines were looked at while tuning. */
@DisplayName("Organizations as clerks typed them")
@DisplayNameGeneration(ReplaceUnderscores.class)
class OrganizationCorpusTest {
    private final OrganizationReader reader = new OrganizationReader(UnitTables.published());

    @Test
    void nearly_every_line_is_read_as_meant() {
        List<OrganizationCorpus.Line> lines = OrganizationCorpus.lines();
        assertThat(lines).hasSizeGreaterThan(400);
        long odd = share(lines, 1);
        long even = share(lines, 0);
        System.out.printf("organization corpus: odd lines %d, even lines %d per thousand right%n", odd, even);
        assertThat(odd).isGreaterThanOrEqualTo(990);
        assertThat(even).isGreaterThanOrEqualTo(945);
    }

    private long share(List<OrganizationCorpus.Line> lines, int parity) {
        var half = lines.stream().filter(line -> line.number() % 2 == parity).toList();
        var wrong = half.stream()
                .filter(line -> !line.readRight(reader.read(line.typed())))
                .toList();
        if (Boolean.getBoolean("show.wrong") && parity == 1) {
            wrong.forEach(line -> {
                var reading = reader.read(line.typed());
                System.out.printf(
                        "%d\t%s\t%s\tread %s %s unread %s%n",
                        line.number(),
                        line.typed(),
                        line.expected(),
                        reading.outcome(),
                        reading.chain(),
                        reading.unread());
            });
        }
        return (half.size() - wrong.size()) * 1000L / half.size();
    }

    @Test
    void no_line_is_matched_wrongly_in_silence() {
        var wrong = OrganizationCorpus.lines().stream()
                .filter(line -> line.silentlyWrong(reader.read(line.typed())))
                .map(line ->
                        line.typed() + " read as " + reader.read(line.typed()).meaning())
                .toList();
        assertThat(wrong).isEmpty();
    }

    @Test
    void a_line_means_the_same_in_another_clerks_hand() {
        var differing = new java.util.ArrayList<String>();
        int tried = 0;
        for (var line : OrganizationCorpus.lines()) {
            if (line.number() % 2 == 0 || !line.readRight(reader.read(line.typed()))) {
                continue;
            }
            for (var way : Perturbations.all().entrySet()) {
                String typed = way.getValue().apply(line.typed());
                if (typed.equals(line.typed())) {
                    continue;
                }
                tried++;
                if (!line.readRight(reader.read(typed))) {
                    differing.add(way.getKey() + ": " + typed + " -> "
                            + reader.read(typed).chain());
                }
            }
        }
        System.out.printf("another hand: %d of %d differ%n", differing.size(), tried);
        if (Boolean.getBoolean("show.wrong")) {
            differing.forEach(System.out::println);
        }
        assertThat(differing.size()).isLessThan(tried / 100);
    }
}
