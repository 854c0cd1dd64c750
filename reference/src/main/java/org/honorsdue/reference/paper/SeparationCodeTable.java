package org.honorsdue.reference.paper;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code paper/separation_codes.csv}: one row a regulation or phrase. */
public final class SeparationCodeTable {
    /** File name, as faults name it. */
    public static final String NAME = "separation_codes.csv";

    private static final List<String> COLUMNS =
            List.of("code", "as_written", "meaning", "supports", "does_not_support", "second_paper", "source", "grade");

    private SeparationCodeTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<SeparationCode>> read(TableSource source, FaultList faults) {
        return Table.read(
                source,
                "paper/" + NAME,
                COLUMNS,
                faults,
                row -> new SeparationCode(
                        row.text("code"),
                        row.list("as_written"),
                        row.text("meaning"),
                        row.textOrEmpty("supports"),
                        row.textOrEmpty("does_not_support"),
                        row.flag("second_paper"),
                        row.provenance()));
    }
}
