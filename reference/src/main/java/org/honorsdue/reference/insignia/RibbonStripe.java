package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/**
 * One stripe of a ribbon.
 *
 * @param ribbon id of the ribbon
 * @param number from 1 at the viewer's left
 * @param published the width as printed
 * @param drawn the width as drawn; another than the published one only where those do not add up
 */
public record RibbonStripe(
        String ribbon,
        int number,
        Inches published,
        Inches drawn,
        RibbonColor color,
        Basis basis,
        Provenance provenance) {

    /** Where the width comes from. */
    public enum Basis {
        /** Printed in the description. */
        STATED,
        /** Computed from a printed figure: thirds of a group, what completes the whole. */
        DERIVED,
        /** Our own estimate. */
        ESTIMATE,
        MEMORY
    }
}
