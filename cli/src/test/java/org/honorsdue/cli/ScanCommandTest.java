package org.honorsdue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.honorsdue.scanning.recognition.LanguageData;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command does with files and folders; how well it reads is measured in scanning. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ScanCommandTest {
    @TempDir
    Path folder;

    private Path file(String name, String content) throws IOException {
        return Files.writeString(folder.resolve(name), content);
    }

    @Test
    void a_picture_that_is_not_there_is_the_fault_of_the_input() {
        assertThat(Honors.run("scan", folder.resolve("none.jpg").toString(), "-o", "out.yaml"))
                .isEqualTo(2);
    }

    @Test
    void a_casefile_that_exists_is_not_written_over_unasked() throws IOException {
        var picture = file("paper.jpg", "no picture at all");
        var corrected = file("case.yaml", "papers: [] # my corrections\n");
        assertThat(Honors.run("scan", picture.toString(), "-o", corrected.toString()))
                .isEqualTo(2);
        assertThat(corrected).hasContent("papers: [] # my corrections\n");
    }

    @Test
    void a_folder_needs_another_folder_for_its_casefiles() throws IOException {
        file("paper.jpg", "no picture at all");
        assertThat(Honors.run("scan", folder.toString(), "-o", folder.toString()))
                .isEqualTo(2);
        assertThat(Honors.run(
                        "scan", folder.toString(), "-o", file("out.yaml", "").toString()))
                .isEqualTo(2);
    }

    @Test
    void a_folder_is_gone_through_and_what_is_no_picture_is_named() throws IOException {
        assumeTrue(LanguageData.find().isPresent(), LanguageData.HOW_TO_GET_IT);
        var pictures = Files.createDirectory(folder.resolve("pictures"));
        Files.writeString(pictures.resolve("letter.jpg"), "Dear Sir, ...");
        var out = folder.resolve("out");
        assertThat(Honors.run("scan", pictures.toString(), "-o", out.toString()))
                .as("nothing was read")
                .isEqualTo(2);
        assertThat(out.resolve("letter.jpg.not-read.txt")).content().contains("no picture");
        assertThat(Honors.run("scan", pictures.toString(), "-o", out.toString()))
                .isEqualTo(2);
    }
}
