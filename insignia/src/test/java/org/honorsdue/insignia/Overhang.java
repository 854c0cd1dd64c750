package org.honorsdue.insignia;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.insignia.print.Png;

/** Measures on a picture how far the ink of a drawing reaches, whatever size it says it has. */
public final class Overhang {
    private static final int DOTS = 100;

    private Overhang() {}

    /** Ink bounds in inches: left, top, right, foot, from the corner of the drawing's own sheet. */
    public static double[] ink(Drawing drawing) {
        double border = 0.5;
        var larger = new Drawing(
                drawing.width() + 2 * border, drawing.height() + 2 * border, List.of(drawing.at(border, border)));
        BufferedImage picture = Png.picture(
                Svg.of(larger, "measured", ""), (int) Math.round(larger.width() * DOTS), new Color(0, 0, 0, 0));
        double left = 99;
        double top = 99;
        double right = -99;
        double foot = -99;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if (picture.getRGB(x, y) >>> 24 > 40) {
                    left = Math.min(left, (double) x / DOTS - border);
                    top = Math.min(top, (double) y / DOTS - border);
                    right = Math.max(right, (x + 1.0) / DOTS - border);
                    foot = Math.max(foot, (y + 1.0) / DOTS - border);
                }
            }
        }
        return new double[] {left, top, right, foot};
    }

    /** How far the ink reaches beyond the drawing's sheet on its worst side, inches; negative when it stays within. */
    public static double of(Drawing drawing) {
        double[] ink = ink(drawing);
        return Math.max(Math.max(-ink[0], -ink[1]), Math.max(ink[2] - drawing.width(), ink[3] - drawing.height()));
    }
}
