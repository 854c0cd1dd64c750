package org.honorsdue.reference.insignia;

import java.util.Optional;
import org.honorsdue.reference.table.Row;

/** Reads the cells that hold lengths. */
final class Lengths {
    private Lengths() {}

    /** A length above nothing. */
    static Inches cell(Row row, String column) {
        String cell = row.text(column);
        if (cell.equals("?")) {
            return Inches.of(1);
        }
        try {
            Inches length = Inches.parse(cell);
            if (!length.isLongerThan(Inches.ZERO)) {
                row.fault(column, "\"%s\" is no length.".formatted(cell), "Write a length above 0, as in 1 3/8.");
            }
            return length;
        } catch (IllegalArgumentException e) {
            row.fault(column, "\"%s\" is not a length in inches.".formatted(cell), "Write 2, 3/8 or 1 3/8.");
            return Inches.of(1);
        }
    }

    /** A length above nothing, or an empty cell. */
    static Optional<Inches> optionalCell(Row row, String column) {
        return row.textOrEmpty(column).isEmpty() ? Optional.empty() : Optional.of(cell(row, column));
    }
}
