package org.honorsdue.documents.letter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.documents.Desk;
import org.honorsdue.documents.InventedSoldiers;
import org.honorsdue.documents.Output;
import org.honorsdue.documents.pdf.Sheet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The printed papers against PDFBox's reading of them. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PrintedPapersTest {
    private static String plain(String text) {
        // A line of the sheet may break at a hyphen or in the middle of a long word.
        return text.replaceAll("[\\s\\u00a0]+", "");
    }

    private static String text(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fairweather", "okonsky", "lindgate"})
    void the_proof_holds_every_award_every_star_and_every_citation(String name) throws Exception {
        var dossier = Desk.dossier(Desk.demo(name));
        String printed = plain(text(Output.PDF.of(Desk.page(dossier, "proof-annex"), Sheet.LETTER)));
        assertThat(dossier.findings().findings()).isNotEmpty();
        for (var finding : dossier.findings().findings()) {
            assertThat(printed).contains(plain(finding.name()));
            for (var worn : finding.devices()) {
                worn.standsFor().forEach(star -> assertThat(printed).contains(plain(star)));
            }
            for (var ground : finding.grounds()) {
                assertThat(printed).contains(plain(ground.authority().pinpoint()));
            }
        }
    }

    @Test
    void the_summary_holds_every_settled_award_with_its_stars() throws Exception {
        var dossier = Desk.dossier(Desk.demo("fairweather"));
        String printed = plain(text(Output.PDF.of(Desk.page(dossier, "family-summary"), Sheet.LETTER)));
        for (var finding : dossier.authorized()) {
            assertThat(printed).contains(plain(finding.name()));
            if (!dossier.isInsigne(finding)) {
                assertThat(printed).contains(plain(Wording.devicesForTheFamily(finding.devices())));
            }
        }
        assertThat(dossier.authorized().stream().flatMap(finding -> finding.grounds().stream()))
                .anyMatch(ground -> ground.verdict() == Verdict.MET);
    }

    @ParameterizedTest
    @ValueSource(strings = {"artilleryman", "died-in-captivity", "never-abroad", "crowded", "no-paper", "bare"})
    void a_summary_is_two_pages_at_most(String id) throws Exception {
        var page = Desk.page(Desk.dossier(InventedSoldiers.ofId(id)), "family-summary");
        for (var sheet : Sheet.values()) {
            try (var document = Loader.loadPDF(Output.PDF.of(page, sheet))) {
                assertThat(document.getNumberOfPages())
                        .as("%s on %s", id, sheet)
                        .isLessThanOrEqualTo(2);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"brandvold", "castellan", "okonsky"})
    void so_are_the_fullest_of_the_tour(String name) throws Exception {
        byte[] pdf = Output.PDF.of(Desk.page(Desk.dossier(Desk.demo(name)), "family-summary"), Sheet.LETTER);
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(2);
        }
    }

    @Test
    void nothing_is_pushed_over_the_edge_of_a_sheet() throws Exception {
        var dossier = Desk.dossier(InventedSoldiers.ofId("crowded")).masked(Masking.PRIVATE);
        for (var page : Correspondence.all(dossier)) {
            for (var sheet : Sheet.values()) {
                assertThat(outside(Output.PDF.of(page, sheet)))
                        .as("%s on %s", page.name(), sheet)
                        .isEmpty();
            }
        }
    }

    /** Characters nearer than half an inch to the left or right edge. */
    private static List<String> outside(byte[] pdf) throws IOException {
        var found = new ArrayList<String>();
        try (var document = Loader.loadPDF(pdf)) {
            float width = document.getPage(0).getMediaBox().getWidth();
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> places) {
                    for (var place : places) {
                        if (!place.getUnicode().isBlank()
                                && (place.getX() < 36 || place.getX() + place.getWidth() > width - 36)) {
                            found.add(place.getUnicode() + " in " + text);
                        }
                    }
                }
            }.getText(document);
        }
        return found;
    }

    @Test
    void the_same_case_and_day_give_the_same_bytes() {
        var once = Correspondence.all(Desk.dossier(Desk.demo("marchbanks")));
        var again = Correspondence.all(Desk.dossier(Desk.demo("marchbanks")));
        assertThat(once).hasSameSizeAs(again);
        for (int i = 0; i < once.size(); i++) {
            for (var output : Output.values()) {
                assertThat(output.of(again.get(i), Sheet.A4))
                        .as(output.fileName(once.get(i)))
                        .isEqualTo(output.of(once.get(i), Sheet.A4));
            }
        }
    }
}
