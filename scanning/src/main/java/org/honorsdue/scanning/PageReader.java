package org.honorsdue.scanning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import org.honorsdue.scanning.choice.EntryKind;
import org.honorsdue.scanning.choice.LineChoice;
import org.honorsdue.scanning.choice.LineChooser;
import org.honorsdue.scanning.choice.Vocabulary;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.form.FormPage;
import org.honorsdue.scanning.form.FormPart;
import org.honorsdue.scanning.typing.TickBoxes;
import org.honorsdue.scanning.typing.TypedLine;
import org.honorsdue.scanning.typing.TypedLines;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Leg;

/** Reads the entries of one recognised page. */
final class PageReader {
    /** Ink, prints and boxes that no award hangs on; and the box that is nobody's business. */
    private static final Set<Entry> LEFT_ALONE = EnumSet.of(
            Entry.SIGNATURE,
            Entry.THUMB_PRINT,
            Entry.PERSONNEL_OFFICER,
            Entry.RACE,
            Entry.INSURANCE,
            Entry.INSURANCE_PAID,
            Entry.INSURANCE_INTENTION,
            Entry.IMMUNIZATIONS);

    /** Below this the readings are called doubtful. */
    private static final double SURE = 0.80;

    /** A line less clear than this is no typing: a stain, a scrawl, the rest of a stamp. */
    private static final double TYPED = 0.55;

    private static final double CLEAR = 0.85;

    /** A box of which less than this share is on the picture is not read. */
    static final double LEAST_SEEN = 0.7;

    private final LineChooser chooser;
    private final Vocabulary vocabulary;

    PageReader(LineChooser chooser, Vocabulary vocabulary) {
        this.chooser = chooser;
        this.vocabulary = vocabulary;
    }

    /** The lines of one box or part of a box, before and after they are read. */
    private record Field(Entry entry, FormPart part, Area place, List<TypedLine> lines, boolean inked) {}

    /** @param goOn told the share done; when it says no, what was read so far is handed back */
    ScannedPaper read(FormPage page, int picture, DoublePredicate goOn) {
        var layout = page.fit().layout();
        var lines = new TypedLines(page.upright(), page.places().values());
        var fields = new ArrayList<Field>();
        var entries = new EnumMap<Entry, ScannedEntry>(Entry.class);
        for (var box : layout.boxes()) {
            var entry = box.entry().orElse(null);
            var place = page.places().get(box);
            if (entry == null || place == null || LEFT_ALONE.contains(entry) || page.seen(place) < LEAST_SEEN) {
                continue;
            }
            var inner = layout.within(box);
            if (inner.isEmpty()) {
                fields.add(new Field(entry, box, place, lines.in(place), lines.inked(place)));
            } else if (inner.get(0).kind() == FormPart.Kind.TICK) {
                TickBoxes.ticked(page, inner).ifPresent(tick -> entries.put(entry, ticked(entry, tick, place)));
            } else {
                for (var part : inner) {
                    var at = page.places().get(part);
                    if (at != null) {
                        fields.add(new Field(part.entry().orElse(entry), part, at, lines.in(at), lines.inked(at)));
                    }
                }
            }
        }
        var read = read(fields, goOn);
        List<Leg> legs = List.of();
        for (var box : layout.boxes()) {
            var place = page.places().get(box);
            if (place == null || page.seen(place) < LEAST_SEEN) {
                continue;
            }
            var own = fields.stream()
                    .filter(field -> field.part.box().equals(box.box()))
                    .toList();
            if (own.isEmpty() || own.stream().anyMatch(field -> unread(field, read))) {
                continue;
            }
            if (own.get(0).part.kind() == FormPart.Kind.COLUMN) {
                legs = legs(entries, own, read, place);
            } else {
                assemble(entries, box, own, read, place);
            }
        }
        return new ScannedPaper(layout.form(), picture, entries, legs, page);
    }

    private static ScannedEntry ticked(Entry entry, TickBoxes.Tick tick, Area place) {
        Set<Flag> flags = tick.confidence() < SURE ? EnumSet.of(Flag.DOUBTFUL) : Set.of();
        return new ScannedEntry(entry, tick.label(), "X", tick.others(), tick.confidence(), flags, place);
    }

    private Map<TypedLine, LineChoice> read(List<Field> fields, DoublePredicate goOn) {
        var tasks = new ArrayList<LineChooser.Task>();
        for (var field : fields) {
            for (var line : field.lines) {
                tasks.add(new LineChooser.Task(kind(field), line));
            }
        }
        var choices = chooser.choose(tasks, goOn);
        var read = new IdentityHashMap<TypedLine, LineChoice>();
        for (int i = 0; i < tasks.size(); i++) {
            read.put(tasks.get(i).line(), choices.get(i));
        }
        return read;
    }

    private static EntryKind kind(Field field) {
        if (field.part.kind() == FormPart.Kind.COLUMN) {
            return field.part.caption().startsWith("DATE") ? EntryKind.DATE : EntryKind.WORDS;
        }
        return EntryKind.of(field.entry);
    }

    /** What was read of the lines; where some are clear, others that are no typing at all are left out. */
    private static List<LineChoice> choices(Field field, Map<TypedLine, LineChoice> read) {
        var choices = new ArrayList<LineChoice>();
        for (var line : field.lines) {
            var choice = read.get(line);
            if (choice != null && !choice.text().isBlank()) {
                choices.add(choice);
            }
        }
        if (choices.stream().anyMatch(choice -> choice.clearness() >= CLEAR)) {
            choices.removeIf(choice -> choice.clearness() < TYPED);
        }
        return choices;
    }

    /** Whether the reading was stopped before that field was done. */
    private static boolean unread(Field field, Map<TypedLine, LineChoice> read) {
        return field.lines.stream().anyMatch(line -> read.get(line) == LineChoice.UNREAD);
    }

    /** Whether a line of marks in the field was taken for no typing. */
    private static boolean leftOut(Field field, Map<TypedLine, LineChoice> read) {
        return choices(field, read).size() < field.lines.size();
    }

    /** A whole box, or its parts: two totals with entries of their own, three school years, two sums of money. */
    private void assemble(
            Map<Entry, ScannedEntry> entries,
            FormPart box,
            List<Field> own,
            Map<TypedLine, LineChoice> read,
            Area place) {
        var together = new ArrayList<LineChoice>();
        for (var field : own) {
            var choices = choices(field, read);
            if (!box.entry().equals(Optional.of(field.entry))) {
                entries.put(
                        field.entry, entry(field.entry, choices, field.place, " ", field.inked, leftOut(field, read)));
            } else if (!choices.isEmpty()) {
                together.add(joined(choices, " "));
            }
        }
        if (box.entry().equals(Optional.of(own.get(0).entry))) {
            var between = own.get(0).entry == Entry.MUSTERING_OUT_PAY ? " / " : " ";
            entries.put(
                    own.get(0).entry,
                    entry(
                            own.get(0).entry,
                            together,
                            place,
                            between,
                            own.stream().anyMatch(Field::inked),
                            own.stream().anyMatch(field -> leftOut(field, read))));
        }
    }

    private record Cell(int column, double baseline, LineChoice choice) {}

    /** Lines of the columns that stand on one baseline are one crossing. */
    private List<Leg> legs(
            Map<Entry, ScannedEntry> entries, List<Field> columns, Map<TypedLine, LineChoice> read, Area place) {
        var cells = new ArrayList<Cell>();
        for (int i = 0; i < columns.size(); i++) {
            for (var line : columns.get(i).lines) {
                var choice = read.get(line);
                if (choice != null && !choice.text().isBlank()) {
                    cells.add(new Cell(i, line.baseline(), choice));
                }
            }
        }
        cells.sort(Comparator.comparingDouble(Cell::baseline));
        var legs = new ArrayList<Leg>();
        var rows = new ArrayList<LineChoice>();
        var row = new ArrayList<Cell>();
        for (int i = 0; i <= cells.size(); i++) {
            if (i == cells.size() || (!row.isEmpty() && cells.get(i).baseline - row.get(0).baseline > 25)) {
                if (!row.isEmpty()) {
                    row.sort(Comparator.comparingInt(Cell::column));
                    legs.add(new Leg(column(row, 0), column(row, 1), column(row, 2)));
                    rows.add(joined(row.stream().map(Cell::choice).toList(), " "));
                    row.clear();
                }
            }
            if (i < cells.size()) {
                row.add(cells.get(i));
            }
        }
        entries.put(
                Entry.SERVICE_OUTSIDE_US,
                entry(
                        Entry.SERVICE_OUTSIDE_US,
                        rows,
                        place,
                        "\n",
                        columns.stream().anyMatch(Field::inked),
                        columns.stream().anyMatch(field -> leftOut(field, read))));
        return legs;
    }

    private static String column(List<Cell> row, int column) {
        return row.stream()
                .filter(cell -> cell.column == column)
                .map(cell -> cell.choice.text())
                .collect(Collectors.joining(" "));
    }

    private static LineChoice joined(List<LineChoice> choices, String between) {
        double confidence =
                choices.stream().mapToDouble(LineChoice::confidence).min().orElse(0);
        var text = choices.stream().map(LineChoice::text).collect(Collectors.joining(between));
        var raw = choices.stream().map(LineChoice::raw).collect(Collectors.joining(between));
        var alternatives = new ArrayList<LineChoice.Alternative>();
        for (int i = 0; i < choices.size(); i++) {
            for (var other : choices.get(i).alternatives()) {
                var parts = new ArrayList<String>(
                        choices.stream().map(LineChoice::text).toList());
                parts.set(i, other.text());
                alternatives.add(new LineChoice.Alternative(String.join(between, parts), other.behind()));
            }
        }
        alternatives.sort(Comparator.comparingDouble(LineChoice.Alternative::behind));
        double clearness =
                choices.stream().mapToDouble(LineChoice::clearness).min().orElse(0);
        return new LineChoice(text, raw, alternatives, confidence, clearness);
    }

    /** Nothing was read; if ink stands there all the same, or figures are usual there, a person must look. */
    private static ScannedEntry blank(Entry entry, Area place, boolean inked) {
        var flags = EnumSet.noneOf(Flag.class);
        if (inked) {
            flags.add(Flag.DAMAGED);
        }
        if (EntryKind.of(entry).isFigures()) {
            flags.add(Flag.FIGURES);
        }
        return new ScannedEntry(entry, "", "", List.of(), inked ? 0.5 : 0.95, flags, place);
    }

    private ScannedEntry entry(
            Entry entry, List<LineChoice> lines, Area place, String between, boolean inked, boolean leftOut) {
        if (lines.isEmpty()) {
            return blank(entry, place, inked);
        }
        var whole = vocabulary.weigh(entry, joined(lines, between));
        var flags = EnumSet.noneOf(Flag.class);
        if (whole.text().chars().anyMatch(Character::isDigit)) {
            flags.add(Flag.FIGURES);
        }
        double confidence = leftOut ? 0.8 * whole.confidence() : whole.confidence();
        if (confidence < SURE) {
            flags.add(Flag.DOUBTFUL);
        }
        if (!whole.text().equals(whole.raw())) {
            flags.add(Flag.REREAD);
        }
        boolean day = EntryKind.of(entry) == EntryKind.DATE && !vocabulary.isDay(entry, whole.text());
        boolean words = EntryKind.of(entry) == EntryKind.WORDS && vocabulary.unread(entry, whole.text()) > 0;
        if (day || words) {
            flags.add(Flag.OUT_OF_PLACE);
        }
        var alternatives = whole.alternatives().stream()
                .map(LineChoice.Alternative::text)
                .limit(5)
                .toList();
        return new ScannedEntry(entry, whole.text(), whole.raw(), alternatives, confidence, flags, place);
    }
}
