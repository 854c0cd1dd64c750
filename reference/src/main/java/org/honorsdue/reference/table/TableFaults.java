package org.honorsdue.reference.table;

import java.io.Serial;
import java.util.List;
import java.util.stream.Collectors;

/** The tables cannot be used. Carries every fault of every table, not just the first. */
public final class TableFaults extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    private final transient List<TableFault> faults;

    /**
     * Refuses the tables.
     *
     * @param faults all of them, in the order in which the tables were read; not empty
     */
    public TableFaults(List<TableFault> faults) {
        super(faults.stream()
                .map(TableFault::text)
                .collect(Collectors.joining(
                        "%n  ".formatted(),
                        "%d fault%s in the tables, nothing was loaded:%n  "
                                .formatted(faults.size(), faults.size() == 1 ? "" : "s"),
                        "")));
        this.faults = List.copyOf(faults);
    }

    /** Every fault, in the order in which the tables were read. */
    public List<TableFault> faults() {
        return faults;
    }
}
