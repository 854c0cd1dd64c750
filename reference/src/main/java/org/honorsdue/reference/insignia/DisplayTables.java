package org.honorsdue.reference.insignia;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** The small tables for badges and cases under {@code insignia}. */
final class DisplayTables {
    private DisplayTables() {}

    static List<BadgeDesign> badges(TableSource source, FaultList faults) {
        var rows = Table.read(
                source,
                "insignia/badges.csv",
                List.of("id", "name", "worn", "place", "width", "height", "note", "source", "grade"),
                faults,
                row -> new BadgeDesign(
                        row.id("id"),
                        row.text("name"),
                        row.choice("worn", BadgeDesign.Worn.class),
                        row.number("place"),
                        Lengths.cell(row, "width"),
                        Lengths.cell(row, "height"),
                        row.textOrEmpty("note"),
                        row.provenance()));
        Twice.report("badges.csv", "id", rows, BadgeDesign::id, faults);
        return rows.stream().map(Located::value).toList();
    }

    static List<DisplayRule> rules(TableSource source, FaultList faults) {
        var rows = Table.read(
                source,
                "insignia/display_rules.csv",
                List.of("id", "length", "meaning", "source", "grade"),
                faults,
                row -> new DisplayRule(
                        row.id("id"), Lengths.cell(row, "length"), row.text("meaning"), row.provenance()));
        Twice.report("display_rules.csv", "id", rows, DisplayRule::id, faults);
        return rows.stream().map(Located::value).toList();
    }

    static List<FrameSize> frames(TableSource source, FaultList faults) {
        var rows = Table.read(
                source,
                "insignia/frames.csv",
                List.of("id", "width", "height", "source", "grade"),
                faults,
                row -> new FrameSize(
                        row.id("id"), Lengths.cell(row, "width"), Lengths.cell(row, "height"), row.provenance()));
        Twice.report("frames.csv", "id", rows, FrameSize::id, faults);
        return rows.stream().map(Located::value).toList();
    }

    static List<ClearDepth> depths(TableSource source, FaultList faults) {
        var rows = Table.read(
                source,
                "insignia/depths.csv",
                List.of("contents", "depth", "meaning", "source", "grade"),
                faults,
                row -> new ClearDepth(
                        row.id("contents"), Lengths.cell(row, "depth"), row.text("meaning"), row.provenance()));
        Twice.report("depths.csv", "contents", rows, ClearDepth::contents, faults);
        return rows.stream().map(Located::value).toList();
    }

    static List<CareNote> care(TableSource source, FaultList faults) {
        var rows = Table.read(
                source,
                "insignia/conservation.csv",
                List.of("id", "kind", "says", "source", "grade"),
                faults,
                row -> new CareNote(
                        row.id("id"), row.choice("kind", CareNote.Kind.class), row.text("says"), row.provenance()));
        Twice.report("conservation.csv", "id", rows, CareNote::id, faults);
        return rows.stream().map(Located::value).toList();
    }

    static List<SleeveDesign> sleeves(TableSource source, FaultList faults) {
        var rows = Table.read(
                source,
                "insignia/sleeve.csv",
                List.of("unit", "name", "width", "height", "basis", "blazon", "source", "grade"),
                faults,
                row -> new SleeveDesign(
                        row.id("unit"),
                        row.text("name"),
                        Lengths.cell(row, "width"),
                        Lengths.cell(row, "height"),
                        row.choice("basis", SleeveDesign.Basis.class),
                        row.text("blazon"),
                        row.provenance()));
        Twice.report("sleeve.csv", "unit", rows, SleeveDesign::unit, faults);
        return rows.stream().map(Located::value).toList();
    }
}
