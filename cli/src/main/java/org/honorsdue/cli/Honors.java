package org.honorsdue.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParseResult;

/** The command {@code honors}. Exit codes: 0 done, 1 our fault, 2 the input's fault. */
@Command(
        name = "honors",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Works out every award a Second World War US Army soldier was authorized,",
            "from what was typed on the separation paper, and proves each one.",
            ""
        },
        footer = {
            "",
            "It advises; only the Army and the National Archives decide.",
            "Start with:  honors examine demo/fairweather.yaml"
        },
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            ExamineCommand.class,
            DecodeCommand.class,
            LawCommand.class,
            UnitCommand.class,
            ScanCommand.class,
            RibbonsCommand.class,
            MountCommand.class,
            LettersCommand.class,
            BatchCommand.class,
            ServeCommand.class
        })
public final class Honors {
    private Honors() {}

    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }

    static int run(String... arguments) {
        // The findings hold names with accents; the terminal's own character set may not be the right one.
        var out = new PrintWriter(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        var errors = new PrintWriter(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        var line = new CommandLine(new Honors())
                .setOut(out)
                .setErr(errors)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpAutoWidth(true)
                .setExecutionExceptionHandler(Honors::report);
        int code = line.execute(arguments);
        out.flush();
        return code;
    }

    /** A fault of the input is told in its own words; anything else is our mistake and says so. */
    private static int report(Exception fault, CommandLine line, ParseResult parsed) {
        var errors = line.getErr();
        if (fault instanceof InputFault) {
            errors.println(fault.getMessage());
            return CommandLine.ExitCode.USAGE;
        }
        errors.println("honors: this is a fault of the program, not of your input: " + fault);
        if (System.getenv("HONORS_TRACE") != null) {
            fault.printStackTrace(errors);
        } else {
            errors.println("Set HONORS_TRACE=1 and run it again to see where.");
        }
        return CommandLine.ExitCode.SOFTWARE;
    }
}
