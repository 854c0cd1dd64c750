package org.honorsdue.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.reference.Reference;
import org.honorsdue.workbench.Workbench;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code honors serve}: the workbench in the browser, on this machine only. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        header = "The workbench in the browser, on this machine only.",
        description = "Opens the workbench in the browser, on this machine only, until it is stopped with Ctrl-C.")
final class ServeCommand implements Callable<Integer> {
    private static final int USUAL_PORT = 7345;

    @Spec
    private CommandSpec spec;

    @Option(names = "--port", paramLabel = "N", description = "port to listen on; " + USUAL_PORT + " if not given")
    private int port = USUAL_PORT;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "folder that holds the casebook; honors-casebook in your home folder if not given")
    private Optional<Path> data = Optional.empty();

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (port < 0 || port > 65_535) {
            throw new InputFault("honors: a port lies between 0 and 65535; %d does not.".formatted(port));
        }
        Path folder = data.orElseGet(() -> Path.of(System.getProperty("user.home"), "honors-casebook"));
        var reference = Reference.published();
        var closed = new CountDownLatch(1);
        try (var workbench =
                Workbench.open(port, folder, reference, new LawExaminer(reference), Clock.systemDefaultZone())) {
            Runtime.getRuntime().addShutdownHook(new Thread(workbench::close, "close-the-room"));
            var out = spec.commandLine().getOut();
            out.printf("The reading room is open: http://localhost:%d/%n", workbench.port());
            out.printf("The casebook is in %s. Stop with Ctrl-C.%n", folder.toAbsolutePath());
            out.flush();
            closed.await();
        }
        return 0;
    }
}
