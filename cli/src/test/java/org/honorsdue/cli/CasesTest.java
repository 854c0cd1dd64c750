package org.honorsdue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Whole casefiles, from the typing to the findings. Beside each stands what the law fixes, with the paragraph that does
 * ({@code .expect}, written by somebody who had not seen the rules of this program).
 *
 * <p>A line is {@code award standing on_paper [xN] [device=N ...]}; the folder's README says it all.
 */
class CasesTest {
    private static final Path CASES = Path.of("src/test/resources/cases");
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Examination EXAMINATION = new Examination();

    @TestFactory
    Stream<DynamicTest> every_case_comes_out_as_the_law_has_it() throws IOException {
        List<Path> files;
        try (var listed = Files.list(CASES)) {
            files = listed.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
        assertThat(files).as("casefiles of our own invention").hasSizeGreaterThanOrEqualTo(50);
        return files.stream()
                .map(file -> dynamicTest(
                        name(file),
                        () -> assertThat(differences(file)).as(name(file)).isEmpty()));
    }

    private static String name(Path file) {
        return file.getFileName().toString().replace(".yaml", "").replace('-', ' ');
    }

    private static List<String> differences(Path file) throws IOException {
        var expectations = Files.readAllLines(Path.of(file.toString().replace(".yaml", ".expect"))).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
        assertThat(expectations).as("expectations beside " + file.getFileName()).isNotEmpty();
        var asked = expectations.stream()
                .map(line -> line.replaceFirst("^ask ", "").split(" ")[0])
                .collect(Collectors.toSet());
        var facts = EXAMINATION.read(EXAMINATION.open(file));
        var findings = EXAMINATION.examine(facts, TODAY, Set.of());
        var withAsked = EXAMINATION.examine(facts, TODAY, asked);
        var differences = new ArrayList<String>();
        for (var line : expectations) {
            if (line.startsWith("ask ")) {
                continue;
            }
            difference(line, findings, withAsked).ifPresent(differences::add);
        }
        return differences;
    }

    private static Optional<String> difference(String line, Findings findings, Findings withAsked) {
        var words = line.strip().split("\\s+");
        var standings = List.of(words[1].split("\\|"));
        var found = find(findings, words[0]);
        if (found.isEmpty() && (standings.contains("absent") || words[1].equals("*"))) {
            return Optional.empty();
        }
        // An award that is not listed by itself is still answered when somebody asks.
        var finding = found.or(() -> find(withAsked, words[0]));
        if (finding.isEmpty()) {
            return Optional.of("expected " + line + ", but nothing is said of it");
        }
        String is = describe(finding.get());
        boolean fits = fits(standings, finding.get().standing().id())
                && (words.length < 3
                        || fits(
                                List.of(words[2].split("\\|")),
                                finding.get().onPaper().id()));
        for (int i = 3; i < words.length; i++) {
            fits &= fits(words[i], finding.get(), is);
        }
        return fits ? Optional.empty() : Optional.of("expected " + line + ", but it is " + is);
    }

    private static boolean fits(String word, Finding finding, String described) {
        if (word.equals("*")) {
            return true;
        }
        if (word.startsWith("x")) {
            return finding.count() == Integer.parseInt(word.substring(1));
        }
        if (word.startsWith("no-")) {
            return finding.devices().stream()
                    .noneMatch(worn -> worn.device().id().equals(word.substring(3)));
        }
        return Arrays.asList(described.split(" ")).contains(word);
    }

    private static boolean fits(List<String> wanted, String is) {
        return wanted.contains("*") || wanted.contains(is);
    }

    private static Optional<Finding> find(Findings findings, String award) {
        return findings.findings().stream()
                .filter(finding -> finding.award().equals(award))
                .findFirst();
    }

    private static String describe(Finding finding) {
        var devices = new TreeMap<String, Integer>();
        finding.devices().forEach(worn -> devices.merge(worn.device().id(), worn.count(), Integer::sum));
        return finding.award() + " " + finding.standing().id() + " "
                + finding.onPaper().id() + " x" + finding.count()
                + devices.entrySet().stream()
                        .map(device -> " " + device.getKey() + "=" + device.getValue())
                        .collect(Collectors.joining());
    }
}
