package org.honorsdue.reference.table;

import java.util.ArrayList;
import java.util.List;

/** Gathers faults while tables are read and checked against each other. Used by one thread. */
public final class FaultList {
    private final List<TableFault> faults = new ArrayList<>();

    /** Notes a fault and goes on. The parts are those of {@link TableFault}. */
    public void add(String table, long line, String column, String what, String remedy) {
        faults.add(new TableFault(table, line, column, what, remedy));
    }

    /**
     * Whether a table has no fault so far. What names a row of a faulty table need not be wrong itself: the row may be
     * the one that was left out.
     */
    public boolean isSound(String table) {
        return faults.stream().noneMatch(fault -> fault.table().equals(table));
    }

    /**
     * Refuses the tables if anything was wrong with them.
     *
     * @throws TableFaults with every fault noted so far
     */
    public void refuseIfAny() {
        if (!faults.isEmpty()) {
            throw new TableFaults(faults);
        }
    }
}
