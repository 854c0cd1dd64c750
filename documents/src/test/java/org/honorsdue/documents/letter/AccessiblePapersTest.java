package org.honorsdue.documents.letter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.honorsdue.documents.Desk;
import org.honorsdue.documents.InventedSoldiers;
import org.honorsdue.documents.Output;
import org.honorsdue.documents.page.Page;
import org.honorsdue.documents.pdf.Sheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Every document of several cases against veraPDF's reading of PDF/UA-1 (ISO 14289-1). */
@DisplayNameGeneration(ReplaceUnderscores.class)
class AccessiblePapersTest {
    @BeforeAll
    static void validator() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    /** Everything of two cases, and of three others what is peculiar to them. */
    static Stream<Arguments> papers() {
        return Stream.of(
                        Correspondence.all(Desk.dossier(Desk.demo("fairweather"))),
                        Correspondence.all(
                                Desk.dossier(InventedSoldiers.ofId("crowded")).masked(Masking.PRIVATE)),
                        List.of(Desk.page(Desk.dossier(Desk.demo("lindgate")), "family-summary")),
                        List.of(
                                Desk.page(Desk.dossier(InventedSoldiers.ofId("officer")), "proof-annex"),
                                Desk.page(Desk.dossier(InventedSoldiers.ofId("officer")), "evidence-checklist")),
                        List.of(Desk.page(Desk.dossier(InventedSoldiers.ofId("no-paper")), "family-summary")))
                .flatMap(List::stream)
                .map(page -> Arguments.of(page.name() + ", " + page.title() + " " + page.subtitle(), page));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papers")
    void a_paper_is_accessible_by_an_independent_validator(String name, Page page) throws Exception {
        assertAccessible(Output.PDF.of(page, Sheet.LETTER));
    }

    @Test
    void on_A4_too() throws Exception {
        assertAccessible(Output.PDF.of(Desk.page(Desk.dossier(Desk.demo("okonsky")), "family-summary"), Sheet.A4));
    }

    /** A face that lacks a character would leave a glyph undefined, which PDF/UA-1 forbids (7.21.8). */
    @Test
    void a_name_in_letters_that_no_face_has_is_spelled_by_number() throws Exception {
        var page = Page.of("letter", Page.Kind.SHEET, "Жук", "中 e\u0301", Desk.TODAY)
                .say("Combining: Zolna\u0328")
                .page();
        byte[] pdf = Output.PDF.of(page, Sheet.LETTER);
        assertAccessible(pdf);
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("[U+0416][U+0443][U+043A]", "[U+4E2D] é", "Zolną");
        }
    }

    private static void assertAccessible(byte[] pdf) throws Exception {
        try (var parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                var validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            var result = validator.validate(parser);
            assertThat(result.getTestAssertions())
                    .extracting(failed -> failed.getRuleId().getClause() + ": " + failed.getMessage())
                    .isEmpty();
            assertThat(result.isCompliant()).isTrue();
        }
    }
}
