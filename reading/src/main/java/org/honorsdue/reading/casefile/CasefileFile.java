package org.honorsdue.reading.casefile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reading.casefile.YamlNode.Mapping;
import org.honorsdue.reading.casefile.YamlNode.Scalar;
import org.honorsdue.reading.casefile.YamlNode.Sequence;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.Sex;
import org.honorsdue.service.paper.Paper;

/**
 * Reads a casefile, in YAML or JSON. Never throws for what stands in the file: everything wrong with it comes back
 * together, each fault with its line and column. Safe for files from strangers: size, depth and references are limited.
 */
public final class CasefileFile {
    /** The largest file looked at, in bytes. A casefile with every box filled has some ten thousand. */
    public static final int LARGEST = 1_000_000;

    private static final List<String> KEYS = List.of("soldier", "papers", "evidence");

    private CasefileFile() {}

    /** Reads the bytes of a file, UTF-8 with or without a byte order mark. */
    public static Submission read(byte[] file, Reference reference) {
        var faults = new Faults();
        var text = decoded(file, faults);
        return text.isPresent() ? read(text.get(), reference, faults) : new Submission.Refused(faults.all());
    }

    /** Reads the text of a file. */
    public static Submission read(String text, Reference reference) {
        var faults = new Faults();
        if (text.length() > LARGEST) {
            tooLarge(faults);
            return new Submission.Refused(faults.all());
        }
        return read(text, reference, faults);
    }

    private static Optional<String> decoded(byte[] file, Faults faults) {
        if (file.length > LARGEST) {
            tooLarge(faults);
            return Optional.empty();
        }
        if (looksLikePicture(file)) {
            faults.add(
                    0,
                    0,
                    "This is a picture or a PDF, not a casefile.",
                    "Turn it into a casefile first, with the scan command.");
            return Optional.empty();
        }
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(file))
                    .toString());
        } catch (CharacterCodingException e) {
            faults.add(0, 0, "The file is not UTF-8 text.", "Save it as UTF-8.");
            return Optional.empty();
        }
    }

    private static void tooLarge(Faults faults) {
        faults.add(
                0,
                0,
                "The file is larger than %d bytes.".formatted(LARGEST),
                "One casefile holds one soldier; check what this file is.");
    }

    private static boolean looksLikePicture(byte[] file) {
        if (file.length < 4) {
            return false;
        }
        int head = ByteBuffer.wrap(file).getInt();
        return head == 0x25504446 // %PDF
                || head == 0x89504E47 // PNG
                || head >>> 8 == 0xFFD8FF // JPEG
                || head == 0x49492A00 // TIFF
                || head == 0x4D4D002A; // TIFF
    }

    private static Submission read(String text, Reference reference, Faults faults) {
        String withoutMark = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Optional<Casefile> casefile = YamlText.read(withoutMark, faults).map(root -> casefile(root, reference, faults));
        if (casefile.isEmpty() && faults.isEmpty()) {
            faults.add(0, 0, "The file is empty.", "Write at least papers: or evidence:.");
        }
        return faults.isEmpty()
                ? new Submission.Accepted(casefile.orElseThrow())
                : new Submission.Refused(faults.all());
    }

    private static Casefile casefile(YamlNode root, Reference reference, Faults faults) {
        var nothing = new Casefile(Optional.empty(), Optional.empty(), List.of(), List.of());
        if (root instanceof Scalar scalar && scalar.isNothing()) {
            faults.add(0, 0, "The file is empty.", "Write at least papers: or evidence:.");
            return nothing;
        }
        if (!(root instanceof Mapping mapping)) {
            faults.add(
                    root,
                    "The file holds %s where a casefile begins.".formatted(root.kind()),
                    "Begin with the keys soldier:, papers: and evidence:.");
            return nothing;
        }
        if (looksLikeFindings(mapping)) {
            faults.add(
                    mapping, "These are findings, not a casefile.", "Hand in the casefile that they were made from.");
            return nothing;
        }
        var keys = new Keys(mapping, KEYS, "a casefile", faults);
        if (keys.node("papers").isEmpty() && keys.node("evidence").isEmpty() && faults.isEmpty()) {
            faults.add(mapping, "There is neither a paper nor evidence.", "Write at least papers: or evidence:.");
        }
        var head = keys.node("soldier")
                .map(soldier -> head(soldier, faults))
                .orElse(new Head(Optional.empty(), Optional.empty()));
        return new Casefile(
                head.name(),
                head.sex(),
                keys.node("papers").map(papers -> papers(papers, faults)).orElse(List.of()),
                keys.node("evidence")
                        .map(evidence -> new EvidenceSection(reference, faults).read(evidence))
                        .orElse(List.of()));
    }

    private static boolean looksLikeFindings(Mapping mapping) {
        return mapping.pairs().stream().anyMatch(pair -> pair.key().text().equals("findings"));
    }

    private record Head(Optional<String> name, Optional<Sex> sex) {}

    private static Head head(YamlNode section, Faults faults) {
        if (!(section instanceof Mapping mapping)) {
            faults.add(
                    section,
                    "\"soldier\" is %s.".formatted(section.kind()),
                    "Write { name: \"Last, First M\", sex: male }.");
            return new Head(Optional.empty(), Optional.empty());
        }
        var keys = new Keys(mapping, List.of("name", "sex"), "the head of the casefile", faults);
        Optional<Sex> sex =
                keys.node("sex").isPresent() ? Optional.of(keys.choice("sex", Sex.class, Sex.MALE)) : Optional.empty();
        return new Head(keys.text("name"), sex);
    }

    private static List<Paper> papers(YamlNode section, Faults faults) {
        if (!(section instanceof Sequence items)) {
            faults.add(
                    section,
                    "\"papers\" is %s.".formatted(section.kind()),
                    "Write a list: each paper after a dash, even if there is only one.");
            return List.of();
        }
        if (items.items().size() > 20) {
            faults.add(
                    section,
                    "There are %d papers.".formatted(items.items().size()),
                    "One casefile holds one soldier; give each soldier a file of his own.");
            return List.of();
        }
        var read = new ArrayList<Paper>();
        for (YamlNode item : items.items()) {
            PaperSection.read(item, faults).ifPresent(read::add);
        }
        return read;
    }
}
