package org.honorsdue.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.honorsdue.insignia.display.Addition;
import org.honorsdue.insignia.display.CasePlan;
import org.honorsdue.insignia.display.CaseWish;
import org.honorsdue.insignia.display.SoldiersSleeve;
import org.honorsdue.insignia.print.CasePrint;
import org.honorsdue.insignia.print.Paper;
import org.honorsdue.insignia.print.Png;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.ServiceFacts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code honors mount FILE --frame 16x20 -o plan.pdf}: the display case at true size. */
@Command(
        name = "mount",
        mixinStandardHelpOptions = true,
        header = "The display case at true size, with its parts list.",
        description = {
            "Lays out what is authorized in a frame; what is presumed gets a marked place. A PDF prints at 1:1 over",
            "sheets, with check bars, hole positions, a parts list and notes on keeping things safe."
        })
final class MountCommand implements Callable<Integer> {
    private static final int SCREEN_RESOLUTION = 100;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the casefile")
    private Path file = Path.of("");

    @Option(names = "--frame", paramLabel = "WxH", description = "opening of the frame in inches; 16x20 if not given")
    private String frame = "16x20";

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "OUT",
            description = "the plan; its ending says what kind: .pdf (1:1), .svg or .png (as it will look)")
    private Path output = Path.of("");

    @Option(names = "--sheet", paramLabel = "SHEET", description = "letter or a4 for the PDF; letter if not given")
    private Paper sheet = Paper.LETTER;

    @Option(
            names = "--nameplate",
            paramLabel = "LINE",
            description = "a line of the nameplate, up to four; may be repeated")
    private List<String> nameplate = List.of();

    @Option(names = "--dog-tags", description = "leave room for the identity tags")
    private boolean dogTags;

    @Option(names = "--chevrons", description = "add a pair of chevrons of the grade on his last paper")
    private boolean chevrons;

    @Option(
            names = "--without",
            paramLabel = "PIECE",
            description = "a piece that is not wanted, by its number or name; may be repeated")
    private List<String> without = List.of();

    @Option(names = "--as-of", paramLabel = "DATE", description = "as the law stood on that day; today if not given")
    private Optional<LocalDate> asOf = Optional.empty();

    @Override
    public Integer call() throws IOException {
        String name = output.getFileName().toString().toLowerCase(Locale.ROOT);
        if (!name.matches(".*\\.(pdf|svg|png)")) {
            throw new InputFault("honors: \"%s\" ends in none of .pdf, .svg, .png, so the kind of plan is not clear."
                    .formatted(output));
        }
        var examination = new Examination();
        var facts = examination.read(examination.open(file));
        var wish = wish(facts);
        var day = asOf.orElseGet(() -> LocalDate.now(Clock.systemDefaultZone()));
        var findings = examination.examine(facts, day, Set.of());
        var whole = CasePlan.of(findings, wish);
        var plan = without.isEmpty() ? whole : CasePlan.of(findings, leavingOut(wish, whole));
        if (plan.placed().isEmpty()) {
            throw new InputFault("honors: " + plan.description() + " \"honors examine\" says what is open.");
        }
        OutputFile.write(output, drawn(plan, name, day));
        var errors = spec.commandLine().getErr();
        plan.breaches().forEach(breach -> errors.println(breach.says()));
        plan.largerFrame().ifPresent(larger -> errors.printf("A frame of %s in would hold it at ease.%n", larger.id()));
        plan.smallerFrame().ifPresent(smaller -> errors.printf("A frame of %s in would do as well.%n", smaller.id()));
        return 0;
    }

    private CaseWish wish(ServiceFacts facts) {
        try {
            var wish = SoldiersSleeve.dressed(CaseWish.ofSize(frame), facts, InsigniaTables.published());
            if (chevrons) {
                wish = wish.adding(SoldiersSleeve.chevrons(facts)
                        .map(Addition.Chevrons::new)
                        .orElseThrow(() -> new InputFault(
                                "honors: his last paper gives no grade that wore chevrons; leave out --chevrons.")));
            }
            if (!nameplate.isEmpty()) {
                wish = wish.adding(new Addition.Nameplate(nameplate));
            }
            return dogTags ? wish.adding(new Addition.DogTags()) : wish;
        } catch (IllegalArgumentException e) {
            throw new InputFault("honors: " + e.getMessage());
        }
    }

    /** Takes pieces out by the number they have in the whole plan, or by their name. */
    private CaseWish leavingOut(CaseWish wish, CasePlan whole) {
        var less = wish;
        for (String piece : without) {
            String named = piece.strip().toLowerCase(Locale.ROOT);
            var out = whole.placed().stream()
                    .filter(one -> named.equals(String.valueOf(one.number()))
                            || one.piece().name().toLowerCase(Locale.ROOT).startsWith(named))
                    .findFirst()
                    .orElseThrow(() -> new InputFault(
                            "honors: the case holds no piece \"%s\". %s".formatted(piece, whole.description())));
            less = less.without(out.piece().id());
        }
        return less;
    }

    private byte[] drawn(CasePlan plan, String name, LocalDate day) {
        if (name.endsWith(".pdf")) {
            return CasePrint.pdf(plan, sheet, day);
        }
        return name.endsWith(".svg")
                ? plan.svg().text().getBytes(StandardCharsets.UTF_8)
                : Png.atResolution(plan.svg(), SCREEN_RESOLUTION);
    }
}
