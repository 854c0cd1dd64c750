package org.honorsdue.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors batch IN -o OUT}: a whole collection. */
@Command(
        name = "batch",
        mixinStandardHelpOptions = true,
        header = "A whole collection, resumable.",
        description = {
            "Examines a whole collection: a folder of casefiles, or a file with one casefile (JSON) to a line.",
            "One line of JSON a soldier comes out, in the order of the input. Stopped and started again,",
            "it goes on where it was. What cannot be read is listed beside OUT and does not stop the rest."
        })
final class BatchCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "IN", description = "a folder of casefiles, or a .jsonl file")
    private Path input = Path.of("");

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "OUT",
            description = "the file to write; it appears when the whole collection is done")
    private Path output = Path.of("");

    @Option(names = "--as-of", paramLabel = "DATE", description = "as the law stood on that day; today if not given")
    private Optional<LocalDate> asOf = Optional.empty();

    @Option(names = "--format", paramLabel = "FORMAT", description = "jsonl (findings whole) or csv (a row an award)")
    private CollectionRun.Form format = CollectionRun.Form.JSONL;

    @Override
    public Integer call() throws IOException {
        LocalDate day = asOf.orElseGet(() -> LocalDate.now(Clock.systemDefaultZone()));
        var collection = new CollectionRun(new Examination(), input, output, day, format);
        var errors = spec.commandLine().getErr();
        boolean watched = System.console() != null;
        var tally = collection.run((done, total) -> {
            if (watched) {
                errors.printf("\r%d of %d", done, total);
                errors.flush();
            }
        });
        if (watched) {
            errors.println();
        }
        errors.printf("%d examined, %d could not be read%n", tally.examined(), tally.refused());
        if (tally.refused() > 0) {
            errors.printf("what and why: %s%n", collection.faultsFile());
            return 2;
        }
        return 0;
    }
}
