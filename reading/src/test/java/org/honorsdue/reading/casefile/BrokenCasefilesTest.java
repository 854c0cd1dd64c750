package org.honorsdue.reading.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.honorsdue.reference.Reference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A folder of casefiles, each named for its mistake; beside each the messages it must bring, word for word. Expected
 * messages: our own wording, no outside source.
 */
@DisplayName("Every mistake in a casefile has its message")
class BrokenCasefilesTest {
    static Stream<Path> casefiles() throws IOException, URISyntaxException {
        try (Stream<Path> files = Files.list(folder())) {
            return files.filter(file -> !file.toString().endsWith(".txt")).sorted().toList().stream();
        }
    }

    private static Path folder() throws URISyntaxException {
        return Path.of(Objects.requireNonNull(BrokenCasefilesTest.class.getResource("broken"))
                .toURI());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("casefiles")
    void is_refused_with_its_messages(Path casefile) throws IOException {
        String name = casefile.getFileName().toString();
        Path expected = casefile.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ".txt");
        assertThat(messages(Files.readAllBytes(casefile)))
                .as(name)
                .isEqualTo(Files.readAllLines(expected, StandardCharsets.UTF_8));
    }

    private static List<String> messages(byte[] file) {
        return CasefileFile.read(file, Reference.published())
                .answer(
                        accepted -> List.of(),
                        refused -> refused.faults().stream()
                                .map(CasefileFault::text)
                                .toList());
    }
}
