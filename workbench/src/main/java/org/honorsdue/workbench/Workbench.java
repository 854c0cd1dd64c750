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
import org.honorsdue.determination.LawBook;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.unit.OrganizationReader;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.unit.UnitTables;

/** The reading room, open on one port of this machine until it is closed. */
public final class Workbench implements AutoCloseable {
    private static final long LARGEST_UPLOAD = 64L * 1024 * 1024;

    private final Javalin server;
    private final Casebook casebook;
    private final ScanDesk scans;

    private Workbench(Javalin server, Casebook casebook, ScanDesk scans) {
        this.server = server;
        this.casebook = casebook;
        this.scans = scans;
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
        return open(port, Casebook.inFile(data.resolve("casebook.db"), clock), reference, examiner, clock);
    }

    /** Opens the room on a casebook that is open already, as on an office's PostgreSQL; closes it with the room. */
    public static Workbench open(int port, Casebook casebook, Reference reference, Examiner examiner, Clock clock) {
        var engine = TemplateEngine.createPrecompiled(null, ContentType.Html, null, "org.honorsdue.workbench.page");
        engine.setTrimControlStructures(true);
        var pages = new Pages(engine);
        var units = new OrganizationReader(UnitTables.published());
        var desk = new Desk(
                reference,
                examiner,
                new LawBook(reference),
                new CasefileReader(reference, UnitReader.of(units)),
                casebook,
                clock,
                System.getProperty("user.name", "reader"));
        var scans = new ScanDesk(desk);
        var server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.http.maxRequestSize = LARGEST_UPLOAD;
            config.jetty.multipartConfig.maxTotalRequestSize(64, io.javalin.config.SizeUnit.MB);
            new Guard(Set.of("localhost", "127.0.0.1", "[::1]")).install(config);
            new Assets().install(config);
            new Faults(pages).install(config);
            new CasebookPages(desk, pages, scans).install(config);
            new FolderPages(desk, pages).install(config);
            new DeskPages(desk, pages, scans).install(config);
            new FindingsPages(desk, pages).install(config);
            new LetterPages(desk, pages).install(config);
            new RackPages(desk, pages).install(config);
            new LinePages(desk, pages).install(config);
            new ReferencePages(desk, pages, units).install(config);
            new TourPages(desk, pages).install(config);
            new Api(desk).install(config);
        });
        server.start("127.0.0.1", port);
        return new Workbench(server, casebook, scans);
    }

    /** The port it listens on. */
    public int port() {
        return server.port();
    }

    @Override
    public void close() {
        server.stop();
        scans.close();
        casebook.close();
    }
}
