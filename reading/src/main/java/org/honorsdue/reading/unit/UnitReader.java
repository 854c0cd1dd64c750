package org.honorsdue.reading.unit;

import java.util.List;

/** Finds a unit in the unit tables by what is typed for it. */
@FunctionalInterface
public interface UnitReader {
    /**
     * The unit that is named.
     *
     * @param designation as typed, as in {@code Btry B 999th FA Bn}
     * @return ids in the unit tables from the most specific to the largest parent; empty when it is not there
     */
    List<String> units(String designation);

    /** Knows no unit: designations are kept as typed. */
    static UnitReader none() {
        return designation -> List.of();
    }
}
