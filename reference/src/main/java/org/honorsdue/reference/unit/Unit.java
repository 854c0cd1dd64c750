package org.honorsdue.reference.unit;

import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.Provenance;

/**
 * A unit as it stood in 1941-1946.
 *
 * @param id kind and number, as in {@code infantry-regiment-331}
 * @param number the number it bore; empty for a named unit, and for military police platoons the division's number
 * @param name its name in full
 * @param aliases further nicknames and names it bore
 * @param theater where it served, in the words of the table; may be empty
 * @param provenance of the name and the kind only; campaigns, awards and parents have their own
 */
public record Unit(
        String id,
        UnitKind kind,
        Optional<Integer> number,
        String name,
        String nickname,
        List<String> aliases,
        String theater,
        String note,
        Provenance provenance) {
    public Unit {
        aliases = List.copyOf(aliases);
    }
}
