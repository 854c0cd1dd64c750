package org.honorsdue.reference.history;

import java.util.List;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code history/theaters.csv}: one row a theatre with a campaign medal. */
public final class TheaterTable {
    /** File name, as faults name it. */
    public static final String NAME = "theaters.csv";

    private static final List<String> COLUMNS =
            List.of("theater", "name", "medal", "first", "last", "east", "west", "note", "source", "grade");

    private TheaterTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<TheaterWindow>> read(TableSource source, FaultList faults) {
        return Table.read(source, "history/" + NAME, COLUMNS, faults, TheaterTable::window);
    }

    private static TheaterWindow window(Row row) {
        return new TheaterWindow(
                row.choice("theater", Theater.class),
                row.text("name"),
                row.id("medal"),
                row.span("first", "last"),
                row.text("east"),
                row.text("west"),
                row.textOrEmpty("note"),
                row.provenance());
    }
}
