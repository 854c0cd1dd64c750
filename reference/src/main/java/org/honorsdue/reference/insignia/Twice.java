package org.honorsdue.reference.insignia;

import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;

/** Finds what stands twice in a table where it may stand once. */
final class Twice {
    private Twice() {}

    static <T> void report(String table, String column, List<Located<T>> rows, Function<T, ?> key, FaultList faults) {
        var seen = new HashSet<Object>();
        for (Located<T> row : rows) {
            Object found = key.apply(row.value());
            if (!seen.add(found)) {
                faults.add(table, row.line(), column, "\"%s\" stands twice.".formatted(found), "Take one out.");
            }
        }
    }
}
