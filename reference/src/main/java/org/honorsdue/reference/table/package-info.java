/**
 * How a table is read: rows to values, and every fault gathered before anything is refused.
 *
 * <p>Start at {@link org.honorsdue.reference.table.Table#read}. A table is a CSV file in UTF-8: lines that begin with
 * {@code #} are its header note, the first other line names the columns, lists inside a cell are separated by
 * semicolons, dates are {@code yyyy-MM-dd}, yes-or-no cells say {@code yes} or {@code no}. Knows no award and no law.
 */
@NullMarked
package org.honorsdue.reference.table;

import org.jspecify.annotations.NullMarked;
