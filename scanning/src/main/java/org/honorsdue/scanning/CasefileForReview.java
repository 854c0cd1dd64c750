package org.honorsdue.scanning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.honorsdue.scanning.form.FormPage;
import org.honorsdue.scanning.preparation.Flattening;
import org.honorsdue.service.paper.Entry;

/**
 * Writes what was read as a casefile that a person goes through: beside every entry its confidence, why it must be
 * looked at, and what else was read. The comments carry all that the casefile itself has no place for.
 */
public final class CasefileForReview {
    private CasefileForReview() {}

    /** The casefile as YAML, for papers of one soldier. */
    public static String yaml(List<ScannedPaper> papers, List<Notice> notices) {
        var yaml = new StringBuilder();
        yaml.append("# Read from a picture by a machine; nothing here has been confirmed by a person.\n");
        yaml.append("# Compare each entry with the paper, figures above all, and correct it here.\n");
        for (var notice : notices) {
            yaml.append("# ").append(oneLine(notice.says())).append('\n');
        }
        yaml.append(papers.isEmpty() ? "papers: []\n" : "papers:\n");
        for (var paper : papers) {
            paper(yaml, paper);
        }
        return yaml.toString();
    }

    private static void paper(StringBuilder yaml, ScannedPaper paper) {
        long toSee = paper.entries().values().stream()
                .filter(ScannedEntry::mustBeSeen)
                .count();
        yaml.append("  - form: ").append(paper.form().title()).append('\n');
        yaml.append("    # page %d; %d of %d entries must be looked at\n"
                .formatted(paper.picture(), toSee, paper.entries().size()));
        var doubtful = paper.entries().values().stream()
                .filter(ScannedEntry::inDoubt)
                .map(entry -> entry.entry().key())
                .toList();
        if (!doubtful.isEmpty()) {
            yaml.append("    # look at these first: ")
                    .append(String.join(", ", doubtful))
                    .append('\n');
        }
        yaml.append("    entries:\n");
        for (var entry : paper.entries().values()) {
            entry(yaml, paper, entry);
        }
    }

    private static void entry(StringBuilder yaml, ScannedPaper paper, ScannedEntry entry) {
        var comment = new StringBuilder();
        box(paper, entry.entry())
                .ifPresent(number -> comment.append("box ").append(number).append(": "));
        comment.append("%.0f %% sure".formatted(100 * entry.confidence()));
        for (var flag : entry.flags()) {
            comment.append("; ").append(flag.says());
        }
        if (!entry.raw().equals(entry.text())) {
            comment.append("; first read ").append(quoted(oneLine(entry.raw())));
        }
        var others = entry.alternatives().stream()
                .filter(other -> !other.equals(entry.raw()))
                .map(other -> quoted(oneLine(other)))
                .toList();
        if (!others.isEmpty()) {
            comment.append("; or ").append(String.join(" or ", others));
        }
        yaml.append("      # ").append(comment).append('\n');
        yaml.append("      ").append(entry.entry().key()).append(':');
        if (entry.entry() == Entry.SERVICE_OUTSIDE_US && !paper.legs().isEmpty()) {
            yaml.append('\n');
            for (var leg : paper.legs()) {
                yaml.append("        - { departed: %s, destination: %s, arrived: %s }\n"
                        .formatted(quoted(leg.departed()), quoted(leg.destination()), quoted(leg.arrived())));
            }
        } else {
            yaml.append(entry.text().isBlank() ? "" : " " + quoted(entry.text()))
                    .append('\n');
        }
    }

    /** The number printed in the box, which is how a person finds it on the paper. */
    private static Optional<String> box(ScannedPaper paper, Entry entry) {
        return paper.page().fit().layout().parts().stream()
                .filter(part -> part.entry().equals(Optional.of(entry)))
                .flatMap(part -> part.box().stream())
                .map(String::valueOf)
                .findFirst();
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    /** A YAML double-quoted scalar. */
    static String quoted(String text) {
        var quoted = new StringBuilder("\"");
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                default -> {
                    if (letter < 32 || letter == 127 || (letter >= 0x80 && letter < 0xA0)) {
                        quoted.append("\\x%02x".formatted(letter));
                    } else {
                        quoted.appendCodePoint(letter);
                    }
                }
            }
        });
        return quoted.append('"').toString();
    }

    /** Writes the text whole or not at all: first beside the place, then moved onto it. */
    public static void write(String yaml, Path to) throws IOException {
        var folder = to.toAbsolutePath().getParent();
        var beside = Files.createTempFile(folder, ".casefile", ".part");
        try {
            Files.writeString(beside, yaml);
            Files.move(beside, to, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /**
     * Writes the picture of every entry's box into a folder, named {@code 1-grade.png} by paper and entry. The pictures
     * are drawn anew, so they carry no camera data and no place.
     */
    public static void crops(List<ScannedPaper> papers, Path folder) throws IOException {
        Files.createDirectories(folder);
        for (int i = 0; i < papers.size(); i++) {
            var upright = papers.get(i).page().upright();
            for (var entry : papers.get(i).entries().values()) {
                var box = entry.crop()
                        .inset(-8)
                        .meet(new org.honorsdue.scanning.form.Area(0, 0, FormPage.WIDTH, FormPage.HEIGHT));
                var crop = upright.cut(
                        (int) box.x(),
                        (int) box.y(),
                        Math.max(1, (int) box.width()),
                        Math.max(1, (int) box.height()),
                        Flattening.PAPER);
                var name = "%d-%s.png".formatted(i + 1, entry.entry().key().toLowerCase(Locale.ROOT));
                ImageIO.write(crop.picture(), "png", folder.resolve(name).toFile());
            }
        }
    }
}
