package org.honorsdue.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.time.LocalDate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The press against veraPDF's reading of PDF/UA-1 (ISO 14289-1) and against PDFBox's reading of the text. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PressTest {
    private static final String PAGE = """
            <html lang="en"><head><title>A sheet</title><style>
            @page { size: 8.5in 11in; margin: 1in; }
            body { font-family: Book, BookMore; font-size: 11pt; }
            code { font-family: Typewriter; }
            </style></head><body><h1>Fairweather, Orrin T</h1>
            <p>Café, Łódź, “quoted”, and <code>EAMET w/3 Br Stars</code>.</p>
            <svg xmlns="http://www.w3.org/2000/svg" width="99pt" height="27pt" viewBox="0 0 132 36" alt="A ribbon in two stripes">
            <rect width="66" height="36" fill="#224488"/><rect x="66" width="66" height="36" fill="#cc2222"/></svg>
            </body></html>
            """;

    @BeforeAll
    static void validator() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @Test
    void a_page_is_accessible_pdf_by_an_independent_validator() throws Exception {
        byte[] pdf = new Press().print(PAGE, LocalDate.of(2026, 11, 25));
        try (var parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                var validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            var result = validator.validate(parser);
            assertThat(result.getTestAssertions()).isEmpty();
            assertThat(result.isCompliant()).isTrue();
        }
    }

    @Test
    void the_text_comes_back_with_its_accents() throws Exception {
        byte[] pdf = new Press().print(PAGE, LocalDate.of(2026, 11, 25));
        try (var document = Loader.loadPDF(pdf)) {
            var stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            assertThat(stripper.getText(document))
                    .contains("Fairweather, Orrin T", "Café, Łódź, “quoted”, and EAMET w/3 Br Stars.");
        }
    }

    @Test
    void the_same_page_gives_the_same_bytes() throws Exception {
        byte[] first = new Press().print(PAGE, LocalDate.of(2026, 11, 25));
        Thread.sleep(1100);
        byte[] second = new Press().print(PAGE, LocalDate.of(2026, 11, 25));
        assertThat(second).isEqualTo(first);
    }
}
