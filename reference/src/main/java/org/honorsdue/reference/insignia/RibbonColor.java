package org.honorsdue.reference.insignia;

import java.util.List;
import org.honorsdue.reference.Provenance;

/**
 * A colour of silk, metal or cloth.
 *
 * @param cable number in the standard color card of America; empty where none was published
 * @param srgb red, green and blue as {@code 0xRRGGBB}, our own estimate; the first stop of a rainbow
 * @param stops the colours a rainbow passes through, evenly spaced from the viewer's left; empty for a plain colour
 */
public record RibbonColor(
        String name, String cable, int srgb, List<Integer> stops, String note, Provenance provenance) {
    public RibbonColor {
        stops = List.copyOf(stops);
    }

    public boolean isRainbow() {
        return !stops.isEmpty();
    }
}
