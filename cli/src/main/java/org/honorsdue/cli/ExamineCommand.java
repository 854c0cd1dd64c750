package org.honorsdue.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.line.ServiceLine;
import org.honorsdue.determination.line.ServiceLineText;
import org.honorsdue.determination.nextsteps.NextSteps;
import org.honorsdue.determination.since.ThenAndSince;
import org.honorsdue.documents.findings.FindingsJson;
import org.honorsdue.documents.findings.FindingsText;
import org.honorsdue.documents.findings.Ink;
import org.honorsdue.documents.findings.NextStepsText;
import org.honorsdue.documents.findings.ThenAndSinceText;
import org.honorsdue.documents.letter.Correspondence;
import org.honorsdue.documents.letter.Dossier;
import org.honorsdue.documents.letter.Masking;
import org.honorsdue.documents.page.HtmlPage;
import org.honorsdue.documents.pdf.Press;
import org.honorsdue.documents.pdf.Sheet;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Typed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors examine FILE…}: the main job. */
@Command(
        name = "examine",
        mixinStandardHelpOptions = true,
        header = "The main job: every award authorized, with its proof, and what is open.",
        description = {
            "Every award the soldier was authorized, with its proof; what the paper left out;",
            "what is open and what would settle it; what is not due and why."
        })
final class ExamineCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "casefiles, YAML or JSON, one soldier each")
    private List<Path> files = List.of();

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            description = "answer as the law stood on that day (yyyy-mm-dd); today if not given")
    private Optional<LocalDate> asOf = Optional.empty();

    @Option(names = "--format", paramLabel = "FORMAT", description = "text, json, html or pdf; text if not given")
    private Format format = Format.TEXT;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "OUT",
            description = "write there instead of to the terminal; a folder when there are several files")
    private Optional<Path> output = Optional.empty();

    @Option(
            names = "--ask",
            paramLabel = "AWARD",
            description = "answer for this award too, even if nothing points to it; may be repeated")
    private List<String> ask = List.of();

    @Option(names = "--proof", description = "show every clause with its answer, not only those that decided")
    private boolean proof;

    @Option(
            names = "--then-and-since",
            description = "in text, also what was due the day he left, what later law changed, and what is due now")
    private boolean thenAndSince;

    @Option(names = "--service-line", description = "in text, also the service drawn on a scale of years and months")
    private boolean serviceLine;

    @Option(
            names = "--private",
            description = "show serial numbers and addresses in html and pdf, for the family alone")
    private boolean forFamily;

    private enum Format {
        TEXT,
        JSON,
        HTML,
        PDF
    }

    @Override
    public Integer call() throws IOException {
        var examination = new Examination();
        var asked = new LinkedHashSet<String>();
        ask.forEach(
                name -> asked.add(AwardNames.find(examination.reference(), name).id()));
        LocalDate day = asOf.orElseGet(() -> LocalDate.now(Clock.systemDefaultZone()));
        // All files are opened first, so that every fault of every one is told before anything is written.
        var casefiles = openAll(examination);
        if (format == Format.PDF && output.isEmpty()) {
            throw new InputFault("honors: a PDF needs a file to go to. Add -o OUT.pdf.");
        }
        for (int i = 0; i < files.size(); i++) {
            var casefile = casefiles.get(i);
            var facts = examination.read(casefile);
            deliver(files.get(i), render(examination, casefile, facts, day, asked));
        }
        return 0;
    }

    private List<Casefile> openAll(Examination examination) {
        var opened = new ArrayList<Casefile>();
        var faults = new ArrayList<String>();
        for (Path file : files) {
            try {
                opened.add(examination.open(file));
            } catch (InputFault fault) {
                faults.add(fault.getMessage());
            }
        }
        if (!faults.isEmpty()) {
            throw new InputFault(String.join("\n", faults));
        }
        return opened;
    }

    private byte[] render(
            Examination examination,
            Casefile casefile,
            ServiceFacts facts,
            LocalDate day,
            LinkedHashSet<String> asked) {
        var findings = examination.examine(facts, day, asked);
        var reference = examination.reference();
        return switch (format) {
            case TEXT -> {
                var ink = output.isEmpty() ? Terminal.ink() : Ink.PLAIN;
                yield bytes(text(examination, casefile, facts, findings, ink));
            }
            case JSON ->
                bytes(
                        files.size() == 1
                                ? new FindingsJson(reference).write(findings)
                                : new FindingsJson(reference).line(findings) + "\n");
            case HTML, PDF -> {
                var dossier = Dossier.of(casefile, examination.reader(), reference, examination.examiner(), day, asked)
                        .masked(forFamily ? Masking.PRIVATE : Masking.SHARED);
                var html = new HtmlPage(Sheet.LETTER).write(Correspondence.proof(dossier));
                yield format == Format.HTML ? bytes(html) : new Press().print(html, day);
            }
        };
    }

    private String text(Examination examination, Casefile casefile, ServiceFacts facts, Findings findings, Ink ink) {
        var reference = examination.reference();
        int width = Terminal.width();
        var further = new ArrayList<String>();
        if (thenAndSince) {
            var clocks = ThenAndSince.of(examination.examiner(), facts, reference, findings.asOf());
            further.add(new ThenAndSinceText(ink, width).write(clocks));
        }
        if (serviceLine) {
            further.add(ServiceLineText.write(ServiceLine.of(facts, findings, reference), width));
        }
        String next = new NextStepsText(ink, width).write(NextSteps.of(findings, facts, reference));
        if (!next.isEmpty()) {
            further.add(next);
        }
        return new FindingsText(reference, ink, width, proof).write(title(casefile), findings, further);
    }

    /** The soldier and what the paper calls him, as the head of the page. */
    static String title(Casefile casefile) {
        var words = new ArrayList<String>();
        casefile.name().or(() -> typed(casefile, Entry.NAME)).ifPresent(words::add);
        typed(casefile, Entry.GRADE).ifPresent(words::add);
        typed(casefile, Entry.ORGANIZATION).ifPresent(words::add);
        return String.join("  ·  ", words);
    }

    private static Optional<String> typed(Casefile casefile, Entry entry) {
        return casefile.papers().stream()
                .map(paper -> paper.entry(entry))
                .filter(Typed.Text.class::isInstance)
                .map(typed -> ((Typed.Text) typed).text().strip())
                .reduce((first, second) -> second);
    }

    private void deliver(Path file, byte[] content) throws IOException {
        if (output.isEmpty()) {
            spec.commandLine().getOut().print(new String(content, StandardCharsets.UTF_8));
            if (format == Format.TEXT && files.size() > 1) {
                spec.commandLine().getOut().println();
            }
            return;
        }
        Path target = output.get();
        if (files.size() > 1 || Files.isDirectory(target)) {
            String name = file.getFileName().toString().replaceFirst("\\.[A-Za-z]+$", "");
            target = target.resolve(name + "." + ending());
        }
        OutputFile.write(target, content);
    }

    private String ending() {
        return switch (format) {
            case TEXT -> "txt";
            case JSON -> "json";
            case HTML -> "html";
            case PDF -> "pdf";
        };
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
