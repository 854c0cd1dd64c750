package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/**
 * A badge, a sleeve bar or another insigne that is no ribbon.
 *
 * @param place order among those of the same part of the uniform; lower first
 */
public record BadgeDesign(
        String id, String name, Worn worn, int place, Inches width, Inches height, String note, Provenance provenance) {

    /** Where on the uniform. */
    public enum Worn {
        ABOVE_RIBBONS,
        BELOW_RIBBONS,
        LAPEL,
        RIGHT_BREAST,
        LEFT_SLEEVE,
        RIGHT_SLEEVE,
        SLEEVE,
        COLLAR,
        LEFT_SHOULDER
    }
}
