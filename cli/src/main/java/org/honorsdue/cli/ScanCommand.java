package org.honorsdue.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.honorsdue.scanning.CasefileForReview;
import org.honorsdue.scanning.Notice;
import org.honorsdue.scanning.PaperScanner;
import org.honorsdue.scanning.ScanLimits;
import org.honorsdue.scanning.ScannedEntry;
import org.honorsdue.scanning.ScannedPaper;
import org.honorsdue.scanning.recognition.LanguageData;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors scan IMAGE… -o casefile.yaml}: pictures of one soldier's papers to a casefile for review. */
@Command(
        name = "scan",
        mixinStandardHelpOptions = true,
        header = "A photograph or PDF of a paper to a casefile for review.",
        description = {
            "Reads photographs or a PDF of one soldier's papers into a casefile for review, with a confidence",
            "beside each entry. Compare every figure with the paper before you rely on it. Nothing leaves this machine."
        })
final class ScanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "IMAGE", description = "pictures or PDF files, one soldier")
    private List<Path> files = List.of();

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "OUT",
            description = "the casefile to write")
    private Path output = Path.of("");

    @Override
    public Integer call() throws IOException {
        var missing = files.stream().filter(file -> !Files.isRegularFile(file)).toList();
        if (!missing.isEmpty()) {
            throw new InputFault("honors: there is no file " + String.join(", no file ", strings(missing)) + ".");
        }
        var data = LanguageData.find()
                .orElseThrow(
                        () -> new InputFault("honors: the language data for reading pictures is not on this machine. "
                                + LanguageData.HOW_TO_GET_IT));
        var errors = spec.commandLine().getErr();
        var papers = new ArrayList<ScannedPaper>();
        var notices = new ArrayList<Notice>();
        try (var scanner = PaperScanner.with(data, ScanLimits.USUAL)) {
            for (Path file : files) {
                var scan = scanner.scan(file, (page, pages, share) -> {
                    progress(file, page, pages, share);
                    return true;
                });
                papers.addAll(scan.papers());
                notices.addAll(scan.notices());
            }
        }
        notices.forEach(notice -> errors.println(notice.says()));
        if (papers.isEmpty()) {
            throw new InputFault("honors: nothing could be read from " + String.join(", ", strings(files))
                    + "; no casefile was written. Type the paper in instead.");
        }
        OutputFile.write(output, CasefileForReview.yaml(papers, notices));
        long entries =
                papers.stream().mapToLong(paper -> paper.entries().size()).sum();
        long doubtful = papers.stream()
                .flatMap(paper -> paper.entries().values().stream())
                .filter(ScannedEntry::mustBeSeen)
                .count();
        errors.printf("%d entries read, %d of them must be compared with the picture: %s%n", entries, doubtful, output);
        return 0;
    }

    private void progress(Path file, int page, int pages, double share) {
        if (System.console() != null) {
            spec.commandLine()
                    .getErr()
                    .printf(
                            "\r%s, page %d of %d, %3.0f %%%s",
                            file.getFileName(), page, pages, 100 * share, share >= 1 ? "\n" : "");
            spec.commandLine().getErr().flush();
        }
    }

    private static List<String> strings(List<Path> paths) {
        return paths.stream().map(Path::toString).toList();
    }
}
