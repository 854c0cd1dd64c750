package org.honorsdue.service.fact;

import java.util.List;
import java.util.Optional;

/**
 * Membership of a unit.
 *
 * @param designation as typed or given
 * @param units ids in the unit tables from the most specific to the largest parent; empty when not in the tables
 * @param from first day, when known
 * @param to last day, when known
 * @param atSeparation true for the organization entry of a paper: often only the unit he came home with
 */
public record Assignment(
        String designation,
        List<String> units,
        Optional<PartialDate> from,
        Optional<PartialDate> to,
        boolean atSeparation,
        Basis basis)
        implements ServiceFact {
    public Assignment {
        units = List.copyOf(units);
    }
}
