package org.honorsdue.scanning.evaluation;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
        try (var scanner = PaperScanner.with(data, ScanLimits.USUAL)) {
            for (int i = first; i < first + pages; i++) {
                var wears = Wear.values();
                var page = GeneratedPage.draw(i, faces.get(i % faces.size()), wears[(i / faces.size()) % wears.length]);
                var file = page.save(folder);
                var sum = measure(scanner, page, file, chatty, byEntry);
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
    }

    /** What this thread used of a processor, so that other work on the machine does not count. */
    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static Sum measure(
            PaperScanner scanner, GeneratedPage page, Path file, boolean chatty, Map<Entry, Sum> byEntry) {
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
        if (chatty) {
            wrong.forEach(System.out::println);
        }
        return sum;
    }
}
