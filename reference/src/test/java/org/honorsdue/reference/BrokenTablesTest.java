package org.honorsdue.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.honorsdue.reference.table.TableFault;
import org.honorsdue.reference.table.TableFaults;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The folder {@code tables/broken} holds one folder for each mistake, named for it: the tables that differ from the
 * sound ones, or the name of one to leave out, and word for word what must be said.
 */
@DisplayName("A broken table")
@DisplayNameGeneration(ReplaceUnderscores.class)
class BrokenTablesTest {
    private static final Path TABLES = resource("tables");

    @TempDir
    Path folder;

    @Test
    void is_not_among_the_sound_ones() throws IOException {
        lay(TABLES.resolve("sound"), folder);
        Reference reference = Reference.from(folder);
        assertThat(reference.awards()).hasSize(2);
        assertThat(reference.clausesOf("purple-heart")).hasSize(2);
        assertThat(reference.theater(Theater.EAME)).isPresent();
        assertThat(reference.theater(Theater.CONTINENTAL_US)).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> is_refused_word_for_word() throws IOException {
        List<Path> mistakes;
        try (Stream<Path> folders = Files.list(TABLES.resolve("broken"))) {
            mistakes = folders.sorted().toList();
        }
        assertThat(mistakes).isNotEmpty();
        return mistakes.stream()
                .map(mistake -> dynamicTest(mistake.getFileName().toString().replace('-', ' '), () -> {
                    Path tables = folder.resolve(mistake.getFileName());
                    lay(TABLES.resolve("sound"), tables);
                    lay(mistake, tables);
                    Path leaveOut = tables.resolve("leave-out.txt");
                    if (Files.exists(leaveOut)) {
                        Files.delete(tables.resolve(Files.readString(leaveOut).strip()));
                    }
                    List<String> expected = Files.readAllLines(mistake.resolve("expected.txt"));
                    assertThat(expected).isNotEmpty();
                    assertThatThrownBy(() -> Reference.from(tables))
                            .asInstanceOf(InstanceOfAssertFactories.type(TableFaults.class))
                            .extracting(refused -> refused.faults().stream()
                                    .map(TableFault::text)
                                    .toList())
                            .isEqualTo(expected);
                }));
    }

    @Test
    void is_reported_with_all_the_others_in_one_message() throws IOException {
        lay(TABLES.resolve("sound"), folder);
        lay(TABLES.resolve("broken").resolve("faults-in-three-tables"), folder);
        assertThatThrownBy(() -> Reference.from(folder))
                .isInstanceOf(TableFaults.class)
                .hasMessageStartingWith("4 faults in the tables, nothing was loaded:")
                .hasMessageContainingAll(
                        "clauses.csv line 4, column in_force_from: \"1932-22-02\"",
                        "places.csv line 3, column aliases:",
                        "places.csv line 4, column occupation: \"sometimes\"",
                        "items.csv line 3, column counts: \"maybe\"");
    }

    @Test
    void is_a_folder_with_nothing_in_it() {
        assertThatThrownBy(() -> Reference.from(folder))
                .asInstanceOf(InstanceOfAssertFactories.type(TableFaults.class))
                .extracting(refused -> refused.faults().stream()
                        .map(TableFault::what)
                        .distinct()
                        .toList())
                .isEqualTo(List.of("The table is missing."));
    }

    private static void lay(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
    }

    private static Path resource(String name) {
        try {
            return Path.of(Objects.requireNonNull(BrokenTablesTest.class.getResource(name), name)
                    .toURI());
        } catch (URISyntaxException e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }
}
