package org.honorsdue.reference.history;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code history/occupation_areas.csv}: one row an occupied area. */
public final class OccupationTable {
    /** File name, as faults name it. */
    public static final String NAME = "occupation_areas.csv";

    private static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "first",
            "last",
            "clasp",
            "gate_medal",
            "gated_first",
            "gated_last",
            "note",
            "source",
            "grade");

    private OccupationTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<OccupationArea>> read(TableSource source, FaultList faults) {
        return Table.read(source, "history/" + NAME, COLUMNS, faults, OccupationTable::area);
    }

    private static OccupationArea area(Row row) {
        Place.Occupation clasp = row.choice("clasp", Place.Occupation.class);
        if (clasp != Place.Occupation.GERMANY && clasp != Place.Occupation.JAPAN) {
            row.fault("clasp", "An occupied area has a clasp.", "Write germany or japan.");
        }
        return new OccupationArea(
                row.id("id"),
                row.text("name"),
                row.span("first", "last"),
                clasp,
                row.id("gate_medal"),
                row.span("gated_first", "gated_last"),
                row.textOrEmpty("note"),
                row.provenance());
    }
}
