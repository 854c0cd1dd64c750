package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/**
 * A shoulder sleeve insigne in words, with its size.
 *
 * @param unit id of the unit, as in the table of units
 * @param width over all, a tab included
 * @param provenance of the design
 */
public record SleeveDesign(
        String unit, String name, Inches width, Inches height, Basis basis, String blazon, Provenance provenance) {

    /** Where the size comes from. */
    public enum Basis {
        /** In the official description. */
        PUBLISHED,
        /** On a piece in a museum; pieces differ by up to a quarter of an inch. */
        MEASURED,
        /** Our own estimate. */
        ESTIMATE
    }
}
