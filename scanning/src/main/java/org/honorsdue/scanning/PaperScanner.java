package org.honorsdue.scanning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.honorsdue.reading.EntryReader;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.scanning.choice.LineChooser;
import org.honorsdue.scanning.choice.PeriodWords;
import org.honorsdue.scanning.choice.Vocabulary;
import org.honorsdue.scanning.form.FormPage;
import org.honorsdue.scanning.form.PageForm;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.picture.Pages;
import org.honorsdue.scanning.preparation.Polarity;
import org.honorsdue.scanning.recognition.GlyphNet;
import org.honorsdue.scanning.recognition.LanguageData;
import org.honorsdue.scanning.recognition.LineReader;
import org.honorsdue.scanning.recognition.Tesseract;

/**
 * Reads pictures of separation papers. One file at a time, not for several threads at once; the original is opened for
 * reading only. Nothing leaves the machine.
 */
public final class PaperScanner implements AutoCloseable {
    private final LineReader reader;
    private final PageReader pageReader;
    private final ScanLimits limits;

    private PaperScanner(LineReader reader, ScanLimits limits) {
        this.reader = reader;
        var reference = Reference.published();
        this.pageReader = new PageReader(
                new LineChooser(reader, GlyphNet.built(), PeriodWords.of(reference)),
                new Vocabulary(new EntryReader(reference, UnitReader.published())));
        this.limits = limits;
    }

    /**
     * @throws IllegalStateException if the data cannot be used or there is no native library for this machine; the
     *     message is for the user
     */
    public static PaperScanner with(LanguageData data, ScanLimits limits) {
        return new PaperScanner(Tesseract.with(data), limits);
    }

    /** Reads every page of a file. What is wrong with the file or a page is a notice, never an exception. */
    public Scan scan(Path file, ScanWatcher watcher) {
        var opened = Pages.open(file, limits.fileBytes(), limits.pixels(), limits.refusedPixels());
        if (opened instanceof Pages.Opened.Ready ready) {
            try (var pages = ready.pages()) {
                return scan(pages, watcher);
            }
        }
        var says = ((Pages.Opened.Refused) opened).says();
        return new Scan(List.of(), List.of(new Notice(Notice.Kind.REFUSED, says)), false);
    }

    private Scan scan(Pages pages, ScanWatcher watcher) {
        var papers = new ArrayList<ScannedPaper>();
        var notices = new ArrayList<Notice>();
        int count = Math.min(pages.count(), limits.pages());
        if (count < pages.count()) {
            notices.add(new Notice(
                    Notice.Kind.INCOMPLETE,
                    "Only the first %d of %d pages were read; put the others in a file of their own."
                            .formatted(count, pages.count())));
        }
        for (int i = 0; i < count; i++) {
            if (!watcher.goOn(i + 1, count, 0)) {
                return new Scan(papers, notices, true);
            }
            var page = pages.page(i);
            if (page instanceof Pages.Page.Unreadable unreadable) {
                notices.add(new Notice(Notice.Kind.REFUSED, unreadable.says()));
                continue;
            }
            var picture = (Pages.Page.Picture) page;
            for (var remark : picture.remarks()) {
                notices.add(new Notice(Notice.Kind.DONE_TO_IT, remark));
            }
            if (!read(picture.gray(), i + 1, count, papers, notices, watcher)) {
                return new Scan(papers, notices, true);
            }
        }
        return new Scan(papers, notices, false);
    }

    /** Returns whether the watcher wants to go on. */
    private boolean read(
            Gray picture, int number, int count, List<ScannedPaper> papers, List<Notice> notices, ScanWatcher watcher) {
        long begun = System.nanoTime();
        var found = FormPage.find(picture);
        if (found.isEmpty() || found.get().fit().likeness() < PageForm.LEAST_LIKENESS) {
            notices.add(new Notice(
                    Notice.Kind.NOT_THIS_FORM,
                    "Page %d: no boxes of a WD AGO Form 53-55 or 53-98 were found. If it is one, photograph it flat,"
                                    .formatted(number)
                            + " whole and in even light; or type it in."));
            return watcher.goOn(number, count, 1);
        }
        var page = found.get();
        if (page.polarity() == Polarity.LIGHT_ON_DARK) {
            notices.add(
                    new Notice(Notice.Kind.DONE_TO_IT, "Page %d: white on black; read inverted.".formatted(number)));
        }
        if (page.quarters() != 0) {
            notices.add(new Notice(
                    Notice.Kind.DONE_TO_IT,
                    "Page %d: turned clockwise by %d degrees.".formatted(number, page.quarters() * 90)));
        }
        boolean[] on = {true};
        boolean[] late = {false};
        var paper = pageReader.read(page, number, share -> {
            late[0] = System.nanoTime() - begun > limits.timePerPage().toNanos();
            on[0] = watcher.goOn(number, count, 0.2 + 0.8 * share);
            return on[0] && !late[0];
        });
        if (late[0]) {
            notices.add(new Notice(
                    Notice.Kind.OUT_OF_TIME,
                    "Page %d: given up after %d seconds; the boxes read until then are kept."
                            .formatted(number, limits.timePerPage().toSeconds())));
        }
        papers.add(paper);
        return on[0];
    }

    @Override
    public void close() {
        reader.close();
    }
}
