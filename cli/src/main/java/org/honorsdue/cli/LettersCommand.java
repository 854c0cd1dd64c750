package org.honorsdue.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.honorsdue.documents.Output;
import org.honorsdue.documents.letter.Correspondence;
import org.honorsdue.documents.letter.Dossier;
import org.honorsdue.documents.letter.Masking;
import org.honorsdue.documents.letter.Relation;
import org.honorsdue.documents.pdf.Sheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors letters FILE -o DIR}: the papers to send and to keep. */
@Command(
        name = "letters",
        mixinStandardHelpOptions = true,
        header = "The papers to send and to keep.",
        description = {
            "Family summary, proof annex, evidence checklist, requests for records, medals and correction,",
            "transcription, framer's sheet. Serial number and addresses are masked unless --private is given;",
            "the offices need the private version."
        })
final class LettersCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the casefile")
    private Path file = Path.of("");

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "DIR",
            description = "the folder to write them into")
    private Path output = Path.of("");

    @Option(
            names = "--relation",
            paramLabel = "RELATION",
            description = "who writes, as in eldest-child; decides what he or she may ask for")
    private Optional<String> relation = Optional.empty();

    @Option(names = "--format", paramLabel = "FORMAT", description = "pdf, html or text; pdf if not given")
    private Output format = Output.PDF;

    @Option(names = "--sheet", paramLabel = "SHEET", description = "letter or a4; letter if not given")
    private Sheet sheet = Sheet.LETTER;

    @Option(names = "--private", description = "nothing masked: to send to an office, or for the family alone")
    private boolean forFamily;

    @Option(names = "--as-of", paramLabel = "DATE", description = "the day the letters bear; today if not given")
    private Optional<LocalDate> asOf = Optional.empty();

    @Override
    public Integer call() throws IOException {
        var writer = relation.map(LettersCommand::relation).orElse(Relation.NOT_STATED);
        var examination = new Examination();
        var day = asOf.orElseGet(() -> LocalDate.now(Clock.systemDefaultZone()));
        var dossier = Dossier.of(
                        examination.open(file),
                        examination.reader(),
                        examination.reference(),
                        examination.examiner(),
                        day,
                        Set.of())
                .from(writer)
                .masked(forFamily ? Masking.PRIVATE : Masking.SHARED);
        for (var page : Correspondence.all(dossier)) {
            Path target = output.resolve(format.fileName(page));
            OutputFile.write(target, format.of(page, sheet));
            spec.commandLine().getOut().println(target);
        }
        return 0;
    }

    private static Relation relation(String named) {
        return Relation.ofId(named)
                .orElseThrow(() -> new InputFault("honors: there is no relation \"%s\". It is one of: %s."
                        .formatted(
                                named,
                                Arrays.stream(Relation.values())
                                        .map(Relation::id)
                                        .collect(Collectors.joining(", ")))));
    }
}
