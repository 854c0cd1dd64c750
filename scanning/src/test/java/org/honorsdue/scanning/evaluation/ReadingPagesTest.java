package org.honorsdue.scanning.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.honorsdue.scanning.CasefileForReview;
import org.honorsdue.scanning.PaperScanner;
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
}
