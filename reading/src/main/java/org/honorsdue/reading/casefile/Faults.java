package org.honorsdue.reading.casefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The faults found so far. */
final class Faults {
    /** More than anybody reads; a hostile file must not fill the memory with messages. */
    private static final int MOST = 200;

    private final List<CasefileFault> found = new ArrayList<>();

    void add(YamlNode where, String what, String remedy) {
        add(where.line(), where.column(), what, remedy);
    }

    void add(int line, int column, String what, String remedy) {
        if (found.size() < MOST) {
            found.add(new CasefileFault(line, column, what, remedy));
        }
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** In the order of the file. */
    List<CasefileFault> all() {
        var sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt(CasefileFault::line).thenComparingInt(CasefileFault::column));
        return sorted;
    }
}
