package org.honorsdue.reference.law;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code law/awards.csv}: one row an award. */
public final class AwardTable {
    /** File name, as faults name it. */
    public static final String NAME = "awards.csv";

    private static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "other_names",
            "kind",
            "established",
            "established_by",
            "established_pinpoint",
            "established_edition",
            "established_grade",
            "precedence",
            "meaning",
            "source",
            "grade");

    private AwardTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<Award>> read(TableSource source, FaultList faults) {
        return Table.read(source, "law/" + NAME, COLUMNS, faults, AwardTable::award);
    }

    private static Award award(Row row) {
        return new Award(
                row.id("id"),
                row.text("name"),
                row.list("other_names"),
                row.choice("kind", Award.Kind.class),
                row.optionalDate("established"),
                row.citation("established_by", "established_pinpoint", "established_edition", "established_grade"),
                row.optionalNumber("precedence"),
                row.text("meaning"),
                row.provenance());
    }
}
