package org.honorsdue.reference.history;

import java.util.List;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Provenance;

/**
 * An assault landing, jump or glider landing considered for the arrowhead.
 *
 * @param campaign campaign id
 * @param credited false when the credit was refused or is disputed; the note says which
 * @param units the units named with it
 */
public record AssaultLanding(
        String campaign,
        String place,
        DateSpan dates,
        String means,
        boolean credited,
        List<String> units,
        String note,
        Provenance provenance) {
    public AssaultLanding {
        units = List.copyOf(units);
    }
}
