package org.honorsdue.reference.law;

import java.util.List;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code law/clauses.csv}: the law, one row a clause. */
public final class ClauseTable {
    /** File name, as faults name it. */
    public static final String NAME = "clauses.csv";

    private static final List<String> COLUMNS = List.of(
            "id",
            "role",
            "text",
            "publication",
            "pinpoint",
            "edition",
            "in_force_from",
            "in_force_until",
            "source",
            "grade",
            "note");

    private ClauseTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<LawClause>> read(TableSource source, FaultList faults) {
        return Table.read(source, "law/" + NAME, COLUMNS, faults, ClauseTable::clause);
    }

    private static LawClause clause(Row row) {
        String id = row.id("id");
        int slash = id.indexOf('/');
        if (slash <= 0 || slash == id.length() - 1) {
            row.fault(
                    "id",
                    "\"%s\" does not name its award.".formatted(id),
                    "Write the award id, a slash and a short name, as in eame-campaign-medal/window.");
        }
        var from = row.optionalDate("in_force_from");
        var until = row.optionalDate("in_force_until");
        row.inOrder("in_force_from", from, "in_force_until", until);
        Provenance provenance = row.provenance();
        return new LawClause(
                id,
                slash > 0 ? id.substring(0, slash) : id,
                row.choice("role", LawClause.Role.class),
                row.text("text"),
                row.citation("publication", "pinpoint", "edition", "grade"),
                from,
                until,
                provenance.source(),
                row.textOrEmpty("note"));
    }
}
