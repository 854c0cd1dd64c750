package org.honorsdue.reference.unit;

import org.honorsdue.reference.Provenance;

/**
 * A unit in its parent.
 *
 * @param unit id of the unit, or of a part of one
 * @param parent id of the unit it belonged to
 * @param when as far as known; open ends mean the wartime service of the parent
 */
public record Membership(
        String unit, String parent, LooseSpan when, Relation relation, String note, Provenance provenance) {
    /** How close the tie was. */
    public enum Relation {
        /** Organic to the parent. */
        ASSIGNED,
        /** Not organic: an award to the parent reaches it only where the order names it. */
        ATTACHED
    }
}
