package org.honorsdue.reference.insignia;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code insignia/medals.csv}: one row a medal. */
final class MedalTable {
    private static final String FILE = "medals.csv";

    private MedalTable() {}

    static List<MedalDesign> read(TableSource source, FaultList faults, List<RibbonDesign> ribbons) {
        var rows = Table.read(
                source,
                "insignia/" + FILE,
                List.of("award", "metal", "width", "height", "suspension", "face", "note", "source", "grade"),
                faults,
                row -> new MedalDesign(
                        row.id("award"),
                        row.text("metal"),
                        Lengths.cell(row, "width"),
                        Lengths.cell(row, "height"),
                        row.choice("suspension", MedalDesign.Suspension.class),
                        row.text("face"),
                        row.textOrEmpty("note"),
                        row.provenance()));
        Twice.report(FILE, "award", rows, MedalDesign::award, faults);
        for (Located<MedalDesign> row : rows) {
            if (ribbons.stream()
                    .noneMatch(ribbon -> ribbon.id().equals(row.value().award()))) {
                faults.add(
                        FILE,
                        row.line(),
                        "award",
                        "\"%s\" has no ribbon to hang from."
                                .formatted(row.value().award()),
                        "Add the ribbon to ribbons.csv or correct the id.");
            }
        }
        return rows.stream().map(Located::value).toList();
    }
}
