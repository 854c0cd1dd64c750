package org.honorsdue.scanning.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.honorsdue.scanning.CasefileForReview;
import org.honorsdue.scanning.Notice;
import org.honorsdue.scanning.PaperScanner;
import org.honorsdue.scanning.Scan;
import org.honorsdue.scanning.ScanLimits;
import org.honorsdue.scanning.ScanWatcher;
import org.honorsdue.scanning.recognition.LanguageData;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few generated pages, read whole. The truth is what the generator typed; the large set is {@link Evaluation}. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ReadingPagesTest {
    @TempDir
    Path folder;

    private record Read(int entries, int exact, int letters, int wrong) {}

    private Read read(GeneratedPage page) throws Exception {
        var data = LanguageData.find();
        assumeTrue(data.isPresent(), LanguageData.HOW_TO_GET_IT);
        try (var scanner = PaperScanner.with(data.get(), ScanLimits.USUAL)) {
            var scan = scanner.scan(page.save(folder), ScanWatcher.SILENT);
            assertThat(scan.papers()).as("papers; %s", scan.notices()).hasSize(1);
            var paper = scan.papers().get(0);
            assertThat(paper.form()).isEqualTo(page.form());
            int entries = 0;
            int exact = 0;
            int letters = 0;
            int wrong = 0;
            for (var each : page.truth().entrySet()) {
                var truth = Errors.plain(each.getValue());
                if (truth.isEmpty() || each.getKey() == Entry.LENGTH_OF_SERVICE) {
                    continue;
                }
                var entry = paper.entries().get(each.getKey());
                var text = entry == null ? "" : Errors.plain(entry.text());
                int off = Errors.distance(text, truth);
                entries++;
                exact += off == 0 ? 1 : 0;
                letters += truth.length();
                wrong += off;
            }
            assertThat(CasefileForReview.yaml(scan.papers(), scan.notices()))
                    .contains("form: " + page.form().title());
            return new Read(entries, exact, letters, wrong);
        }
    }

    @Test
    void a_clean_scan_of_the_enlisted_form_comes_out_nearly_right() throws Exception {
        var page = GeneratedPage.draw(3, TypeFace.committed("courier-prime", false), Wear.FLATBED_CLEAN);
        assertThat(page.form()).isEqualTo(Form.ENLISTED_53_55);
        var read = read(page);
        assertThat(read.wrong * 100.0 / read.letters).isLessThan(5);
        assertThat(read.exact * 100.0 / read.entries).isGreaterThan(70);
    }

    private Scan scan(BufferedImage picture, String name) throws Exception {
        var data = LanguageData.find();
        assumeTrue(data.isPresent(), LanguageData.HOW_TO_GET_IT);
        var file = folder.resolve(name);
        ImageIO.write(picture, "png", file.toFile());
        try (var scanner = PaperScanner.with(data.get(), ScanLimits.USUAL)) {
            return scanner.scan(file, ScanWatcher.SILENT);
        }
    }

    private static GeneratedPage page(int number, Wear wear) {
        return GeneratedPage.draw(number, TypeFace.committed("courier-prime", false), wear);
    }

    @Test
    void a_photostat_in_an_unseen_face_comes_out_nearly_right_and_is_called_white_on_black() throws Exception {
        var page = GeneratedPage.draw(21, TypeFace.committed("special-elite", true), Wear.PHOTOSTAT_POOR);
        var scan = scan(page.picture(), "photostat.png");
        assertThat(scan.notices()).anyMatch(notice -> notice.says().contains("white on black"));
        var read = read(page);
        assertThat(read.exact * 100.0 / read.entries).isGreaterThan(75);
    }

    @Test
    void half_a_page_is_read_as_far_as_it_goes_and_the_missing_boxes_are_named() throws Exception {
        var whole = page(4, Wear.FLATBED_CLEAN);
        var half = whole.picture()
                .getSubimage(0, 0, whole.picture().getWidth(), whole.picture().getHeight() * 6 / 10);
        var scan = scan(half, "half.png");
        assertThat(scan.papers()).as("%s", scan.notices()).hasSize(1);
        assertThat(scan.notices()).anyMatch(notice -> notice.kind() == Notice.Kind.INCOMPLETE);
        var entries = scan.papers().get(0).entries();
        assertThat(entries).containsKey(Entry.GRADE).doesNotContainKey(Entry.REMARKS);
        assertThat(Errors.plain(entries.get(Entry.GRADE).text()))
                .isEqualTo(Errors.plain(whole.truth().get(Entry.GRADE)));
    }

    @Test
    void two_papers_side_by_side_are_read_one_by_one() throws Exception {
        var left = page(3, Wear.FLATBED_CLEAN).picture();
        var right = page(5, Wear.FLATBED_CLEAN).picture();
        var both = new BufferedImage(
                left.getWidth() + right.getWidth(),
                Math.max(left.getHeight(), right.getHeight()),
                BufferedImage.TYPE_BYTE_GRAY);
        both.getGraphics().drawImage(left, 0, 0, null);
        both.getGraphics().drawImage(right, left.getWidth(), 0, null);
        var scan = scan(both, "both.png");
        assertThat(scan.papers()).as("%s", scan.notices()).hasSize(2);
        assertThat(scan.notices()).anyMatch(notice -> notice.kind() == Notice.Kind.SEVERAL_PAPERS);
    }

    @Test
    void the_certificate_side_is_told_from_a_page_of_boxes() throws Exception {
        var sheet = new BufferedImage(1700, 2200, BufferedImage.TYPE_BYTE_GRAY);
        var pen = sheet.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, 1700, 2200);
        pen.setColor(Color.BLACK);
        pen.setFont(new Font(Font.SERIF, Font.BOLD, 60));
        pen.drawString("Honorable Discharge", 500, 500);
        pen.setFont(new Font(Font.SERIF, Font.PLAIN, 44));
        pen.drawString("This is to certify that the soldier named below", 300, 800);
        pen.drawString("is hereby honorably discharged from the military service", 300, 900);
        pen.dispose();
        var scan = scan(sheet, "certificate.png");
        assertThat(scan.papers()).isEmpty();
        assertThat(scan.notices()).anyMatch(notice -> notice.kind() == Notice.Kind.NO_BOXES);
    }

    @Test
    void an_empty_sheet_gives_words_and_no_paper() throws Exception {
        var sheet = new BufferedImage(1700, 2200, BufferedImage.TYPE_BYTE_GRAY);
        var scan = scan(sheet, "empty.png");
        assertThat(scan.papers()).isEmpty();
        assertThat(scan.notices()).isNotEmpty();
    }

    @Test
    void a_scan_can_be_stopped_and_hands_back_what_it_has() throws Exception {
        var data = LanguageData.find();
        assumeTrue(data.isPresent(), LanguageData.HOW_TO_GET_IT);
        try (var scanner = PaperScanner.with(data.get(), ScanLimits.USUAL)) {
            var scan = scanner.scan(page(3, Wear.FLATBED_CLEAN).save(folder), (page, pages, share) -> share < 0.4);
            assertThat(scan.stopped()).isTrue();
        }
    }
}
