package org.honorsdue.insignia.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.honorsdue.insignia.Found.authorized;
import static org.honorsdue.insignia.Found.findings;
import static org.honorsdue.insignia.Found.standing;
import static org.honorsdue.insignia.Found.worn;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.insignia.display.Addition;
import org.honorsdue.insignia.display.CasePlan;
import org.honorsdue.insignia.display.CaseWish;
import org.honorsdue.insignia.display.Placed;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.insignia.ribbon.RibbonRack;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A case printed for the bench, measured on the paper")
@DisplayNameGeneration(ReplaceUnderscores.class)
class CasePrintTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final double TENTH_OF_A_MILLIMETRE = 0.1;

    private static final Findings RIFLEMAN = findings(
            authorized("ww2-victory-medal"),
            authorized("eame-campaign-medal", worn(3, Device.BRONZE_SERVICE_STAR)),
            standing(Standing.PRESUMED, "army-good-conduct-medal"),
            authorized("bronze-star-medal"),
            authorized("combat-infantryman-badge"));

    private static final CasePlan PLAN = CasePlan.of(
            RIFLEMAN, CaseWish.ofSize("16x20").adding(new Addition.Nameplate(List.of("O. T. Fairweather"))));

    private static PDDocument print(Paper paper) throws IOException {
        return Loader.loadPDF(CasePrint.pdf(PLAN, paper, DAY));
    }

    private static int firstSheet(PDDocument document, Paper paper) {
        var tiling = tiling(paper);
        return document.getNumberOfPages() - tiling.columns() * tiling.rows();
    }

    private static Tiling tiling(Paper paper) {
        return new Tiling(16, 20, paper.width().decimal() - 1, paper.height().decimal() - 1.75);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void has_pages_of_the_size_of_the_paper(Paper paper) throws IOException {
        try (var document = print(paper)) {
            for (var page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth() * 25.4 / 72)
                        .isCloseTo(paper.width().millimetres(), within(TENTH_OF_A_MILLIMETRE));
                assertThat(page.getMediaBox().getHeight() * 25.4 / 72)
                        .isCloseTo(paper.height().millimetres(), within(TENTH_OF_A_MILLIMETRE));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void carries_on_every_sheet_a_bar_of_100_mm_and_one_of_4_inches(Paper paper) throws IOException {
        try (var document = print(paper)) {
            for (int i = firstSheet(document, paper); i < document.getNumberOfPages(); i++) {
                var bars = PaperRule.on(document.getPage(i)).filled().stream()
                        .filter(box -> box.getHeight() < 2 && box.getWidth() > 90 && box.getY() > 200)
                        .toList();
                assertThat(bars).hasSize(2);
                assertThat(bars.get(0).getWidth()).isCloseTo(100, within(TENTH_OF_A_MILLIMETRE));
                assertThat(bars.get(1).getWidth()).isCloseTo(101.6, within(TENTH_OF_A_MILLIMETRE));
            }
        }
    }

    /** Each piece's box on each sheet that shows it, against the plan: true size and place, to 0.1 mm. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void has_every_piece_at_its_true_place_and_size(Paper paper) throws IOException {
        try (var document = print(paper)) {
            int sheet = firstSheet(document, paper);
            for (Tiling.Tile tile : tiling(paper).tiles()) {
                List<Rectangle2D> boxes =
                        PaperRule.on(document.getPage(sheet++)).stroked();
                for (Placed one : PLAN.placed()) {
                    double x = (0.5 - tile.x()) * 25.4 + one.x().millimetres();
                    double y = (0.5 - tile.y()) * 25.4 + one.y().millimetres();
                    assertThat(boxes)
                            .as("%s on sheet %s", one.piece().name(), tile.name())
                            .anyMatch(box -> near(box.getX(), x)
                                    && near(box.getY(), y)
                                    && near(box.getWidth(), one.piece().width().millimetres())
                                    && near(
                                            box.getHeight(),
                                            one.piece().height().millimetres()));
                }
            }
        }
    }

    private static boolean near(double measured, double expected) {
        return Math.abs(measured - expected) <= TENTH_OF_A_MILLIMETRE;
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void covers_the_whole_opening_with_sheets_that_share_half_an_inch(Paper paper) {
        var tiling = tiling(paper);
        var tiles = tiling.tiles();
        for (Tiling.Tile tile : tiles) {
            assertThat(tile.width()).isPositive();
            assertThat(tile.height()).isPositive();
        }
        var last = tiles.get(tiles.size() - 1);
        assertThat(last.x() + last.width()).isCloseTo(16, within(1e-9));
        assertThat(last.y() + last.height()).isCloseTo(20, within(1e-9));
        assertThat(tiles.get(1).x()).isCloseTo(tiles.get(0).width() - 0.5, within(1e-9));
    }

    /** The metric bar counted in dots of a picture of the page: 100 mm are 1181.1 dots at 300 dots to the inch. */
    @Test
    void shows_the_bar_at_its_length_when_the_page_is_turned_into_dots() throws IOException {
        try (var document = print(Paper.LETTER)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(firstSheet(document, Paper.LETTER), 300);
            int y = (int) Math.round((11 - 0.5 - 0.42 + 0.02) * 300);
            int first = -1;
            int last = -1;
            // One run of dark dots; the words beside the bar are another.
            for (int x = 0; x < page.getWidth() && (first < 0 || last == x - 1); x++) {
                if ((page.getRGB(x, y) & 0xFF) < 128) {
                    first = first < 0 ? x : first;
                    last = x;
                }
            }
            // The end marks are a hundredth of an inch wide at most.
            assertThat((double) last - first + 1).isCloseTo(1181.1, within(4.0));
        }
    }

    @Test
    void lists_parts_advice_and_cautions_and_no_vendor() throws IOException {
        try (var document = print(Paper.LETTER)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text)
                    .contains("Full-size medal with drape: Bronze Star Medal")
                    .contains("Bronze service star for the drape of it 3")
                    .contains("Place kept, not settled: Good Conduct Medal (Army)")
                    .contains("No glue, tape or melted adhesive touches an original")
                    .contains("No live ammunition")
                    .contains("radium")
                    .contains("Honors Due advises; only the Army and the National Archives decide")
                    .doesNotContain("http")
                    .doesNotContain(".com");
        }
    }

    @Test
    void is_the_same_to_the_byte() {
        assertThat(CasePrint.pdf(PLAN, Paper.A4, DAY)).isEqualTo(CasePrint.pdf(PLAN, Paper.A4, DAY));
    }

    /** Two bars of 1 3/8 in side by side, hand arithmetic: 69.85 mm. */
    @Test
    void prints_a_rack_at_true_size() throws IOException {
        var rack = RibbonRack.of(
                findings(authorized("ww2-victory-medal"), authorized("bronze-star-medal")), RackStyle.standard());
        try (var document = Loader.loadPDF(DrawingPrint.rack(rack, Paper.LETTER, DAY))) {
            assertThat(PaperRule.on(document.getPage(0)).stroked())
                    .anyMatch(box -> near(box.getWidth(), 69.85) && near(box.getHeight(), 9.525));
            assertThat(new PDFTextStripper().getText(document)).contains("wearer's left breast");
        }
    }

    @Test
    void sets_a_name_with_letters_of_other_languages() throws IOException {
        var plan = CasePlan.of(
                RIFLEMAN, CaseWish.ofSize("11x14").adding(new Addition.Nameplate(List.of("Jiří Dvořák 漢"))));
        try (var document = Loader.loadPDF(CasePrint.pdf(plan, Paper.LETTER, DAY))) {
            assertThat(new PDFTextStripper().getText(document)).contains("Jiří Dvořák ?");
        }
    }
}
