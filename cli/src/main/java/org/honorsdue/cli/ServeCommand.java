package org.honorsdue.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.honorsdue.casebook.Backup;
import org.honorsdue.casebook.Casebook;
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
        description = {
            "Opens the workbench in the browser, on this machine only, until it is stopped with Ctrl-C.",
            "An office that shares one casebook names its PostgreSQL database with --database; user and password are",
            "taken from HONORS_DATABASE_USER and HONORS_DATABASE_PASSWORD, so that they stand in no list of processes."
        })
final class ServeCommand implements Callable<Integer> {
    private static final int USUAL_PORT = 7345;
    private static final String CASEBOOK = "casebook.db";

    @Spec
    private CommandSpec spec;

    @Option(names = "--port", paramLabel = "N", description = "port to listen on; " + USUAL_PORT + " if not given")
    private int port = USUAL_PORT;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "folder that holds the casebook; honors-casebook in your home folder if not given")
    private Optional<Path> data = Optional.empty();

    @Option(
            names = "--database",
            paramLabel = "URL",
            description = "keep the casebook in PostgreSQL instead, as in jdbc:postgresql://server/honors")
    private Optional<String> database = Optional.empty();

    @Option(
            names = "--put-back",
            paramLabel = "FILE",
            description = "first put this copy of a casebook in the place of the one in DIR, which is kept beside it")
    private Optional<Path> copy = Optional.empty();

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (port < 0 || port > 65_535) {
            throw new InputFault("honors: a port lies between 0 and 65535; %d does not.".formatted(port));
        }
        if (database.isPresent() && (data.isPresent() || copy.isPresent())) {
            throw new InputFault("honors: --database keeps the casebook on a server; --data and --put-back belong to a"
                    + " casebook on this machine. Give one or the other.");
        }
        var reference = Reference.published();
        var clock = Clock.systemDefaultZone();
        var closed = new CountDownLatch(1);
        try (var workbench = Workbench.open(port, casebook(clock), reference, new LawExaminer(reference), clock)) {
            Runtime.getRuntime().addShutdownHook(new Thread(workbench::close, "close-the-room"));
            var out = spec.commandLine().getOut();
            out.printf("The reading room is open: http://localhost:%d/%n", workbench.port());
            out.printf(
                    "The casebook is in %s. Stop with Ctrl-C.%n",
                    database.map(ServeCommand::withoutParameters)
                            .orElseGet(() -> folder().toAbsolutePath().toString()));
            out.flush();
            closed.await();
        }
        return 0;
    }

    private Path folder() {
        return data.orElseGet(() -> Path.of(System.getProperty("user.home"), "honors-casebook"));
    }

    private Casebook casebook(Clock clock) throws IOException {
        if (database.isPresent()) {
            return onServer(database.get(), clock);
        }
        Path file = folder().resolve(CASEBOOK);
        if (copy.isPresent()) {
            try {
                Backup.restore(copy.get(), file);
            } catch (Backup.Damaged e) {
                throw new InputFault("honors: " + e.getMessage());
            }
        }
        return Casebook.inFile(file, clock);
    }

    private static Casebook onServer(String url, Clock clock) {
        if (!url.startsWith("jdbc:postgresql:")) {
            throw new InputFault(
                    "honors: \"%s\" is no address of a PostgreSQL database; it begins with jdbc:postgresql:, as in jdbc:postgresql://server/honors."
                            .formatted(url));
        }
        try {
            return Casebook.onServer(url, setting("HONORS_DATABASE_USER"), setting("HONORS_DATABASE_PASSWORD"), clock);
        } catch (RuntimeException e) {
            throw new InputFault(
                    "honors: the casebook at %s cannot be opened: %s".formatted(withoutParameters(url), innermost(e)));
        }
    }

    /** The address without what may hold a password. */
    private static String withoutParameters(String url) {
        return url.replaceFirst("[?].*", "");
    }

    private static String setting(String name) {
        return Optional.ofNullable(System.getenv(name)).orElse("");
    }

    private static String innermost(Throwable fault) {
        Throwable cause = fault;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return String.valueOf(cause.getMessage());
    }
}
