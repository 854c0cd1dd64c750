package org.honorsdue.scanning.evaluation;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.honorsdue.scanning.Flag;
import org.honorsdue.scanning.PaperScanner;
import org.honorsdue.scanning.ScanLimits;
import org.honorsdue.scanning.ScanWatcher;
import org.honorsdue.scanning.recognition.LanguageData;
import org.honorsdue.service.paper.Entry;

/**
 * Draws pages, reads them and measures. Arguments: folder of faces, {@code tuning} or {@code unseen} or {@code all},
 * number of pages, first number, {@code -v} to list every wrong entry.
 */
final class Evaluation {
    /** Per tenth of confidence: entries, and right ones among them. */
    private static final int[][] SURENESS = new int[10][2];

    private Evaluation() {}

    /** Sums over pages of one kind. */
    private static final class Sum {
        int pages;
        int letters;
        int wrongLetters;
        int entries;
        int exact;
        int wrongUnflagged;
        int wrongFiguresUnflagged;
        int invented;
        int findings;
        int differing;
        int silent;
        int unmarked;
        int touches;
        int pagesUnderFour;
        int words;
        int wordsFound;
        int wordsPlain;
        int plainPages;
        int wordsFoundPlain;
        int doubtful;
        double plainSeconds;
        double seconds;

        void add(Sum other) {
            pages += other.pages;
            letters += other.letters;
            wrongLetters += other.wrongLetters;
            entries += other.entries;
            exact += other.exact;
            wrongUnflagged += other.wrongUnflagged;
            wrongFiguresUnflagged += other.wrongFiguresUnflagged;
            invented += other.invented;
            findings += other.findings;
            differing += other.differing;
            silent += other.silent;
            unmarked += other.unmarked;
            touches += other.touches;
            pagesUnderFour += other.pagesUnderFour;
            words += other.words;
            wordsFound += other.wordsFound;
            wordsFoundPlain += other.wordsFoundPlain;
            wordsPlain += other.wordsPlain;
            plainPages += other.plainPages;
            doubtful += other.doubtful;
            plainSeconds += other.plainSeconds;
            seconds += other.seconds;
        }

        @Override
        public String toString() {
            return "%3d pages  CER %5.2f %%  exact %4d of %4d = %5.1f %%  wrong without a flag %d  wrong figure without a flag %d  typing seen in blank boxes %d  %.2f s a page"
                    .formatted(
                            pages,
                            100.0 * wrongLetters / Math.max(1, letters),
                            exact,
                            entries,
                            100.0 * exact / Math.max(1, entries),
                            wrongUnflagged,
                            wrongFiguresUnflagged,
                            invented,
                            seconds / Math.max(1, pages));
        }
    }

    public static void main(String[] args) throws Exception {
        var faces = TypeFace.in(Path.of(args[0])).stream()
                .filter(face -> args[1].equals("all") || face.unseen() == args[1].equals("unseen"))
                .toList();
        int pages = Integer.parseInt(args[2]);
        int first = Integer.parseInt(args[3]);
        boolean chatty = args.length > 4 && args[4].equals("-v");
        var data = LanguageData.find().orElseThrow(() -> new IllegalStateException(LanguageData.HOW_TO_GET_IT));
        var total = new Sum();
        Map<String, Sum> byFace = new TreeMap<>();
        Map<String, Sum> byWear = new TreeMap<>();
        Map<Entry, Sum> byEntry = new TreeMap<>();
        var folder = Files.createTempDirectory("pages");
        var consequences = new Consequences();
        try (var scanner = PaperScanner.with(data, ScanLimits.USUAL);
                var whole = new WholePage(data)) {
            for (int i = first; i < first + pages; i++) {
                var wears = Wear.values();
                var page = GeneratedPage.draw(i, faces.get(i % faces.size()), wears[(i / faces.size()) % wears.length]);
                var file = page.save(folder);
                var sum = measure(scanner, consequences, page, file, chatty, byEntry);
                if (i % 4 == 0) {
                    plain(whole, page, file, sum); // slow, and the same picture of things
                }
                total.add(sum);
                byFace.computeIfAbsent(page.face().name(), key -> new Sum()).add(sum);
                byWear.computeIfAbsent(page.wear().name(), key -> new Sum()).add(sum);
                System.out.println(file.getFileName() + "  " + sum);
                Files.delete(file);
            }
        }
        System.out.println();
        byFace.forEach((name, sum) -> System.out.printf("%-22s %s%n", name, sum));
        byWear.forEach((name, sum) -> System.out.printf("%-22s %s%n", name, sum));
        byEntry.forEach((name, sum) -> System.out.printf("%-28s %s%n", name, sum));
        System.out.printf("%-22s %s%n", "all", total);
        System.out.printf("letters: %d wrong of %d%n", total.wrongLetters, total.letters);
        System.out.printf(
                "findings: %d from the true text; %d differ as scanned (%.2f a page), %d of them silently (every flagged entry set right),"
                        + " %d if only entries called doubtful, reread or not understood are set right%n",
                total.findings, total.differing, (double) total.differing / total.pages, total.silent, total.unmarked);
        System.out.printf(
                "entries to set right for the same findings: %.2f a page; fewer than four on %d of %d pages%n",
                (double) total.touches / total.pages, total.pagesUnderFour, total.pages);
        System.out.printf(
                "entries called doubtful, reread or not understood: %.1f a page%n",
                (double) total.doubtful / total.pages);
        System.out.printf(
                "typed words found anywhere: here %.1f %%, Tesseract on the whole picture %.1f %% (%.2f s a page, %d pages)%n",
                100.0 * total.wordsFound / Math.max(1, total.words),
                100.0 * total.wordsFoundPlain / Math.max(1, total.wordsPlain),
                total.plainSeconds / Math.max(1, total.plainPages),
                total.plainPages);
        System.out.println("confidence: entries said to be so sure, and how many of them were right");
        for (int i = 0; i < SURENESS.length; i++) {
            if (SURENESS[i][0] > 0) {
                System.out.printf(
                        "  %.1f to %.1f: %4d entries, %.1f %% right%n",
                        i / 10.0, (i + 1) / 10.0, SURENESS[i][0], 100.0 * SURENESS[i][1] / SURENESS[i][0]);
            }
        }
    }

    private static void plain(WholePage whole, GeneratedPage page, Path file, Sum sum) throws IOException {
        var picture = ImageIO.read(file.toFile());
        long begun = processorTime();
        var text = " " + Errors.plain(whole.read(picture)) + " ";
        sum.plainPages = 1;
        sum.plainSeconds = (processorTime() - begun) / 1e9;
        words(page, text, false, sum);
    }

    /** Counts the typed words that stand somewhere in a text, each as often as it was typed at most. */
    private static void words(GeneratedPage page, String text, boolean here, Sum sum) {
        var left = new ArrayList<>(List.of(text.strip().split(" ")));
        for (var each : page.truth().entrySet()) {
            if (each.getKey() == Entry.MARITAL_STATUS
                    || each.getKey() == Entry.CITIZEN
                    || each.getKey() == Entry.SELECTIVE_SERVICE_REGISTERED) {
                continue; // typed as an X
            }
            for (var word : Errors.plain(each.getValue()).split(" ")) {
                boolean found = left.remove(word);
                if (here) {
                    sum.words++;
                    sum.wordsFound += found ? 1 : 0;
                } else {
                    sum.wordsPlain++;
                    sum.wordsFoundPlain += found ? 1 : 0;
                }
            }
        }
    }

    /** What this thread used of a processor, so that other work on the machine does not count. */
    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static Sum measure(
            PaperScanner scanner,
            Consequences consequences,
            GeneratedPage page,
            Path file,
            boolean chatty,
            Map<Entry, Sum> byEntry) {
        var sum = new Sum();
        sum.pages = 1;
        long begun = processorTime();
        var scan = scanner.scan(file, ScanWatcher.SILENT);
        sum.seconds = (processorTime() - begun) / 1e9;
        var paper = scan.papers().stream()
                .filter(each -> each.form() == page.form())
                .findFirst();
        if (paper.isEmpty()) {
            System.out.println("  NOT RECOGNISED " + scan.notices());
        }
        List<String> wrong = new ArrayList<>();
        for (var each : page.truth().entrySet()) {
            var truth = Errors.plain(each.getValue());
            if (truth.isEmpty() || each.getKey() == Entry.LENGTH_OF_SERVICE) {
                continue;
            }
            var own = new Sum();
            own.pages = 1;
            var read = paper.map(p -> p.entries().get(each.getKey()));
            var text = Errors.plain(read.map(entry -> entry.text()).orElse(""));
            int distance = Errors.distance(text, truth);
            own.letters = truth.length();
            own.wrongLetters = distance;
            own.entries = 1;
            read.ifPresent(entry -> {
                int tenth = Math.min(9, (int) (entry.confidence() * 10));
                SURENESS[tenth][0]++;
                SURENESS[tenth][1] += distance == 0 ? 1 : 0;
            });
            if (read.isPresent() && read.get().flags().stream().anyMatch(flag -> flag != Flag.FIGURES)) {
                own.doubtful = 1;
            }
            if (distance == 0) {
                own.exact = 1;
            } else {
                boolean flagged = read.isEmpty() || read.get().mustBeSeen();
                own.wrongUnflagged = flagged ? 0 : 1;
                boolean figures = text.chars().anyMatch(Character::isDigit)
                        || truth.chars().anyMatch(Character::isDigit);
                own.wrongFiguresUnflagged = !flagged && figures ? 1 : 0;
                wrong.add("    %-22s %s|%s| read |%s| %.2f %s"
                        .formatted(
                                each.getKey(),
                                flagged ? "" : "UNFLAGGED ",
                                truth,
                                text,
                                read.map(entry -> entry.confidence()).orElse(0.0),
                                read.map(entry -> entry.flags().contains(Flag.DOUBTFUL) ? "doubtful" : "")
                                        .orElse("missing")));
            }
            byEntry.computeIfAbsent(each.getKey(), key -> new Sum()).add(own);
            own.pages = 0;
            sum.add(own);
        }
        paper.ifPresent(p -> p.entries().forEach((entry, read) -> {
            if (!page.truth().containsKey(entry) && !read.text().isBlank() && entry != Entry.LENGTH_OF_SERVICE) {
                sum.invented++;
                wrong.add("    %-22s blank, read |%s|".formatted(entry, read.text()));
            }
        }));
        var pageText = " "
                + Errors.plain(paper.map(p -> p.entries().values().stream()
                                .map(entry -> entry.text())
                                .reduce("", (a, b) -> a + " " + b))
                        .orElse(""))
                + " ";
        words(page, pageText, true, sum);
        paper.ifPresent(p -> {
            var result = consequences.of(page.form(), page.truth(), p);
            sum.findings = result.findings();
            sum.differing = result.differing();
            sum.silent = result.silent();
            sum.unmarked = result.unmarked();
            sum.touches = result.touches();
            sum.pagesUnderFour = result.touches() < 4 ? 1 : 0;
            if (result.differing() > 0) {
                wrong.add("    findings: %s".formatted(result));
            }
        });
        if (chatty) {
            wrong.forEach(System.out::println);
        }
        return sum;
    }
}
