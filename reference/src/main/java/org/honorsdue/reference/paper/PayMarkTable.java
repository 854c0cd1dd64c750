package org.honorsdue.reference.paper;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code paper/pay.csv}: one row a word about pay, lost time or conduct. */
public final class PayMarkTable {
    /** File name, as faults name it. */
    public static final String NAME = "pay.csv";

    private static final List<String> COLUMNS =
            List.of("id", "as_written", "meaning", "supports", "does_not_support", "source", "grade");

    private PayMarkTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<PayMark>> read(TableSource source, FaultList faults) {
        return Table.read(
                source,
                "paper/" + NAME,
                COLUMNS,
                faults,
                row -> new PayMark(
                        row.id("id"),
                        row.list("as_written"),
                        row.text("meaning"),
                        row.textOrEmpty("supports"),
                        row.textOrEmpty("does_not_support"),
                        row.provenance()));
    }
}
