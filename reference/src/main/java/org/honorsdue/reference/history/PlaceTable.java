package org.honorsdue.reference.history;

import java.util.List;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code history/places.csv}: one row a place or a command word. */
public final class PlaceTable {
    /** File name, as faults name it. */
    public static final String NAME = "places.csv";

    private static final List<String> COLUMNS =
            List.of("name", "aliases", "theaters", "occupation", "note", "source", "grade");

    private PlaceTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<Place>> read(TableSource source, FaultList faults) {
        return Table.read(source, "history/" + NAME, COLUMNS, faults, PlaceTable::place);
    }

    private static Place place(Row row) {
        var theaters = row.choices("theaters", Theater.class);
        if (theaters.isEmpty()) {
            row.fault(
                    "theaters", "The cell is empty.", "Write at least one; several when the word alone does not tell.");
        }
        return new Place(
                row.text("name"),
                row.list("aliases"),
                theaters,
                row.choice("occupation", Place.Occupation.class),
                row.textOrEmpty("note"),
                row.provenance());
    }
}
