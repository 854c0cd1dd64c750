package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/**
 * What hangs from a drape.
 *
 * @param metal name of a colour, or {@code gold}
 * @param width over all
 * @param height over all, without ring and ribbon
 * @param face what the front shows, in words
 */
public record MedalDesign(
        String award,
        String metal,
        Inches width,
        Inches height,
        Suspension suspension,
        String face,
        String note,
        Provenance provenance) {

    /** What joins drape and pendant. */
    public enum Suspension {
        RING,
        BAR,
        /** A rectangular loop with rounded corners. */
        LOOP,
        /** Hung from a ribbon round the neck. */
        NECK
    }
}
