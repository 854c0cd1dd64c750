package org.honorsdue.service.fact;

import java.util.List;
import java.util.Optional;

/**
 * An order crediting a unit with a unit award, from evidence.
 *
 * @param units ids in the unit tables, most specific first
 */
public record UnitCredit(
        String designation,
        List<String> units,
        String award,
        Optional<String> reference,
        Optional<PartialDate> from,
        Optional<PartialDate> to,
        Basis basis)
        implements ServiceFact {
    public UnitCredit {
        units = List.copyOf(units);
    }
}
