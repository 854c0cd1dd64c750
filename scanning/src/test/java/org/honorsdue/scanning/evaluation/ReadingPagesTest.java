package org.honorsdue.scanning.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.honorsdue.scanning.CasefileForReview;
import org.honorsdue.scanning.Notice;
import org.honorsdue.scanning.PaperScanner;
import org.honorsdue.scanning.Scan;
import org.honorsdue.scanning.ScanLimits;
import org.honorsdue.scanning.ScanWatcher;
import org.honorsdue.scanning.recognition.LanguageData;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A few generated pages, read whole. The truth is what the generator typed; the large set is {@link Evaluation}. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ReadingPagesTest {
    @TempDir
    Path folder;

    private record Read(int entries, int exact, int letters, int wrong) {}

    private static final Map<String, GeneratedPage> DRAWN = new HashMap<>();

    private static Optional<PaperScanner> opened = Optional.empty();

    @BeforeAll
    static void open_the_engine_once() {
        opened = LanguageData.find().map(data -> PaperScanner.with(data, ScanLimits.USUAL));
    }

    @AfterAll
    static void close() {
        opened.ifPresent(PaperScanner::close);
    }

    private static PaperScanner scanner() {
        assumeTrue(opened.isPresent(), LanguageData.HOW_TO_GET_IT);
        return opened.orElseThrow();
    }

    private static Read compared(GeneratedPage page, Scan scan) {
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
            var entry = Optional.ofNullable(paper.entries().get(each.getKey()));
            var text = entry.map(read -> Errors.plain(read.text())).orElse("");
            int off = Errors.distance(text, truth);
            entries++;
            exact += off == 0 ? 1 : 0;
            letters += truth.length();
            wrong += off;
            boolean figures = (text + truth).chars().anyMatch(Character::isDigit);
            assertThat(off == 0 || !figures || entry.isEmpty() || entry.get().mustBeSeen())
                    .as("a wrong figure without a flag: %s, typed %s, read %s", each.getKey(), truth, text)
                    .isTrue();
        }
        return new Read(entries, exact, letters, wrong);
    }

    @Test
    void a_clean_scan_of_the_enlisted_form_comes_out_nearly_right() throws Exception {
        var page = page(3, Wear.FLATBED_CLEAN);
        assertThat(page.form()).isEqualTo(Form.ENLISTED_53_55);
        var read = compared(page, scanner().scan(page.save(folder), ScanWatcher.SILENT));
        assertThat(read.wrong * 100.0 / read.letters).isLessThan(1);
        assertThat(read.exact * 100.0 / read.entries).isGreaterThan(95);
    }

    /** What the kinds of wear may cost: far from the usual figures, near enough to notice a part that is broken. */
    @ParameterizedTest
    @CsvSource({"FOLDED_AND_STAINED, 75", "STAMPED_AND_SIGNED, 75", "LOW_RESOLUTION, 85", "PHONE_STEEP, 85"})
    void a_page_that_suffered_comes_out_usable(Wear wear, double exact) throws Exception {
        var page = page(40 + wear.ordinal(), wear);
        var read = compared(page, scanner().scan(page.save(folder), ScanWatcher.SILENT));
        assertThat(read.exact * 100.0 / read.entries).isGreaterThan(exact);
        assertThat(read.wrong * 100.0 / read.letters).isLessThan(8);
    }

    @Test
    void a_page_upside_down_is_turned_and_that_is_said() throws Exception {
        var page = page(6, Wear.FLATBED_CLEAN);
        var upright = page.picture();
        var turned = new BufferedImage(upright.getWidth(), upright.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
        var pen = turned.createGraphics();
        pen.rotate(Math.PI, upright.getWidth() / 2.0, upright.getHeight() / 2.0);
        pen.drawImage(upright, 0, 0, null);
        pen.dispose();
        var scan = scan(turned, "turned.png");
        assertThat(scan.notices()).anyMatch(notice -> notice.says().contains("180 degrees"));
        var read = compared(page, scan);
        assertThat(read.exact * 100.0 / read.entries).isGreaterThan(90);
    }

    private Scan scan(BufferedImage picture, String name) throws Exception {
        var file = folder.resolve(name);
        ImageIO.write(picture, "png", file.toFile());
        return scanner().scan(file, ScanWatcher.SILENT);
    }

    private static GeneratedPage page(int number, Wear wear) {
        return DRAWN.computeIfAbsent(
                wear + " " + number,
                key -> GeneratedPage.draw(number, TypeFace.committed("courier-prime", false), wear));
    }

    @Test
    void a_photostat_in_an_unseen_face_comes_out_nearly_right_and_is_called_white_on_black() throws Exception {
        var page = GeneratedPage.draw(21, TypeFace.committed("special-elite", true), Wear.PHOTOSTAT_POOR);
        var scan = scanner().scan(page.save(folder), ScanWatcher.SILENT);
        assertThat(scan.notices()).anyMatch(notice -> notice.says().contains("white on black"));
        var read = compared(page, scan);
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
        var scan = scanner().scan(page(3, Wear.FLATBED_CLEAN).save(folder), (page, pages, share) -> share < 0.4);
        assertThat(scan.stopped()).isTrue();
        assertThat(scan.papers()).hasSize(1);
        assertThat(scan.papers().get(0).entries())
                .as("what was not reached is absent, not blank")
                .containsKey(Entry.NAME)
                .doesNotContainKey(Entry.REMARKS);
    }

    @Test
    void the_pages_of_a_pdf_are_read_one_by_one_and_their_pictures_keep_no_camera_data() throws Exception {
        var file = folder.resolve("papers.pdf");
        try (var document = new PDDocument()) {
            for (int number : new int[] {3, 5}) {
                var sheet = new PDPage(PDRectangle.LETTER);
                document.addPage(sheet);
                var picture = JPEGFactory.createFromImage(
                        document, page(number, Wear.FLATBED_CLEAN).picture(), 0.9f);
                try (var content = new PDPageContentStream(document, sheet)) {
                    content.drawImage(
                            picture,
                            0,
                            0,
                            sheet.getMediaBox().getWidth(),
                            sheet.getMediaBox().getHeight());
                }
            }
            document.save(file.toFile());
        }
        var heard = new ArrayList<Integer>();
        var scan = scanner().scan(file, (page, pages, share) -> {
            heard.add(page * 10 + pages);
            return true;
        });
        assertThat(scan.papers()).as("%s", scan.notices()).hasSize(2);
        assertThat(scan.papers().get(1).picture()).isEqualTo(2);
        assertThat(heard).contains(12, 22);
        assertThat(Errors.plain(scan.papers().get(1).entries().get(Entry.NAME).text()))
                .isEqualTo(Errors.plain(page(5, Wear.FLATBED_CLEAN).truth().get(Entry.NAME)));
        var crops = folder.resolve("crops");
        CasefileForReview.crops(scan.papers(), crops);
        var crop = Files.readAllBytes(crops.resolve("2-serial_number.png"));
        // Header, pixels, end: no text, no time, no camera data, no place.
        assertThat(new String(crop, StandardCharsets.ISO_8859_1)).doesNotContain("tEXt", "iTXt", "eXIf", "tIME", "GPS");
        assertThat(CasefileForReview.yaml(scan.papers(), scan.notices()))
                .contains("form: WD AGO 53")
                .contains("box 2: ");
    }
}
