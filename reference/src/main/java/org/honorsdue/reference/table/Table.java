package org.honorsdue.reference.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.honorsdue.reference.Provenance;

/** Reads one table. */
public final class Table {
    private Table() {}

    /**
     * Reads the rows of a table into values. Never throws for what stands in the table: a faulty row is left out, its
     * faults are noted, and the caller refuses everything once all tables have been read.
     *
     * @param source where the table lies
     * @param path folder and file name, as in {@code history/campaigns.csv}
     * @param columns the names of all its columns, in order
     * @param faults where faults are noted
     * @param toValue makes a value of a row; it may throw {@link IllegalArgumentException}, which becomes a fault
     * @return the values of the rows without fault, in the order of the table
     */
    public static <T> List<Located<T>> read(
            TableSource source, String path, List<String> columns, FaultList faults, Function<Row, T> toValue) {
        String table = path.substring(path.lastIndexOf('/') + 1);
        var values = new ArrayList<Located<T>>();
        try {
            Optional<InputStream> stored = source.open(path);
            if (stored.isEmpty()) {
                faults.add(
                        table,
                        0,
                        "",
                        "The table is missing.",
                        "Put it back at %s under the folder of the tables.".formatted(path));
                return values;
            }
            try (InputStream in = stored.orElseThrow();
                    CsvReader<CsvRecord> reader = CsvReader.builder()
                            .commentStrategy(CommentStrategy.SKIP)
                            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                            .allowUnclosedQuote(false)
                            .ofCsvRecord(in, StandardCharsets.UTF_8)) {
                readRows(reader.iterator(), table, columns, faults, toValue, values);
            }
        } catch (CsvParseException e) {
            faults.add(
                    table, 0, "", "The text is not CSV: %s.".formatted(e.getMessage()), "Check the quotation marks.");
        } catch (IOException e) {
            faults.add(table, 0, "", "The table cannot be read: %s.".formatted(e.getMessage()), "Check the file.");
        }
        return values;
    }

    private static <T> void readRows(
            Iterator<CsvRecord> records,
            String table,
            List<String> columns,
            FaultList faults,
            Function<Row, T> toValue,
            List<Located<T>> values) {
        if (!records.hasNext()) {
            faults.add(table, 0, "", "The table is empty.", "Its first line must name the columns.");
            return;
        }
        CsvRecord header = records.next();
        if (!header.getFields().equals(columns)) {
            faults.add(
                    table,
                    header.getStartingLineNumber(),
                    "",
                    "The columns are %s.".formatted(String.join(",", header.getFields())),
                    "Write %s, in this order.".formatted(String.join(",", columns)));
            return;
        }
        if (!records.hasNext()) {
            faults.add(table, 0, "", "The table has no rows.", "Restore them; an empty table decides nothing.");
        }
        var sources = new HashMap<String, Provenance>();
        while (records.hasNext()) {
            CsvRecord stored = records.next();
            if (stored.getFieldCount() != columns.size()) {
                faults.add(
                        table,
                        stored.getStartingLineNumber(),
                        "",
                        "The row has %d cells instead of %d.".formatted(stored.getFieldCount(), columns.size()),
                        "Put a cell that holds a comma between quotation marks, and write every empty cell as a comma.");
                continue;
            }
            var row = new Row(table, columns, stored, faults, sources);
            try {
                T value = toValue.apply(row);
                if (row.isSound()) {
                    values.add(new Located<>(stored.getStartingLineNumber(), value));
                }
            } catch (IllegalArgumentException e) {
                // A constructor can only trip over a stand-in for a cell that was already reported, or over real
                // values.
                if (row.isSound()) {
                    row.fault("", e.getMessage() == null ? "The row was refused." : e.getMessage(), "Correct the row.");
                }
            }
        }
    }
}
