package org.honorsdue.scanning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import org.honorsdue.scanning.choice.LineChoice;
import org.honorsdue.scanning.choice.LineChooser;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.form.FormPage;
import org.honorsdue.scanning.form.FormPart;
import org.honorsdue.scanning.recognition.LineReader;
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
            Entry.INSURANCE_INTENTION);

    /** Below this the readings are called doubtful. */
    private static final double SURE = 0.80;

    private final LineChooser chooser;

    PageReader(LineReader reader) {
        this.chooser = new LineChooser(reader);
    }

    /** @param goOn told the share done; when it says no, what was read so far is handed back */
    ScannedPaper read(FormPage page, int picture, DoublePredicate goOn) {
        var layout = page.fit().layout();
        var lines = new TypedLines(page.upright(), page.places().values());
        var entries = new EnumMap<Entry, ScannedEntry>(Entry.class);
        List<Leg> legs = List.of();
        int done = 0;
        var boxes = layout.boxes();
        for (var box : boxes) {
            if (!goOn.test(done++ / (double) boxes.size())) {
                break;
            }
            var entry = box.entry().orElse(null);
            var place = page.places().get(box);
            if (entry == null || place == null || LEFT_ALONE.contains(entry) || outside(place)) {
                continue;
            }
            var inner = layout.within(box);
            if (inner.isEmpty()) {
                put(entries, entry(entry, choices(entry, lines.in(place)), place, " "));
            } else if (inner.get(0).kind() == FormPart.Kind.TICK) {
                TickBoxes.ticked(page, inner)
                        .ifPresent(tick -> put(
                                entries,
                                new ScannedEntry(
                                        entry,
                                        tick.label(),
                                        "X",
                                        tick.others(),
                                        tick.confidence(),
                                        tick.confidence() < SURE ? EnumSet.of(Flag.DOUBTFUL) : Set.of(),
                                        place)));
            } else if (inner.get(0).kind() == FormPart.Kind.COLUMN) {
                legs = legs(entries, page, lines, inner, place);
            } else {
                parts(entries, page, lines, box, inner, place);
            }
        }
        return new ScannedPaper(layout.form(), picture, entries, legs, page);
    }

    private static boolean outside(Area place) {
        var seen = place.meet(new Area(0, 0, FormPage.WIDTH, FormPage.HEIGHT));
        return seen.size() < 0.5 * place.size();
    }

    private static void put(Map<Entry, ScannedEntry> entries, ScannedEntry entry) {
        entries.put(entry.entry(), entry);
    }

    private List<LineChoice> choices(Entry entry, List<TypedLine> lines) {
        return lines.stream()
                .map(line -> chooser.choose(entry, line))
                .filter(choice -> !choice.text().isBlank())
                .toList();
    }

    /** The parts of a box, each with its own heading: two totals, three school years, two sums of money. */
    private void parts(
            Map<Entry, ScannedEntry> entries,
            FormPage page,
            TypedLines lines,
            FormPart box,
            List<FormPart> inner,
            Area place) {
        var together = new ArrayList<LineChoice>();
        for (var part : inner) {
            var entry = part.entry().orElseThrow();
            var at = page.places().get(part);
            if (at == null) {
                continue;
            }
            var choices = choices(entry, lines.in(at));
            if (part.entry().equals(box.entry())) {
                if (!choices.isEmpty()) {
                    together.add(joined(choices, " "));
                }
            } else {
                put(entries, entry(entry, choices, at, " "));
            }
        }
        box.entry()
                .filter(entry -> inner.get(0).entry().equals(box.entry()))
                .ifPresent(entry ->
                        put(entries, entry(entry, together, place, entry == Entry.MUSTERING_OUT_PAY ? " / " : " ")));
    }

    private record Cell(int column, double baseline, LineChoice choice) {}

    /** Lines of the columns that stand on one baseline are one crossing. */
    private List<Leg> legs(
            Map<Entry, ScannedEntry> entries, FormPage page, TypedLines lines, List<FormPart> columns, Area place) {
        var cells = new ArrayList<Cell>();
        for (int i = 0; i < columns.size(); i++) {
            var at = page.places().get(columns.get(i));
            if (at != null) {
                for (var line : lines.in(at)) {
                    var choice = chooser.choose(i == 1 ? Entry.SERVICE_OUTSIDE_US : Entry.SEPARATED, line);
                    if (!choice.text().isBlank()) {
                        cells.add(new Cell(i, line.baseline(), choice));
                    }
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
        put(entries, entry(Entry.SERVICE_OUTSIDE_US, rows, place, "\n"));
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
        var alternatives = new ArrayList<String>();
        for (int i = 0; i < choices.size(); i++) {
            for (var other : choices.get(i).alternatives()) {
                var parts = new ArrayList<String>(
                        choices.stream().map(LineChoice::text).toList());
                parts.set(i, other);
                alternatives.add(String.join(between, parts));
            }
        }
        return new LineChoice(text, raw, alternatives, confidence);
    }

    private static ScannedEntry entry(Entry entry, List<LineChoice> lines, Area place, String between) {
        if (lines.isEmpty()) {
            return new ScannedEntry(entry, "", "", List.of(), 1, Set.of(), place);
        }
        var whole = joined(lines, between);
        var flags = EnumSet.noneOf(Flag.class);
        if (whole.text().chars().anyMatch(Character::isDigit)) {
            flags.add(Flag.FIGURES);
        }
        if (whole.confidence() < SURE) {
            flags.add(Flag.DOUBTFUL);
        }
        if (!whole.text().equals(whole.raw())) {
            flags.add(Flag.REREAD);
        }
        var alternatives = whole.alternatives().stream().limit(5).toList();
        return new ScannedEntry(entry, whole.text(), whole.raw(), alternatives, whole.confidence(), flags, place);
    }
}
