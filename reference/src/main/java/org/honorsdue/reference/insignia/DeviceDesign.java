package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/**
 * A device worn on a ribbon.
 *
 * @param device id as in the findings
 * @param metal name of a colour
 * @param most the most of its kind on one ribbon
 * @param place order from the wearer's right, which is the viewer's left; lower first
 */
public record DeviceDesign(
        String device,
        WornOn wornOn,
        String metal,
        Inches width,
        Inches height,
        int most,
        int place,
        String note,
        Provenance provenance) {

    /** Which of the two ribbons of an award. */
    public enum WornOn {
        /** The small bar. */
        RIBBON,
        /** The ribbon a medal hangs from. */
        DRAPE
    }
}
