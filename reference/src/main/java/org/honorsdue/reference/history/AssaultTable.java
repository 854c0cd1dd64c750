package org.honorsdue.reference.history;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code history/assaults.csv}: one row a landing. */
public final class AssaultTable {
    /** File name, as faults name it. */
    public static final String NAME = "assaults.csv";

    private static final List<String> COLUMNS =
            List.of("campaign", "place", "first", "last", "means", "credited", "units", "note", "source", "grade");

    private AssaultTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<AssaultLanding>> read(TableSource source, FaultList faults) {
        return Table.read(source, "history/" + NAME, COLUMNS, faults, AssaultTable::assault);
    }

    private static AssaultLanding assault(Row row) {
        String means = row.text("means");
        if (!List.of("amphibious", "parachute", "glider").contains(means)) {
            row.fault(
                    "means",
                    "\"%s\" is not a means of assault.".formatted(means),
                    "Write amphibious, parachute or glider.");
        }
        boolean credited = row.flag("credited");
        String note = row.textOrEmpty("note");
        if (!credited && note.isEmpty()) {
            row.fault(
                    "note", "A landing without credit has no reason.", "Write whether it was refused or is disputed.");
        }
        return new AssaultLanding(
                row.text("campaign"),
                row.text("place"),
                row.span("first", "last"),
                means,
                credited,
                row.list("units"),
                note,
                row.provenance());
    }
}
