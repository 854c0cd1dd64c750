package org.honorsdue.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.honorsdue.scanning.CasefileForReview;
import org.honorsdue.scanning.Notice;
import org.honorsdue.scanning.PaperScanner;
import org.honorsdue.scanning.PictureFolder;
import org.honorsdue.scanning.ScanLimits;
import org.honorsdue.scanning.ScanWatcher;
import org.honorsdue.scanning.ScannedEntry;
import org.honorsdue.scanning.ScannedPaper;
import org.honorsdue.scanning.recognition.LanguageData;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * {@code honors scan PICTURE… -o casefile.yaml}: pictures of one soldier's papers to a casefile for review; {@code
 * honors scan FOLDER -o FOLDER}: one casefile for each picture of a folder, unattended.
 */
@Command(
        name = "scan",
        mixinStandardHelpOptions = true,
        header = "A photograph or PDF of a paper to a casefile for review.",
        description = {
            "Reads photographs, scans or a PDF of one soldier's papers into a casefile",
            "for review, with how sure it is beside each entry. Compare every figure with",
            "the paper before you rely on it. Nothing leaves this machine.",
            "",
            "Given a folder, it reads every picture in it into a casefile of its own.",
            "Stopped (Ctrl-C) and started again, it goes on where it was; a casefile that",
            "you have corrected is never written over."
        })
final class ScanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "1..*",
            paramLabel = "PICTURE",
            description = "pictures or PDF files, one soldier; or one folder")
    private List<Path> files = List.of();

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "OUT",
            description = "the casefile to write; for a folder, the folder for the casefiles")
    private Path output = Path.of("");

    @Option(
            names = "--crops",
            paramLabel = "DIR",
            description = "also write the picture of each box there, named by paper and entry, to compare it with")
    private Optional<Path> crops = Optional.empty();

    @Option(names = "--overwrite", description = "write over a casefile that exists, corrections and all")
    private boolean overwrite;

    @Override
    public Integer call() throws IOException {
        boolean folder = files.size() == 1 && Files.isDirectory(files.get(0));
        var missing = files.stream()
                .filter(file -> !folder && !Files.isRegularFile(file))
                .toList();
        if (!missing.isEmpty()) {
            throw new InputFault("honors: there is no file " + String.join(", no file ", strings(missing))
                    + ". Give picture files, or one folder.");
        }
        if (folder && Files.exists(output) && !Files.isDirectory(output)) {
            throw new InputFault("honors: " + output + " is a file; for a folder of pictures -o names a folder.");
        }
        if (folder && Files.exists(output) && Files.isSameFile(files.get(0), output)) {
            throw new InputFault("honors: the casefiles need a folder of their own; choose another -o.");
        }
        if (!folder && Files.isDirectory(output)) {
            throw new InputFault("honors: " + output + " is a folder; -o names the casefile to write.");
        }
        if (!folder && Files.exists(output) && !overwrite) {
            throw new InputFault("honors: " + output
                    + " exists and may hold your corrections. Choose another -o, or say" + " --overwrite.");
        }
        try (var scanner = scanner();
                var stop = new StopSignal()) {
            return folder ? folder(scanner, stop) : papers(scanner, stop);
        }
    }

    private static PaperScanner scanner() {
        var data = LanguageData.find().orElseThrow(() -> new InputFault("honors: " + LanguageData.HOW_TO_GET_IT));
        try {
            return PaperScanner.with(data, ScanLimits.USUAL);
        } catch (IllegalStateException e) {
            throw new InputFault("honors: " + e.getMessage());
        }
    }

    private int papers(PaperScanner scanner, StopSignal stop) throws IOException {
        var errors = spec.commandLine().getErr();
        var papers = new ArrayList<ScannedPaper>();
        var notices = new ArrayList<Notice>();
        boolean stopped = false;
        for (int i = 0; i < files.size() && !stopped; i++) {
            var scan = scanner.scan(files.get(i), watcher(files.get(i), stop));
            papers.addAll(scan.papers());
            notices.addAll(scan.notices());
            stopped = scan.stopped();
        }
        if (stopped) {
            notices.add(
                    new Notice(Notice.Kind.INCOMPLETE, "Stopped before the end; what was read until then is here."));
        }
        notices.forEach(notice -> errors.println(notice.says()));
        if (papers.isEmpty()) {
            throw new InputFault("honors: nothing could be read from " + String.join(", ", strings(files))
                    + "; no casefile was written. Type the paper in instead.");
        }
        OutputFile.write(output, CasefileForReview.yaml(papers, notices));
        if (crops.isPresent()) {
            CasefileForReview.crops(papers, crops.get());
        }
        var entries = papers.stream()
                .flatMap(paper -> paper.entries().values().stream())
                .toList();
        errors.printf(
                "%d entries read: %d in doubt; in %d more, figures to compare with the picture.%n",
                entries.size(),
                entries.stream().filter(ScannedEntry::inDoubt).count(),
                entries.stream()
                        .filter(entry -> entry.mustBeSeen() && !entry.inDoubt())
                        .count());
        crops.ifPresent(folder -> errors.printf("The boxes, to compare with: %s%n", folder));
        errors.printf("Go through %s, then: honors examine %s%n", output, output);
        return stopped ? StopSignal.EXIT_CODE : 0;
    }

    private int folder(PaperScanner scanner, StopSignal stop) throws IOException {
        var errors = spec.commandLine().getErr();
        var run = new PictureFolder(files.get(0), output, crops);
        var outcome = run.run(file -> scanner.scan(file, watcher(file, stop)), (name, became, done, of) -> {
            if (became != PictureFolder.Became.SKIPPED) {
                errors.printf("%s%d of %d  %s: %s%n", clear(), done, of, name, says(became));
            }
            return !stop.given();
        });
        errors.printf("Casefiles: %d, in %s. Done in earlier runs: %d.%n", outcome.done(), output, outcome.skipped());
        if (outcome.refused() > 0) {
            errors.printf("Not read: %d; why is in the .not-read.txt of each.%n", outcome.refused());
        }
        if (outcome.stopped()) {
            errors.println("Stopped; the same command goes on from here.");
            return StopSignal.EXIT_CODE;
        }
        return outcome.done() == 0 && outcome.refused() > 0 ? 2 : 0;
    }

    private static String says(PictureFolder.Became became) {
        return switch (became) {
            case READ -> "read";
            case REFUSED -> "not read";
            case READ_BESIDE -> "read again beside the casefile that you have corrected";
            case SKIPPED -> "done before";
        };
    }

    private ScanWatcher watcher(Path file, StopSignal stop) {
        return (page, pages, share) -> {
            progress(spec.commandLine().getErr(), file, page, pages, share);
            return !stop.given();
        };
    }

    private static void progress(PrintWriter errors, Path file, int page, int pages, double share) {
        if (System.console() != null) {
            errors.printf("%s%s, page %d of %d, %3.0f %%", clear(), file.getFileName(), page, pages, 100 * share);
            if (share >= 1 && page == pages) {
                errors.print(clear());
            }
            errors.flush();
        }
    }

    /** Back to the start of the terminal's line, and the line emptied; nothing where there is no terminal. */
    private static String clear() {
        return System.console() != null ? "\r\u001b[K" : "";
    }

    private static List<String> strings(List<Path> paths) {
        return paths.stream().map(Path::toString).toList();
    }
}
