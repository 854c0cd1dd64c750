package org.honorsdue.reference.table;

/**
 * One thing wrong with one table: where, what, and what to do about it.
 *
 * @param table file name of the table, as in {@code campaigns.csv}
 * @param line line of the file, counted from 1; 0 when the fault is of the file as a whole
 * @param column name of the column; empty when the fault is of the row or the file
 * @param what what was found, as a sentence
 * @param remedy what to do, as a sentence
 */
public record TableFault(String table, long line, String column, String what, String remedy) {
    /** The fault in one line: {@code campaigns.csv line 41, column ground_last: "1945-02-30" is not a date. ...}. */
    public String text() {
        var where = new StringBuilder(table);
        if (line > 0) {
            where.append(" line ").append(line);
        }
        if (!column.isEmpty()) {
            where.append(", column ").append(column);
        }
        return where + ": " + what + " " + remedy;
    }
}
