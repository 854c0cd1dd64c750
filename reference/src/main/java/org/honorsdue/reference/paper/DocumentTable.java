package org.honorsdue.reference.paper;

import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code paper/documents.csv}: one row a kind of document that can prove something. */
public final class DocumentTable {
    /** File name, as faults name it. */
    public static final String NAME = "documents.csv";

    private static final List<String> COLUMNS =
            List.of("id", "name", "kept_by", "proves", "cannot_prove", "burned", "effort", "source", "grade");

    private DocumentTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<ProofDocument>> read(TableSource source, FaultList faults) {
        return Table.read(source, "paper/" + NAME, COLUMNS, faults, DocumentTable::document);
    }

    private static ProofDocument document(Row row) {
        int effort = row.number("effort");
        if (effort < 1 || effort > 5) {
            row.fault("effort", "\"%d\" is not an effort.".formatted(effort), "Write 1 (at hand) to 5 (last resort).");
        }
        return new ProofDocument(
                row.id("id"),
                row.text("name"),
                row.text("kept_by"),
                row.list("proves"),
                row.textOrEmpty("cannot_prove"),
                row.flag("burned"),
                effort,
                row.provenance());
    }
}
