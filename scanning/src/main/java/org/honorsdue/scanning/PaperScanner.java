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
    /** Above this a form is taken without looking whether the picture holds two. */
    private static final double CLEAR_LIKENESS = 0.6;

    /** An entry less certain than this is called not made out. */
    private static final double UNCLEAR = 0.02;

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
        var pages = found(picture);
        if (pages.isEmpty()) {
            notices.add(UnknownPage.notice(number, reader, picture));
            return watcher.goOn(number, count, 1);
        }
        if (pages.size() > 1) {
            notices.add(new Notice(
                    Notice.Kind.SEVERAL_PAPERS,
                    "Page %d: %d papers on one picture; each was read by itself. Check that they are one soldier's."
                            .formatted(number, pages.size())));
        }
        for (int i = 0; i < pages.size(); i++) {
            double share = (double) i / pages.size();
            double each = 1.0 / pages.size();
            boolean[] on = {true};
            boolean[] late = {false};
            say(pages.get(i), number, notices);
            var paper = pageReader.read(pages.get(i), number, done -> {
                late[0] = System.nanoTime() - begun > limits.timePerPage().toNanos();
                on[0] = watcher.goOn(number, count, share + each * (0.2 + 0.8 * done));
                return on[0] && !late[0];
            });
            papers.add(paper);
            sayWhatIsNotMadeOut(paper, notices);
            if (late[0]) {
                notices.add(new Notice(
                        Notice.Kind.OUT_OF_TIME,
                        "Page %d: given up after %d seconds; the boxes read until then are kept."
                                .formatted(number, limits.timePerPage().toSeconds())));
                return true;
            }
            if (!on[0]) {
                return false;
            }
        }
        return true;
    }

    /** The form on the picture, or one on each half of it where the whole is none. */
    private static List<FormPage> found(Gray picture) {
        var whole = FormPage.find(picture);
        if (whole.isPresent() && whole.get().fit().likeness() >= CLEAR_LIKENESS) {
            return List.of(whole.get());
        }
        var halves = new ArrayList<FormPage>();
        boolean wide = picture.width() > picture.height();
        int width = wide ? picture.width() / 2 : picture.width();
        int height = wide ? picture.height() : picture.height() / 2;
        for (int half = 0; half < 2; half++) {
            var part = picture.cut(wide ? half * width : 0, wide ? 0 : half * height, width, height, 255);
            FormPage.find(part)
                    .filter(page -> page.fit().likeness() >= CLEAR_LIKENESS)
                    .ifPresent(halves::add);
        }
        if (!halves.isEmpty()) {
            return halves;
        }
        return whole.filter(page -> page.fit().likeness() >= PageForm.LEAST_LIKENESS).stream()
                .toList();
    }

    private static void say(FormPage page, int number, List<Notice> notices) {
        if (page.polarity() == Polarity.LIGHT_ON_DARK) {
            notices.add(
                    new Notice(Notice.Kind.DONE_TO_IT, "Page %d: white on black; read inverted.".formatted(number)));
        }
        if (page.quarters() != 0) {
            notices.add(new Notice(
                    Notice.Kind.DONE_TO_IT,
                    "Page %d: turned clockwise by %d degrees.".formatted(number, page.quarters() * 90)));
        }
        var missing = page.fit().layout().boxes().stream()
                .filter(box -> page.places().containsKey(box)
                        && page.seen(page.places().get(box)) < PageReader.LEAST_SEEN)
                .map(box -> box.id())
                .toList();
        if (!missing.isEmpty()) {
            notices.add(new Notice(
                    Notice.Kind.INCOMPLETE,
                    "Page %d: part of the form is not on the picture; boxes %s were not read. The others are kept."
                            .formatted(number, String.join(", ", missing))));
        }
    }

    private static void sayWhatIsNotMadeOut(ScannedPaper paper, List<Notice> notices) {
        var unclear = paper.entries().values().stream()
                .filter(entry -> entry.confidence() < UNCLEAR && !entry.text().isBlank())
                .map(entry -> entry.entry().key())
                .toList();
        if (!unclear.isEmpty()) {
            notices.add(new Notice(
                    Notice.Kind.HANDWRITING,
                    "Page %d: not made out with any certainty (handwriting, a stamp or damage?): %s. Type these in."
                            .formatted(paper.picture(), String.join(", ", unclear))));
        }
    }

    @Override
    public void close() {
        reader.close();
    }
}
