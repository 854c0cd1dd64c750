package org.honorsdue.reference.unit;

import java.util.List;
import org.honorsdue.reference.Provenance;

/**
 * A unit in an assault landing, a jump or a glider landing.
 *
 * @param parts the parts meant; empty when the unit as such
 * @param campaign id of the campaign
 */
public record UnitAssault(
        String unit,
        List<UnitPart> parts,
        String campaign,
        String place,
        LooseSpan when,
        Means means,
        Reach reach,
        String note,
        Provenance provenance) {
    public UnitAssault {
        parts = List.copyOf(parts);
    }

    /** How it went ashore or down. */
    public enum Means {
        AMPHIBIOUS,
        PARACHUTE,
        GLIDER
    }

    /** How much of the unit the credit covers. */
    public enum Reach {
        /** The unit named, or the parts named. */
        WHOLE,
        /** Some part that the row does not name. */
        PART,
        /** Sources differ, or the credit was doubted. */
        DISPUTED,
        /** The credit was asked for and refused. */
        REFUSED
    }
}
