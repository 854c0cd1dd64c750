package org.honorsdue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The promises of the command line: exit codes, nothing half-written, the same bytes for the same question. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class HonorsTest {
    private static final Path CASES = Path.of("src/test/resources/cases");

    @TempDir
    Path folder;

    private static Path anyCase() throws IOException {
        try (var files = Files.list(CASES)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void a_sound_casefile_ends_with_0_and_gives_the_same_bytes_each_time() throws IOException {
        Path first = folder.resolve("first.json");
        Path second = folder.resolve("second.json");
        for (Path out : new Path[] {first, second}) {
            assertThat(Honors.run(
                            "examine",
                            anyCase().toString(),
                            "--format",
                            "json",
                            "--as-of",
                            "2026-11-25",
                            "-o",
                            out.toString()))
                    .isZero();
        }
        assertThat(first).hasSameBinaryContentAs(second);
        assertThat(first).content().contains("\"as_of\" : \"2026-11-25\"", "\"summary\"");
    }

    @Test
    void a_faulty_casefile_ends_with_2_and_writes_nothing() throws IOException {
        Path bad = Files.writeString(
                folder.resolve("bad.yaml"), "papers:\n  - form: WD AGO 53-55\n    entries: { grde: Pvt }\n");
        Path out = folder.resolve("out.json");
        assertThat(Honors.run("examine", bad.toString(), "--format", "json", "-o", out.toString()))
                .isEqualTo(2);
        assertThat(out).doesNotExist();
    }

    @Test
    void a_missing_file_an_unknown_award_and_an_unknown_option_end_with_2() {
        assertThat(Honors.run("examine", folder.resolve("nothing.yaml").toString()))
                .isEqualTo(2);
        assertThat(Honors.run("law", "no-such-award")).isEqualTo(2);
        assertThat(Honors.run("examine", "--no-such-option")).isEqualTo(2);
    }

    @Test
    void a_room_that_cannot_open_its_casebook_says_why_and_ends_with_2() throws IOException {
        assertThat(Honors.run("serve", "--database", "mysql://office/honors")).isEqualTo(2);
        assertThat(Honors.run("serve", "--database", "jdbc:postgresql://localhost/honors", "--data", folder.toString()))
                .isEqualTo(2);
        Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear Sir");
        assertThat(Honors.run("serve", "--data", folder.toString(), "--put-back", letter.toString()))
                .isEqualTo(2);
        assertThat(folder.resolve("casebook.db")).doesNotExist();
    }

    @Test
    void a_collection_goes_on_past_a_faulty_file_and_says_what_is_wrong_with_it() throws IOException {
        Path in = Files.createDirectory(folder.resolve("in"));
        Files.copy(anyCase(), in.resolve("good.yaml"));
        Files.writeString(in.resolve("bad.yaml"), "paperz: []\n");
        Path out = folder.resolve("out.jsonl");
        assertThat(Honors.run("batch", in.toString(), "-o", out.toString(), "--as-of", "2026-11-25"))
                .isEqualTo(2);
        assertThat(Files.readAllLines(out)).singleElement().asString().startsWith("{\"input\":\"good.yaml\"");
        assertThat(folder.resolve("out.jsonl.faults")).content().startsWith("bad.yaml, line 1, column 1: ");
        assertThat(folder.resolve("out.jsonl.mark")).doesNotExist();
    }

    @Test
    void a_collection_that_was_stopped_goes_on_where_it_was() throws IOException {
        Path in = Files.createDirectory(folder.resolve("in"));
        Files.copy(anyCase(), in.resolve("a.yaml"));
        Files.copy(anyCase(), in.resolve("b.yaml"));
        Path out = folder.resolve("out.jsonl");
        // As a stopped run leaves it: one item done, then half a line that was never marked as whole.
        String done = "{\"input\":\"a.yaml\",\"result\":{}}\n";
        Files.writeString(folder.resolve("out.jsonl.part"), done + "{\"input\":\"b.ya");
        Files.writeString(folder.resolve("out.jsonl.faults"), "");
        Files.writeString(
                folder.resolve("out.jsonl.mark"),
                "%s 2026-11-25 JSONL 2\n1\n%d\n0\n0\n".formatted(in.toAbsolutePath(), done.length()));
        assertThat(Honors.run("batch", in.toString(), "-o", out.toString(), "--as-of", "2026-11-25"))
                .isZero();
        assertThat(Files.readAllLines(out)).hasSize(2).first().isEqualTo(done.strip());
        assertThat(Files.readAllLines(out).get(1)).startsWith("{\"input\":\"b.yaml\",\"result\":{\"as_of\"");
    }
}
