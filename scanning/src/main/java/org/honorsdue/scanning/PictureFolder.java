package org.honorsdue.scanning;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Scans a folder of pictures unattended, one casefile for each, and remembers what is done: stopped at any moment and
 * begun again, it goes on where it was. The pictures themselves are only read, and a casefile that a person has
 * corrected since is never written over.
 */
public final class PictureFolder {
    /** The file in the output folder that remembers what is done. */
    public static final String STATE = "scan-state.tsv";

    private final Path pictures;
    private final Path output;
    private final Optional<Path> crops;

    /** @param crops the folder for the pictures of the boxes, one folder within it for each picture; or none */
    public PictureFolder(Path pictures, Path output, Optional<Path> crops) {
        this.pictures = pictures;
        this.output = output;
        this.crops = crops;
    }

    /** Told after each picture; says whether to go on. */
    public interface Progress {
        Progress SILENT = (name, became, done, of) -> true;

        /** @param done how many pictures are done, those of earlier runs too */
        boolean goOn(String name, Became became, int done, int of);
    }

    /** What became of one picture. */
    public enum Became {
        /** A casefile was written. */
        READ,
        /** No paper was recognised, and what is wrong stands in a text file beside where the casefile would be. */
        REFUSED,
        /** A casefile was written beside the one that a person had corrected. */
        READ_BESIDE,
        /** It was done in an earlier run and has not changed since. */
        SKIPPED
    }

    /**
     * How a run ended.
     *
     * @param done pictures with a casefile, of this run and earlier ones
     * @param refused pictures that gave none
     * @param skipped pictures that were done already and have not changed since
     */
    public record Outcome(int done, int refused, int skipped, boolean stopped) {}

    /** What is known of a picture that was dealt with: its digest, what came of it, the digest of its casefile. */
    private record Done(String digest, String result, String casefile) {}

    /**
     * @param scan reads one picture, as {@link PaperScanner#scan} does
     * @throws IOException if the folders cannot be read or written; what was done until then is remembered
     */
    public Outcome run(Function<Path, Scan> scan, Progress progress) throws IOException {
        Files.createDirectories(output);
        var state = load();
        int skipped = 0;
        int dealtWith = 0;
        boolean stopped = false;
        var files = files();
        for (var file : files) {
            var name = file.getFileName().toString();
            var digest = digest(file);
            var known = Optional.ofNullable(state.get(name));
            var became = Became.SKIPPED;
            if (known.filter(done -> done.digest.equals(digest)).isPresent()) {
                skipped++;
            } else {
                var read = scan.apply(file);
                if (read.stopped()) {
                    stopped = true;
                    break;
                }
                var yaml = CasefileForReview.yaml(read.papers(), read.notices());
                became = write(name, read, yaml, known.map(Done::casefile).orElse(""));
                var result = became == Became.REFUSED ? "refused" : "done";
                state.put(name, new Done(digest, result, digest(yaml)));
                save(state);
            }
            dealtWith++;
            if (!progress.goOn(name, became, dealtWith, files.size())) {
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
                    .filter(file -> !file.getFileName().toString().equals(STATE))
                    .sorted()
                    .toList();
        }
    }

    /** @param ours digest of the casefile written in an earlier run; empty if there was none */
    private Became write(String name, Scan read, String yaml, String ours) throws IOException {
        var casefile = output.resolve(name + ".yaml");
        var words = output.resolve(name + ".not-read.txt");
        if (read.papers().isEmpty()) {
            var says = new StringBuilder();
            read.notices().forEach(notice -> says.append(notice.says()).append('\n'));
            CasefileForReview.write(says.toString(), words);
            return Became.REFUSED;
        }
        Files.deleteIfExists(words);
        if (crops.isPresent()) {
            CasefileForReview.crops(read.papers(), crops.get().resolve(name));
        }
        if (Files.exists(casefile)) {
            var there = digest(casefile);
            if (!there.equals(ours) && !there.equals(digest(yaml))) {
                CasefileForReview.write(yaml, output.resolve(name + ".read-again.yaml"));
                return Became.READ_BESIDE;
            }
        }
        CasefileForReview.write(yaml, casefile);
        return Became.READ;
    }

    private Map<String, Done> load() throws IOException {
        var state = new TreeMap<String, Done>();
        var file = output.resolve(STATE);
        if (Files.exists(file)) {
            for (var line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
                var cells = line.split("\t", 4);
                if (cells.length == 4) {
                    state.put(cells[3], new Done(cells[0], cells[1], cells[2]));
                }
            }
        }
        return state;
    }

    /** Written aside and renamed, so that a stop in the middle leaves the old state whole. */
    private void save(Map<String, Done> state) throws IOException {
        var lines = new ArrayList<String>();
        state.forEach((name, done) ->
                lines.add(done.digest + "\t" + done.result + "\t" + done.casefile + "\t" + name.replace('\n', ' ')));
        CasefileForReview.write(String.join("\n", lines) + "\n", output.resolve(STATE));
    }

    private static String digest(Path file) throws IOException {
        var digest = sha256();
        try (var stream = Files.newInputStream(file)) {
            var buffer = new byte[1 << 16];
            for (int read = stream.read(buffer); read >= 0; read = stream.read(buffer)) {
                digest.update(buffer, 0, read);
            }
        }
        return shortened(digest);
    }

    private static String digest(String text) {
        var digest = sha256();
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        return shortened(digest);
    }

    private static String shortened(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest()).substring(0, 32);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}
