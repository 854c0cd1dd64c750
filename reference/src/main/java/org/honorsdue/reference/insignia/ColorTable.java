package org.honorsdue.reference.insignia;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code insignia/colors.csv}: one row a colour. */
final class ColorTable {
    private static final String FILE = "colors.csv";

    private ColorTable() {}

    static List<RibbonColor> read(TableSource source, FaultList faults) {
        var rows = Table.read(
                source,
                "insignia/" + FILE,
                List.of("name", "cable", "srgb", "stops", "note", "source", "grade"),
                faults,
                ColorTable::color);
        var names = new HashSet<String>();
        for (Located<RibbonColor> row : rows) {
            if (!names.add(row.value().name())) {
                faults.add(
                        FILE,
                        row.line(),
                        "name",
                        "\"%s\" stands twice.".formatted(row.value().name()),
                        "Take one out.");
            }
        }
        return rows.stream().map(Located::value).toList();
    }

    private static RibbonColor color(Row row) {
        String stops = row.textOrEmpty("stops");
        List<Integer> passes = stops.isEmpty()
                ? List.of()
                : Arrays.stream(stops.split(" +"))
                        .map(stop -> shade(row, "stops", stop))
                        .toList();
        int srgb = passes.isEmpty() ? shade(row, "srgb", row.text("srgb")) : passes.get(0);
        if (passes.size() == 1) {
            row.fault("stops", "A rainbow of one colour.", "Write the colour in column 'srgb' instead.");
        }
        return new RibbonColor(
                row.text("name"), row.textOrEmpty("cable"), srgb, passes, row.textOrEmpty("note"), row.provenance());
    }

    private static int shade(Row row, String column, String cell) {
        if (!cell.matches("#[0-9A-F]{6}")) {
            row.fault(column, "\"%s\" is not a shade.".formatted(cell), "Write # and six hexadecimal digits.");
            return 0;
        }
        return Integer.parseInt(cell.substring(1), 16);
    }
}
