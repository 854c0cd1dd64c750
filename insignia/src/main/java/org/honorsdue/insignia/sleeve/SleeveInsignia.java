package org.honorsdue.insignia.sleeve;

import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;

/** Draws shoulder sleeve insignia. */
public final class SleeveInsignia {
    private SleeveInsignia() {}

    public static SleeveInsigne of(String unit, InsigniaTables tables) {
        return new SleeveInsigne(
                unit,
                unit,
                Inches.of(5, 2),
                Inches.of(5, 2),
                new Drawing(2.5, 2.5, List.of(Mark.line(Outline.circle(1.25, 1.25, 1.24), 0x333333, 0.02))),
                false,
                "",
                new Provenance("memory", Grade.MEMORY));
    }
}
