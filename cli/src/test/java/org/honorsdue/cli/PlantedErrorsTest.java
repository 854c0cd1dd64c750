package org.honorsdue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.honorsdue.determination.crosscheck.Crosschecks;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Crosscheck.Outcome;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Casefiles with one planted inconsistency each, from the typed words to the cross-check that must name it and the boxes
 * it lies in. What is expected stands beside each file, written by somebody else than the checks.
 */
@DisplayName("Papers with one planted error")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PlantedErrorsTest {
    private static final Reference REFERENCE = Reference.published();
    private static final CasefileReader READER = new CasefileReader(REFERENCE, UnitReader.published());
    private static final Crosschecks CHECKS = Crosschecks.of(REFERENCE);

    /** What the file beside a casefile expects. */
    private record Expected(List<Finding> disagrees, Set<String> may) {
        /** A check, and for each box it must point to the names that will do. */
        record Finding(String check, List<Set<String>> entries) {}

        static Expected parse(List<String> lines) {
            var disagrees = new ArrayList<Finding>();
            var may = new TreeSet<String>();
            for (var line : lines) {
                var words = line.strip().split("\\s+");
                if (words[0].equals("disagrees")) {
                    disagrees.add(new Finding(
                            words[1],
                            Arrays.stream(words[2].split(","))
                                    .<Set<String>>map(names -> Set.of(names.split("\\|")))
                                    .toList()));
                } else if (words[0].equals("may")) {
                    may.add(words[1]);
                } else {
                    assertThat(line).as("a line of an .expect file").startsWith("#");
                }
            }
            return new Expected(disagrees, may);
        }
    }

    @TestFactory
    Stream<DynamicTest> are_named_with_the_box_they_lie_in() {
        return casefiles("planted").map(file -> DynamicTest.dynamicTest(name(file), () -> planted(file)));
    }

    private static void planted(Path file) throws IOException {
        var expected = Expected.parse(Files.readAllLines(beside(file)));
        assertThat(expected.disagrees()).isNotEmpty();
        var disagreements = disagreements(file);
        for (var wanted : expected.disagrees()) {
            assertThat(disagreements).as("disagreements of %s", wanted.check()).anySatisfy(result -> {
                assertThat(result.check()).isEqualTo(wanted.check());
                var entries =
                        result.entries().stream().map(entry -> entry.key()).toList();
                assertThat(wanted.entries())
                        .allSatisfy(names -> assertThat(entries).containsAnyElementsOf(names));
            });
        }
        var allowed = new TreeSet<>(expected.may());
        expected.disagrees().forEach(wanted -> allowed.add(wanted.check()));
        assertThat(disagreements)
                .as("no other box is accused")
                .allSatisfy(result -> assertThat(allowed).contains(result.check()));
    }

    /**
     * The casefiles of the law were written without a thought of cross-checks. Those named here contradict themselves on
     * purpose; no other may be accused of anything.
     */
    @TestFactory
    Stream<DynamicTest> no_other_paper_is_accused() {
        var onPurpose = Map.of(
                "036", Set.of("theater-ribbon"),
                "048", Set.of("good-conduct"),
                "051", Set.of("star-count"),
                "052", Set.of("star-count"),
                "057", Set.of("wounds-against-purple-heart"),
                "058", Set.of("wounds-against-purple-heart"),
                "071", Set.of("date-order"),
                "072", Set.of("star-count"));
        return casefiles("cases")
                .map(file -> DynamicTest.dynamicTest(
                        name(file),
                        () -> assertThat(disagreements(file))
                                .extracting(Crosscheck::check)
                                .allMatch(onPurpose.getOrDefault(
                                        file.getFileName().toString().substring(0, 3), Set.of())::contains)));
    }

    private static List<Crosscheck> disagreements(Path file) throws IOException {
        var casefile = CasefileFile.read(Files.readAllBytes(file), REFERENCE)
                .answer(accepted -> accepted.casefile(), refused -> {
                    throw new AssertionError(file + " was refused: " + refused);
                });
        return CHECKS.run(READER.read(casefile)).stream()
                .filter(result -> result.outcome() == Outcome.DISAGREES)
                .toList();
    }

    private static Stream<Path> casefiles(String folder) {
        var resource = PlantedErrorsTest.class.getClassLoader().getResource(folder);
        assertThat(resource).as("folder of casefiles " + folder).isNotNull();
        try (var files = Files.list(Path.of(resource.toURI()))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new AssertionError(e);
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".yaml", "").replace('-', ' ');
    }

    private static Path beside(Path file) {
        return file.resolveSibling(file.getFileName().toString().replace(".yaml", ".expect"));
    }
}
