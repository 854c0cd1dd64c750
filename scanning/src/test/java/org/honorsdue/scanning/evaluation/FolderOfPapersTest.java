package org.honorsdue.scanning.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.honorsdue.scanning.Notice;
import org.honorsdue.scanning.PictureFolder;
import org.honorsdue.scanning.Scan;
import org.honorsdue.scanning.ScannedEntry;
import org.honorsdue.scanning.ScannedPaper;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.form.FormLayout;
import org.honorsdue.scanning.form.FormPage;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder of pictures that do hold papers: what is written, and what is never written over. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FolderOfPapersTest {
    private static Optional<FormPage> page = Optional.empty();

    @TempDir
    Path pictures;

    @TempDir
    Path output;

    private String name = "TOLLEFSBY CARL H";

    @BeforeAll
    static void a_form_without_typing() {
        var blank = new BlankForm(FormLayout.of(Form.ENLISTED_53_55), 0.5, new Random(1));
        page = FormPage.find(Gray.of(blank.picture));
        assertThat(page).isPresent();
    }

    @BeforeEach
    void two_pictures() throws IOException {
        Files.writeString(pictures.resolve("a.jpg"), "picture a");
        Files.writeString(pictures.resolve("b.jpg"), "picture b");
    }

    private Scan scan(Path file) {
        if (file.endsWith("b.jpg")) {
            return new Scan(List.of(), List.of(new Notice(Notice.Kind.HANDWRITING, "nothing typed")), false);
        }
        var entry = new ScannedEntry(Entry.NAME, name, name, List.of(), 0.9, Set.of(), new Area(100, 300, 600, 100));
        var paper = new ScannedPaper(Form.ENLISTED_53_55, 1, Map.of(Entry.NAME, entry), List.of(), page.orElseThrow());
        return new Scan(List.of(paper), List.of(), false);
    }

    private PictureFolder.Outcome run(Optional<Path> crops) throws IOException {
        return new PictureFolder(pictures, output, crops).run(this::scan, PictureFolder.Progress.SILENT);
    }

    @Test
    void a_casefile_for_what_was_read_and_a_reason_for_what_was_not() throws IOException {
        var outcome = run(Optional.of(output.resolve("boxes")));
        assertThat(outcome.done()).isEqualTo(1);
        assertThat(outcome.refused()).isEqualTo(1);
        assertThat(output.resolve("a.jpg.yaml")).content().contains("name: \"TOLLEFSBY CARL H\"");
        assertThat(output.resolve("b.jpg.not-read.txt")).hasContent("nothing typed");
        assertThat(output.resolve("b.jpg.yaml")).doesNotExist();
        assertThat(output.resolve("boxes/a.jpg/1-name.png")).isNotEmptyFile();
    }

    @Test
    void a_casefile_that_a_person_corrected_is_kept_when_the_picture_changes() throws IOException {
        run(Optional.empty());
        var casefile = output.resolve("a.jpg.yaml");
        Files.writeString(casefile, Files.readString(casefile).replace("CARL", "KARL"));
        Files.writeString(pictures.resolve("a.jpg"), "a better photograph");
        name = "TOLLEFSBY CARL B";
        run(Optional.empty());
        assertThat(casefile).content().contains("KARL H");
        assertThat(output.resolve("a.jpg.read-again.yaml")).content().contains("CARL B");
    }

    @Test
    void a_casefile_that_nobody_touched_follows_the_picture() throws IOException {
        run(Optional.empty());
        Files.writeString(pictures.resolve("a.jpg"), "a better photograph");
        name = "TOLLEFSBY CARL B";
        run(Optional.empty());
        assertThat(output.resolve("a.jpg.yaml")).content().contains("CARL B");
        assertThat(output.resolve("a.jpg.read-again.yaml")).doesNotExist();
    }

    @Test
    void work_without_the_memory_of_it_is_not_written_over_either() throws IOException {
        run(Optional.empty());
        var casefile = output.resolve("a.jpg.yaml");
        Files.writeString(casefile, Files.readString(casefile).replace("CARL", "KARL"));
        Files.delete(output.resolve(PictureFolder.STATE));
        run(Optional.empty());
        assertThat(casefile).content().contains("KARL");
    }
}
