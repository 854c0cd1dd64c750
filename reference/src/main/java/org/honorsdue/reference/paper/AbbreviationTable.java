package org.honorsdue.reference.paper;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code paper/abbreviations.csv}: one row a token and one meaning of it. */
public final class AbbreviationTable {
    /** File name, as faults name it. */
    public static final String NAME = "abbreviations.csv";

    private static final List<String> COLUMNS =
            List.of("token", "expansion", "kind", "ambiguous", "note", "source", "grade");

    private AbbreviationTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<Abbreviation>> read(TableSource source, FaultList faults) {
        return Table.read(source, "paper/" + NAME, COLUMNS, faults, AbbreviationTable::abbreviation);
    }

    private static Abbreviation abbreviation(Row row) {
        return new Abbreviation(
                row.text("token"),
                row.text("expansion"),
                row.text("kind"),
                row.flag("ambiguous"),
                row.textOrEmpty("note"),
                row.provenance());
    }
}
