package org.honorsdue.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.honorsdue.insignia.print.DrawingPrint;
import org.honorsdue.insignia.print.Paper;
import org.honorsdue.insignia.print.Png;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.insignia.ribbon.RibbonRack;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors ribbons FILE -o rack.svg|png|pdf}: the ribbon rack. */
@Command(
        name = "ribbons",
        mixinStandardHelpOptions = true,
        header = "The ribbon rack, drawn to scale.",
        description = "The ribbon rack of what is authorized, in the order of precedence, drawn to scale.")
final class RibbonsCommand implements Callable<Integer> {
    private static final int PRINT_RESOLUTION = 300;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the casefile")
    private Path file = Path.of("");

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "OUT",
            description = "the drawing; its ending says what kind: .svg, .png (300 dots an inch) or .pdf (true size)")
    private Path output = Path.of("");

    @Option(names = "--as-of", paramLabel = "DATE", description = "as the law stood on that day; today if not given")
    private Optional<LocalDate> asOf = Optional.empty();

    @Option(names = "--per-row", paramLabel = "N", description = "three or four ribbons to a row; three if not given")
    private int perRow = 3;

    @Option(names = "--sheet", paramLabel = "SHEET", description = "letter or a4 for a PDF; letter if not given")
    private Paper sheet = Paper.LETTER;

    @Option(
            names = "--practice",
            paramLabel = "PRACTICE",
            description = "present or wartime, where the two differ; present if not given")
    private RackStyle.Practice practice = RackStyle.standard().practice();

    @Override
    public Integer call() throws IOException {
        if (perRow < 3 || perRow > 4) {
            throw new InputFault("honors: a rack has three or four ribbons to a row, not " + perRow + ".");
        }
        String name = output.getFileName().toString().toLowerCase(Locale.ROOT);
        if (!name.matches(".*\\.(svg|png|pdf)")) {
            throw new InputFault("honors: \"%s\" ends in none of .svg, .png, .pdf, so the kind of drawing is not clear."
                    .formatted(output));
        }
        var examination = new Examination();
        var facts = examination.read(examination.open(file));
        var day = asOf.orElseGet(() -> LocalDate.now(Clock.systemDefaultZone()));
        var findings = examination.examine(facts, day, Set.of());
        var rack =
                RibbonRack.of(findings, RackStyle.standard().withPerRow(perRow).withPractice(practice));
        if (rack.isEmpty()) {
            throw new InputFault(
                    "honors: nothing with a ribbon is authorized on what this casefile shows, so there is no"
                            + " rack to draw. \"honors examine\" says what is open.");
        }
        OutputFile.write(output, drawn(rack, name, day));
        rack.remarks().forEach(spec.commandLine().getErr()::println);
        return 0;
    }

    private byte[] drawn(RibbonRack rack, String name, LocalDate day) {
        if (name.endsWith(".pdf")) {
            return DrawingPrint.rack(rack, sheet, day);
        }
        return name.endsWith(".svg")
                ? rack.svg().text().getBytes(StandardCharsets.UTF_8)
                : Png.atResolution(rack.svg(), PRINT_RESOLUTION);
    }
}
