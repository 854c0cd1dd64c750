package org.honorsdue.scanning.evaluation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.scanning.ScannedEntry;
import org.honorsdue.scanning.ScannedPaper;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/** What misreadings do to the findings, which is what counts in the end. */
final class Consequences {
    private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);

    private final CasefileReader reader = new CasefileReader(Reference.published(), UnitReader.published());
    private final LawExaminer examiner = new LawExaminer(Reference.published());

    /**
     * @param findings how many findings the true text gives
     * @param differing how many findings are missing, new or otherwise with the text as scanned
     * @param silent how many still differ after a person set right every entry with any flag
     * @param unmarked how many still differ after a person set right every entry called more than mere figures
     * @param touches how many entries have to be set right for the findings to be the same
     */
    record Result(int findings, int differing, int silent, int unmarked, int touches) {}

    Result of(Form form, Map<Entry, String> truth, ScannedPaper scanned) {
        var trueText = new EnumMap<Entry, String>(Entry.class);
        truth.forEach((entry, text) -> {
            if (scanned.entries().containsKey(entry) || !text.isBlank()) {
                trueText.put(entry, text);
            }
        });
        var read = new EnumMap<Entry, String>(Entry.class);
        scanned.entries().forEach((entry, each) -> read.put(entry, each.text()));
        var right = findings(form, trueText);
        var wrong = new ArrayList<Entry>();
        for (var entry : Entry.values()) {
            var one = Errors.plain(trueText.getOrDefault(entry, ""));
            var other = Errors.plain(read.getOrDefault(entry, ""));
            if (!one.equals(other)) {
                wrong.add(entry);
            }
        }
        int differing = differing(right, findings(form, mended(trueText, read, wrong, entry -> false)));
        int silent = differing(
                right, findings(form, mended(trueText, read, wrong, entry -> flagged(scanned, entry, false))));
        int unmarked =
                differing(right, findings(form, mended(trueText, read, wrong, entry -> flagged(scanned, entry, true))));
        return new Result(right.size(), differing, silent, unmarked, touches(form, trueText, read, wrong, right));
    }

    /** All wrong entries are mended; then each that can be left wrong without harm is left. */
    private int touches(
            Form form, Map<Entry, String> truth, Map<Entry, String> read, List<Entry> wrong, Set<String> right) {
        var mend = new ArrayList<>(wrong);
        for (var entry : wrong) {
            mend.remove(entry);
            if (differing(right, findings(form, mended(truth, read, wrong, mend::contains))) > 0) {
                mend.add(entry);
            }
        }
        return mend.size();
    }

    private static boolean flagged(ScannedPaper scanned, Entry entry, boolean beyondFigures) {
        var read = Optional.ofNullable(scanned.entries().get(entry));
        if (read.isEmpty()) {
            return true; // a box that was not read is plainly missing
        }
        return beyondFigures
                ? read.get().flags().stream().anyMatch(flag -> flag != org.honorsdue.scanning.Flag.FIGURES)
                : read.map(ScannedEntry::mustBeSeen).orElse(true);
    }

    private static Map<Entry, String> mended(
            Map<Entry, String> truth, Map<Entry, String> read, List<Entry> wrong, Predicate<Entry> mend) {
        var text = new EnumMap<Entry, String>(truth);
        for (var entry : wrong) {
            if (!mend.test(entry)) {
                text.put(entry, read.getOrDefault(entry, ""));
            }
        }
        return text;
    }

    private Set<String> findings(Form form, Map<Entry, String> text) {
        var typed = new EnumMap<Entry, Typed>(Entry.class);
        text.forEach((entry, words) -> typed.put(entry, words.isBlank() ? new Typed.Blank() : new Typed.Text(words)));
        var paper = new Paper(form, form.title(), typed, List.of());
        var facts = reader.read(new Casefile(Optional.empty(), Optional.empty(), List.of(paper), List.of()));
        var found = new TreeSet<String>();
        for (var finding : examiner.examine(facts, AS_OF, Set.of()).findings()) {
            var devices = finding.devices().stream()
                    .map(device -> device.device() + "x" + device.count())
                    .sorted()
                    .toList();
            found.add("%s %s on paper %s, %d %s"
                    .formatted(finding.award(), finding.standing(), finding.onPaper(), finding.count(), devices));
        }
        return found;
    }

    private static int differing(Set<String> one, Set<String> other) {
        var awards = new TreeSet<String>();
        for (var finding : one) {
            if (!other.contains(finding)) {
                awards.add(finding.substring(0, finding.indexOf(' ')));
            }
        }
        for (var finding : other) {
            if (!one.contains(finding)) {
                awards.add(finding.substring(0, finding.indexOf(' ')));
            }
        }
        return awards.size();
    }
}
