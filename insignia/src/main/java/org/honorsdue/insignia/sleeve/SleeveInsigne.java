package org.honorsdue.insignia.sleeve;

import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.insignia.Inches;

/**
 * A shoulder sleeve insigne.
 *
 * @param unit id of the unit
 * @param drawing in its true size
 * @param drawn after its blazon; otherwise only an outline with the name
 * @param blazon in words
 * @param provenance of the size and the blazon
 */
public record SleeveInsigne(
        String unit,
        String name,
        Inches width,
        Inches height,
        Drawing drawing,
        boolean drawn,
        String blazon,
        Provenance provenance) {}
