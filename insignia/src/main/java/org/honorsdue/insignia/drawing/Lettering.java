package org.honorsdue.insignia.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Block letters drawn as strokes, our own: capitals, figures and a few signs. They need no font, so that a numeral on a
 * sleeve insigne looks the same on every machine. A letter fills its height exactly, stroke included.
 */
public final class Lettering {
    /** A letter in a box 100 high. */
    private record Glyph(double width, String path) {}

    private static final Map<Character, Glyph> GLYPHS = Map.ofEntries(
            glyph('A', 64, "M0 100L32 0L64 100M10 70H54"),
            glyph('B', 58, "M0 50V0H34C64 0 64 48 34 48H0V100H36C66 100 66 48 34 48"),
            glyph('C', 58, "M58 22C50 -6 0 -10 0 50C0 110 50 106 58 78"),
            glyph('D', 60, "M0 0V100H24C72 100 72 0 24 0Z"),
            glyph('E', 52, "M52 0H0V100H52M0 48H42"),
            glyph('F', 52, "M52 0H0V100M0 48H42"),
            glyph('G', 58, "M58 22C50 -6 0 -10 0 50C0 110 58 108 58 70V56H34"),
            glyph('H', 58, "M0 0V100M58 0V100M0 48H58"),
            glyph('I', 0, "M0 0V100"),
            glyph('J', 42, "M42 0V70C42 110 0 110 0 70"),
            glyph('K', 58, "M0 0V100M58 0L0 60M20 39L58 100"),
            glyph('L', 50, "M0 0V100H50"),
            glyph('M', 74, "M0 100V0L37 64L74 0V100"),
            glyph('N', 60, "M0 100V0L60 100V0"),
            glyph('O', 60, "M30 0C70 0 70 100 30 100C-10 100 -10 0 30 0Z"),
            glyph('P', 56, "M0 100V0H32C64 0 64 54 32 54H0"),
            glyph('Q', 60, "M30 0C70 0 70 100 30 100C-10 100 -10 0 30 0ZM36 72L60 100"),
            glyph('R', 58, "M0 100V0H32C64 0 64 52 32 52H0M30 52L58 100"),
            glyph('S', 56, "M55 22C48 -6 2 -8 2 26C2 58 56 42 56 74C56 108 4 106 0 78"),
            glyph('T', 58, "M0 0H58M29 0V100"),
            glyph('U', 58, "M0 0V66C0 112 58 112 58 66V0"),
            glyph('V', 62, "M0 0L31 100L62 0"),
            glyph('W', 88, "M0 0L21 100L44 20L67 100L88 0"),
            glyph('X', 60, "M0 0L60 100M60 0L0 100"),
            glyph('Y', 60, "M0 0L30 48L60 0M30 48V100"),
            glyph('Z', 56, "M0 0H56L0 100H56"),
            glyph('0', 58, "M29 0C68 0 68 100 29 100C-10 100 -10 0 29 0Z"),
            glyph('1', 22, "M0 18L22 0V100"),
            glyph('2', 56, "M0 24C2 -8 56 -8 56 26C56 54 0 66 0 100H56"),
            glyph('3', 56, "M2 18C10 -8 54 -6 54 24C54 46 36 48 20 48C40 48 56 52 56 74C56 108 6 108 0 80"),
            glyph('4', 60, "M46 100V0L0 70H60"),
            glyph('5', 56, "M52 0H4V46C18 34 56 34 56 68C56 108 6 108 0 80"),
            glyph('6', 58, "M52 14C34 -12 0 4 0 62C0 112 58 112 58 66C58 26 0 26 0 58"),
            glyph('7', 56, "M0 0H56L18 100"),
            glyph('8', 58, "M29 47C-6 44 -4 0 29 0C62 0 64 44 29 47C-10 51 -10 100 29 100C68 100 68 51 29 47Z"),
            glyph('9', 58, "M6 86C24 112 58 96 58 38C58 -12 0 -12 0 34C0 74 58 74 58 42"),
            glyph('-', 34, "M0 52H34"),
            glyph('.', 0, "M0 99V100"),
            glyph('\'', 0, "M0 0V22"),
            glyph(' ', 26, ""));

    private static final double SPACE_BETWEEN = 22;

    private Lettering() {}

    private static Map.Entry<Character, Glyph> glyph(char letter, double width, String path) {
        return Map.entry(letter, new Glyph(width, path));
    }

    /**
     * How wide a line of letters is.
     *
     * @param stroke width of the strokes, in inches
     */
    public static double width(String text, double height, double stroke) {
        double unit = (height - stroke) / 100;
        double width = 0;
        String letters = letters(text);
        for (int i = 0; i < letters.length(); i++) {
            width += letter(letters.charAt(i)).width * unit + (i > 0 ? gap(unit, stroke) : 0);
        }
        return width + stroke;
    }

    /** The free space between two letters, from stroke middle to stroke middle. */
    private static double gap(double unit, double stroke) {
        return stroke + SPACE_BETWEEN * unit;
    }

    /**
     * A line of letters about a middle.
     *
     * @param cx middle of the line
     * @param top of the letters
     */
    public static Mark line(String text, double cx, double top, double height, double stroke, int rgb) {
        return stroke(outline(text, cx, top, height, stroke), rgb, stroke);
    }

    /** A line of letters squeezed or stretched to a width. */
    public static Mark fitted(String text, double cx, double top, double width, double height, double stroke, int rgb) {
        double natural = width(text, height, stroke);
        double across = (width - stroke) / (natural - stroke);
        Outline letters = outline(text, 0, top, height, stroke)
                .placed(Placement.scaled(across, 1).then(Placement.at(cx, 0)));
        return stroke(letters, rgb, stroke);
    }

    /** The middles of the strokes of a line of letters. */
    public static Outline outline(String text, double cx, double top, double height, double stroke) {
        double unit = (height - stroke) / 100;
        double x = cx - width(text, height, stroke) / 2 + stroke / 2;
        var pen = new Outline(List.of());
        for (char character : letters(text).toCharArray()) {
            Glyph glyph = letter(character);
            if (!glyph.path.isEmpty()) {
                pen = pen.and(Outline.path(glyph.path)
                        .placed(Placement.scaled(unit).then(Placement.at(x, top + stroke / 2))));
            }
            x += glyph.width * unit + gap(unit, stroke);
        }
        return pen;
    }

    /**
     * Letters round a circle.
     *
     * @param radius where the feet of the letters stand, or their heads when they read from below
     * @param middle where the middle of the line stands, degrees clockwise from the top
     * @param below the line reads along the lower half, heads inwards
     */
    public static Mark around(
            String text,
            double cx,
            double cy,
            double radius,
            double middle,
            double height,
            double stroke,
            int rgb,
            boolean below) {
        double unit = (height - stroke) / 100;
        String letters = letters(text);
        double length = width(text, height, stroke);
        double middleRadius = below ? radius - height / 2 : radius + height / 2;
        double at = -length / 2 + stroke / 2;
        var pen = new Outline(List.of());
        for (char character : letters.toCharArray()) {
            Glyph glyph = letter(character);
            double half = glyph.width * unit / 2;
            double turn = Math.toDegrees((at + half) / middleRadius);
            if (!glyph.path.isEmpty()) {
                Placement place = Placement.at(-glyph.width / 2, -50)
                        .then(Placement.scaled(unit))
                        .then(Placement.at(0, below ? middleRadius : -middleRadius))
                        .then(Placement.turned(below ? middle - 180 - turn : middle + turn))
                        .then(Placement.at(cx, cy));
                pen = pen.and(Outline.path(glyph.path).placed(place));
            }
            at += glyph.width * unit + gap(unit, stroke);
        }
        return stroke(pen, rgb, stroke);
    }

    private static Mark stroke(Outline outline, int rgb, double width) {
        return new Mark.Line(outline, rgb, width, 1, Mark.Ends.SQUARE, List.of());
    }

    private static String letters(String text) {
        return text.toUpperCase(Locale.ROOT);
    }

    private static Glyph letter(char character) {
        Glyph glyph = GLYPHS.get(character);
        if (glyph == null) {
            throw new IllegalArgumentException("No block letter is drawn for '%s'.".formatted(character));
        }
        return glyph;
    }
}
