package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/**
 * Where an award stands among those worn.
 *
 * @param present order today; lower is worn first
 * @param wartime order in 1945
 */
public record WearOrder(
        String award, Place place, Block block, int present, int wartime, String note, Provenance provenance) {

    /** Where on the uniform. */
    public enum Place {
        LEFT_BREAST,
        RIGHT_BREAST
    }

    /** The groups of the regulation, in their order. */
    public enum Block {
        DECORATIONS,
        PRISONER_OF_WAR,
        GOOD_CONDUCT,
        SERVICE_MEDALS,
        FOREIGN_DECORATIONS,
        FOREIGN_SERVICE,
        UNIT_AWARDS,
        FOREIGN_UNIT_AWARDS
    }
}
