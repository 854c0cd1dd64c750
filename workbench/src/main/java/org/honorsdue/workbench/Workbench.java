package org.honorsdue.workbench;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import io.javalin.Javalin;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Set;
import org.honorsdue.casebook.Casebook;
import org.honorsdue.determination.Examiner;
import org.honorsdue.reference.Reference;

/** The reading room, open on one port of this machine until it is closed. */
public final class Workbench implements AutoCloseable {
    private static final long LARGEST_UPLOAD = 64L * 1024 * 1024;

    private final Javalin server;
    private final Casebook casebook;

    private Workbench(Javalin server, Casebook casebook) {
        this.server = server;
        this.casebook = casebook;
    }

    /**
     * Opens the room.
     *
     * @param port to listen on; 0 takes a free one
     * @param data folder that holds the casebook; made when it is not there
     * @throws IOException when the casebook cannot be opened
     */
    public static Workbench open(int port, Path data, Reference reference, Examiner examiner, Clock clock)
            throws IOException {
        var casebook = Casebook.inFile(data.resolve("casebook.db"), clock);
        var pages = TemplateEngine.createPrecompiled(null, ContentType.Html, null, "org.honorsdue.workbench.page");
        var desk = new Desk(reference, examiner, casebook, clock);
        var server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.http.maxRequestSize = LARGEST_UPLOAD;
            new Guard(Set.of("localhost", "127.0.0.1", "[::1]")).install(config);
            new Assets().install(config);
            new CasebookPages(desk, new Pages(pages)).install(config);
        });
        server.start("127.0.0.1", port);
        return new Workbench(server, casebook);
    }

    /** The port it listens on. */
    public int port() {
        return server.port();
    }

    @Override
    public void close() {
        server.stop();
        casebook.close();
    }
}
