package org.honorsdue.scanning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(ReplaceUnderscores.class)
class PictureFolderTest {
    @TempDir
    Path pictures;

    @TempDir
    Path output;

    private final List<String> read = new ArrayList<>();

    @BeforeEach
    void twenty_pictures() throws IOException {
        for (int i = 10; i < 30; i++) {
            Files.writeString(pictures.resolve(i + ".jpg"), "picture " + i);
        }
    }

    private Scan scan(Path file) {
        read.add(file.getFileName().toString());
        return new Scan(List.of(), List.of(new Notice(Notice.Kind.NOT_THIS_FORM, "no boxes")), false);
    }

    @Test
    void a_run_that_is_stopped_goes_on_where_it_was() throws IOException {
        var folder = new PictureFolder(pictures, output, Optional.empty());
        var first = folder.run(this::scan, (name, became, done, of) -> done < 7);
        assertThat(first.stopped()).isTrue();
        assertThat(read).hasSize(7);
        read.clear();
        var second = folder.run(this::scan, PictureFolder.Progress.SILENT);
        assertThat(read).hasSize(13).doesNotContain("10.jpg", "16.jpg").contains("17.jpg");
        assertThat(second.skipped()).isEqualTo(7);
        assertThat(second.stopped()).isFalse();
        assertThat(second.refused()).isEqualTo(20);
    }

    @Test
    void a_picture_that_was_changed_is_read_again() throws IOException {
        var folder = new PictureFolder(pictures, output, Optional.empty());
        folder.run(this::scan, PictureFolder.Progress.SILENT);
        read.clear();
        Files.writeString(pictures.resolve("12.jpg"), "a better photograph");
        folder.run(this::scan, PictureFolder.Progress.SILENT);
        assertThat(read).containsExactly("12.jpg");
    }

    @Test
    void a_picture_that_was_stopped_in_the_middle_is_not_called_done() throws IOException {
        var folder = new PictureFolder(pictures, output, Optional.empty());
        var outcome = folder.run(
                file -> file.endsWith("15.jpg") ? new Scan(List.of(), List.of(), true) : scan(file),
                PictureFolder.Progress.SILENT);
        assertThat(outcome.stopped()).isTrue();
        read.clear();
        folder.run(this::scan, PictureFolder.Progress.SILENT);
        assertThat(read).startsWith("15.jpg").hasSize(15);
    }

    @Test
    void every_picture_is_answered_and_the_originals_stay_as_they_were() throws IOException {
        new PictureFolder(pictures, output, Optional.empty()).run(this::scan, PictureFolder.Progress.SILENT);
        assertThat(output.resolve("10.jpg.not-read.txt")).hasContent("no boxes");
        assertThat(Files.readString(pictures.resolve("10.jpg"))).isEqualTo("picture 10");
        try (var files = Files.list(output)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .hasSize(21)
                    .contains(PictureFolder.STATE);
        }
    }
}
