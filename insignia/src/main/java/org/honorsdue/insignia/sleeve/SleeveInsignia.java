package org.honorsdue.insignia.sleeve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.reference.insignia.SleeveDesign;

/** Draws shoulder sleeve insignia in their true size. */
public final class SleeveInsignia {
    /** Size of the outline for a unit whose insigne no table has (trade practice, from memory). */
    private static final Inches USUAL = Inches.of(5, 2);

    private SleeveInsignia() {}

    /** The insigne of a unit; an outline with its name where it is not drawn, and of the usual size where not known. */
    public static SleeveInsigne of(String unit, InsigniaTables tables) {
        Optional<SleeveDesign> design = tables.sleeve(unit);
        if (design.isEmpty()) {
            return new SleeveInsigne(
                    unit,
                    unit,
                    USUAL,
                    USUAL,
                    outline(unit, USUAL, USUAL),
                    false,
                    "",
                    new Provenance("memory", Grade.MEMORY));
        }
        SleeveDesign known = design.get();
        Optional<Cloth> cloth = Drawn.of(unit);
        return new SleeveInsigne(
                unit,
                known.name(),
                known.width(),
                known.height(),
                cloth.map(drawn -> scaled(drawn, known.width(), known.height()))
                        .orElseGet(() -> outline(known.name(), known.width(), known.height())),
                cloth.isPresent(),
                known.blazon(),
                known.provenance());
    }

    /** Whether the insigne of a unit is drawn and not only outlined. */
    public static boolean isDrawn(String unit) {
        return Drawn.of(unit).isPresent();
    }

    private static Drawing scaled(Cloth cloth, Inches width, Inches height) {
        double unit = width.decimal() / 100;
        return new Drawing(
                width.decimal(),
                height.decimal(),
                List.of(Mark.group(
                        Placement.scaled(unit).then(Placement.at(width.decimal() / 2, height.decimal() / 2)),
                        cloth.marks())));
    }

    /** The size as a dashed frame with the name in it. */
    private static Drawing outline(String name, Inches width, Inches height) {
        double w = width.decimal();
        double h = height.decimal();
        var marks = new ArrayList<Mark>();
        Outline edge = Outline.rounded(0.01, 0.01, w - 0.02, h - 0.02, 0.15);
        marks.add(new Mark.Area(edge, Paint.plain(0xECE5D3), 1));
        marks.add(new Mark.Line(edge, 0x5C5534, 0.02, 1, Mark.Ends.BUTT, List.of(0.1, 0.06)));
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        int most = (int) (w / 0.085);
        for (String word : name.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        double y = h / 2 - (lines.size() - 1) * 0.1 + 0.02;
        for (String text : lines) {
            marks.add(new Mark.Words(text, w / 2, y, 0.16, Mark.Anchor.MIDDLE, Mark.Face.BOLD, 0x3A3630));
            y += 0.2;
        }
        marks.add(new Mark.Words(
                width.text() + " x " + height.text() + " in",
                w / 2,
                y + 0.02,
                0.12,
                Mark.Anchor.MIDDLE,
                Mark.Face.REGULAR,
                0x3A3630));
        return new Drawing(w, h, marks);
    }
}
