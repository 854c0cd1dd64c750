package org.honorsdue.reading.unit;

import java.util.List;
import org.honorsdue.reference.unit.UnitTables;
import org.honorsdue.service.fact.Basis.Certainty;

/** Finds a unit in the unit tables by what is typed for it. */
@FunctionalInterface
public interface UnitReader {
    /** The unit that is named, as in {@code Btry B 999th FA Bn}. */
    Found read(String designation);

    /**
     * What was found.
     *
     * @param units ids in the unit tables from the most specific to the largest parent; empty when it is not there
     * @param meaning the designation in full; empty when nothing could be read
     * @param certainty how surely it was read
     * @param notes what was put right, and what does not fit together
     */
    record Found(List<String> units, String meaning, Certainty certainty, List<String> notes) {
        public Found {
            units = List.copyOf(units);
            notes = List.copyOf(notes);
        }
    }

    /** Reads by the published tables of units. */
    static UnitReader published() {
        return of(new OrganizationReader(UnitTables.published()));
    }

    /** Reads by a reader of organizations. */
    static UnitReader of(OrganizationReader organizations) {
        return designation -> {
            OrganizationReading reading = organizations.read(designation);
            return new Found(reading.ids(), reading.meaning(), reading.certainty(), reading.notes());
        };
    }

    /** Knows no unit: designations are kept as typed. */
    static UnitReader none() {
        return designation -> new Found(List.of(), "", Certainty.PLAIN, List.of());
    }
}
