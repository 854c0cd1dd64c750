package org.honorsdue.documents.letter;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.reference.Citation;
import org.honorsdue.reference.Grade;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.paper.Entry;

/** How awards, devices, authorities and places on the paper are put into words. */
final class Wording {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private Wording() {}

    static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** {@code Purple Heart with 1 bronze oak leaf cluster (two awards)}. */
    static String award(Finding finding) {
        var words = new StringBuilder(finding.name());
        var devices = devices(finding.devices());
        if (!devices.isEmpty()) {
            words.append(" with ").append(devices);
        }
        return words.toString();
    }

    static String devices(List<WornDevice> devices) {
        return devices.stream().map(Wording::device).collect(Collectors.joining(", "));
    }

    private static String device(WornDevice worn) {
        String name = worn.device().id().replace('-', ' ');
        String written = switch (worn.device()) {
            case LETTER_V -> "the letter V";
            case GOOD_CONDUCT_CLASP -> "the clasp with %d loops".formatted(worn.count());
            case FOREIGN_SERVICE_CLASP -> "the Foreign Service clasp";
            case GERMANY_CLASP -> "the Germany clasp";
            case JAPAN_CLASP -> "the Japan clasp";
            default -> worn.count() + " " + name + (worn.count() == 1 ? "" : "s");
        };
        return worn.standsFor().isEmpty() ? written : written + " (" + String.join(", ", worn.standsFor()) + ")";
    }

    static String authority(Citation citation) {
        return citation.text()
                + switch (citation.grade()) {
                    case TEXT -> "";
                    case SECONDARY -> " [read at second hand]";
                    case MEMORY -> " [text not yet read]";
                };
    }

    static boolean fromMemory(Citation citation) {
        return citation.grade() == Grade.MEMORY;
    }

    /** Where something stands, so that a reader finds it: {@code box 33, "EAMET Rib"}. */
    static String place(Dossier dossier, Origin origin) {
        if (origin instanceof Origin.OnPaper typed) {
            return "%s: \u201c%s\u201d"
                    .formatted(entry(dossier, typed), dossier.masking().show(typed.entry(), typed.text()));
        }
        if (origin instanceof Origin.InEvidence item) {
            return "Evidence %d (%s): %s%s"
                    .formatted(
                            item.item(),
                            item.kind().replace('-', ' '),
                            dossier.masking().show(item.text()),
                            item.source().map(source -> ", " + source).orElse(""));
        }
        return "Stated: " + origin.text();
    }

    static String entry(Dossier dossier, Origin.OnPaper typed) {
        String paper = dossier.casefile().papers().size() > 1 ? "Paper " + typed.paper() + ", " : "";
        return paper + box(dossier, typed.paper(), typed.entry());
    }

    /** {@code box 33 (Decorations and citations)}, or the caption alone where the form has no numbers. */
    static String box(Dossier dossier, int paper, Entry entry) {
        var form = dossier.casefile().papers().get(paper - 1).form();
        return entry.box(form)
                .map(number -> "box %d (%s)".formatted(number, entry.caption()))
                .orElse(entry.caption());
    }
}
