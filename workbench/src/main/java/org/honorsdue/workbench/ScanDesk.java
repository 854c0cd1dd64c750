package org.honorsdue.workbench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.honorsdue.casebook.StaleRevision;
import org.honorsdue.scanning.Notice;
import org.honorsdue.scanning.PaperScanner;
import org.honorsdue.scanning.Scan;
import org.honorsdue.scanning.ScanLimits;
import org.honorsdue.scanning.recognition.LanguageData;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.paper.Paper;

/**
 * Reads pictures one after another beside the pages, and puts what was read into the case they were brought for. What a
 * person typed meanwhile is never written over: the scanned paper then becomes a further paper.
 */
public final class ScanDesk implements AutoCloseable {
    private static final int TRIES = 5;

    private final Desk desk;
    private final ExecutorService reader = Executors.newSingleThreadExecutor(work -> {
        var thread = new Thread(work, "scan");
        thread.setDaemon(true);
        return thread;
    });
    private final Map<String, Progress> running = new ConcurrentHashMap<>();

    /**
     * How far a picture is read.
     *
     * @param share 0 to 1
     * @param says what has to be told about it, once it is done
     */
    public record Progress(String picture, double share, boolean done, List<String> says) {
        public Progress {
            says = List.copyOf(says);
        }

        public int percent() {
            return (int) Math.round(100 * share);
        }
    }

    ScanDesk(Desk desk) {
        this.desk = desk;
    }

    /** Begins to read a picture for a case; does nothing but say so when no reading data is on this machine. */
    void begin(String caseId, String name, byte[] picture) {
        if (LanguageData.find().isEmpty()) {
            running.put(caseId, new Progress(name, 1, true, List.of(LanguageData.HOW_TO_GET_IT)));
            return;
        }
        running.put(caseId, new Progress(name, 0, false, List.of()));
        reader.submit(() -> read(caseId, name, picture));
    }

    Optional<Progress> progress(String caseId) {
        return Optional.ofNullable(running.get(caseId));
    }

    /** Takes the notice off, once somebody has read it. */
    void forget(String caseId) {
        running.computeIfPresent(caseId, (id, progress) -> progress.done() ? null : progress);
    }

    private void read(String caseId, String name, byte[] picture) {
        try {
            var file = Files.createTempFile("honors-picture", ".bin");
            try {
                Files.write(file, picture);
                keep(caseId, name, scan(caseId, name, file));
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException | RuntimeException e) {
            running.put(
                    caseId,
                    new Progress(
                            name,
                            1,
                            true,
                            List.of("The picture could not be read (" + e.getMessage() + "). Type it in.")));
        }
    }

    private Scan scan(String caseId, String name, Path file) {
        try (var scanner = PaperScanner.with(LanguageData.find().orElseThrow(), ScanLimits.USUAL)) {
            return scanner.scan(file, (page, pages, share) -> {
                running.put(caseId, new Progress(name, (page - 1 + share) / pages, false, List.of()));
                return !Thread.currentThread().isInterrupted();
            });
        }
    }

    private void keep(String caseId, String name, Scan scan) {
        var says = new ArrayList<>(scan.notices().stream().map(Notice::says).toList());
        for (var scanned : scan.papers()) {
            byte[] upright = png(scanned.page().upright().picture());
            var attachment = desk.casebook()
                    .attach(caseId, name + ", page " + scanned.picture() + " upright.png", "image/png", upright);
            int paper = put(caseId, scanned.paper());
            desk.casebook()
                    .attach(
                            caseId,
                            "reading of " + attachment.name() + ".json",
                            Review.MEDIA_TYPE,
                            Review.of(scanned, paper, attachment.sha256()).write());
            says.add("%s: %d entries read.".formatted(name, scanned.entries().size()));
        }
        running.put(caseId, new Progress(name, 1, true, says));
    }

    /** Puts the paper into the case, in the place of an empty one if there is one; returns its number. */
    private int put(String caseId, Paper scanned) {
        for (int attempt = 0; ; attempt++) {
            var kept = desk.casebook().open(caseId);
            var casefile = desk.casefile(kept);
            var papers = new ArrayList<>(casefile.papers());
            int number = papers.size() + 1;
            for (int i = 0; i < papers.size(); i++) {
                if (papers.get(i).entries().isEmpty()) {
                    number = i + 1;
                    break;
                }
            }
            if (number <= papers.size()) {
                papers.set(number - 1, scanned);
            } else {
                papers.add(scanned);
            }
            try {
                desk.save(
                        caseId,
                        kept.revision(),
                        new Casefile(casefile.name(), casefile.sex(), papers, casefile.evidence()),
                        "read from a picture");
                return number;
            } catch (StaleRevision somebodyTypes) {
                if (attempt >= TRIES) {
                    throw somebodyTypes;
                }
            }
        }
    }

    static byte[] png(java.awt.image.BufferedImage picture) {
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException("A picture could not be written in memory.", e);
        }
        return out.toByteArray();
    }

    @Override
    public void close() {
        reader.shutdownNow();
        try {
            reader.awaitTermination(5, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
