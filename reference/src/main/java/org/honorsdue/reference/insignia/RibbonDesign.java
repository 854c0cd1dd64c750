package org.honorsdue.reference.insignia;

import java.util.List;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;

/**
 * A ribbon.
 *
 * @param id the id of its award
 * @param width across all stripes
 * @param overlay what is worked into the ribbon itself
 * @param framed worn in a gold frame
 * @param stripes from the viewer's left
 * @param provenance of the pattern; each stripe has its own for the width
 */
public record RibbonDesign(
        String id,
        String name,
        Kind kind,
        Inches width,
        Overlay overlay,
        boolean framed,
        String note,
        List<RibbonStripe> stripes,
        Provenance provenance) {
    public RibbonDesign {
        stripes = List.copyOf(stripes);
    }

    /** Whether any width rests on memory or an estimate. */
    public boolean hasWidthFromMemory() {
        return stripes.stream().anyMatch(stripe -> stripe.provenance().grade() == Grade.MEMORY);
    }

    /** What sort of award it is the ribbon of. */
    public enum Kind {
        DECORATION,
        SERVICE_MEDAL,
        /** Of the wars before. */
        EARLIER_MEDAL,
        UNIT_AWARD,
        FOREIGN_DECORATION,
        FOREIGN_SERVICE
    }

    /** What is worked into the ribbon itself and is no device. */
    public enum Overlay {
        NONE,
        /** Five white stars of the Medal of Honor, set as the letter M. */
        FIVE_STARS,
        /** Three white stars in a triangle, one above two. */
        THREE_STARS
    }
}
