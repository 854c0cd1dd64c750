package org.honorsdue.scanning;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Scans a folder of pictures unattended, one casefile for each, and remembers what is done: stopped at any moment and
 * begun again, it goes on where it was. The pictures themselves are only read.
 */
public final class PictureFolder {
    /** The file in the output folder that remembers what is done. */
    public static final String STATE = "scan-state.tsv";

    private final Path pictures;
    private final Path output;
    private final boolean withCrops;

    /** @param withCrops whether the picture of every box is written beside the casefile */
    public PictureFolder(Path pictures, Path output, boolean withCrops) {
        this.pictures = pictures;
        this.output = output;
        this.withCrops = withCrops;
    }

    /** Told after each picture; says whether to go on. */
    public interface Progress {
        Progress SILENT = (name, done, of) -> true;

        /** @param done how many pictures are done, those of earlier runs too */
        boolean goOn(String name, int done, int of);
    }

    /**
     * How a run ended.
     *
     * @param done pictures with a casefile, of this run and earlier ones
     * @param refused pictures that gave none
     * @param skipped pictures that were done already and have not changed since
     */
    public record Outcome(int done, int refused, int skipped, boolean stopped) {}

    /** What is known of a picture that was dealt with. */
    private record Done(String digest, String result) {}

    /**
     * @param scan reads one picture, as {@link PaperScanner#scan} does
     * @throws IOException if the folders cannot be read or written; what was done until then is remembered
     */
    public Outcome run(Function<Path, Scan> scan, Progress progress) throws IOException {
        Files.createDirectories(output);
        var state = load();
        int skipped = 0;
        var files = files();
        int dealtWith = 0;
        boolean stopped = false;
        for (var file : files) {
            var name = file.getFileName().toString();
            var digest = digest(file);
            var known = state.get(name);
            if (known != null && known.digest.equals(digest)) {
                skipped++;
            } else {
                var read = scan.apply(file);
                if (read.stopped()) {
                    stopped = true;
                    break;
                }
                state.put(name, new Done(digest, write(name, read)));
                save(state);
            }
            dealtWith++;
            if (!progress.goOn(name, dealtWith, files.size())) {
                stopped = dealtWith < files.size();
                break;
            }
        }
        int refused = (int) state.values().stream()
                .filter(done -> done.result.equals("refused"))
                .count();
        return new Outcome(state.size() - refused, refused, skipped, stopped);
    }

    private List<Path> files() throws IOException {
        try (var all = Files.list(pictures)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        }
    }

    private String write(String name, Scan read) throws IOException {
        CasefileForReview.write(CasefileForReview.yaml(read.papers(), read.notices()), output.resolve(name + ".yaml"));
        if (withCrops && !read.papers().isEmpty()) {
            CasefileForReview.crops(read.papers(), output.resolve(name + ".crops"));
        }
        return read.papers().isEmpty() ? "refused" : "done";
    }

    private Map<String, Done> load() throws IOException {
        var state = new TreeMap<String, Done>();
        var file = output.resolve(STATE);
        if (Files.exists(file)) {
            for (var line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
                var cells = line.split("\t");
                if (cells.length == 3) {
                    state.put(cells[2], new Done(cells[0], cells[1]));
                }
            }
        }
        return state;
    }

    /** Written aside and renamed, so that a stop in the middle leaves the old state whole. */
    private void save(Map<String, Done> state) throws IOException {
        var lines = new ArrayList<String>();
        state.forEach((name, done) -> lines.add(done.digest + "\t" + done.result + "\t" + name));
        var aside = output.resolve(STATE + ".part");
        Files.write(aside, lines, StandardCharsets.UTF_8);
        Files.move(aside, output.resolve(STATE), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    private static String digest(Path file) throws IOException {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            try (var stream = Files.newInputStream(file)) {
                var buffer = new byte[1 << 16];
                for (int read = stream.read(buffer); read >= 0; read = stream.read(buffer)) {
                    digest.update(buffer, 0, read);
                }
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, 32);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
