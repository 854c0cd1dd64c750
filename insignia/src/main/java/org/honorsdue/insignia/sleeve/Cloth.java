package org.honorsdue.insignia.sleeve;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Lettering;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Placement;

/** Gathers the marks of an embroidered insigne. It is 100 wide, its middle at 0,0. Shades are our own estimates. */
final class Cloth {
    static final int OLIVE = 0x5C5534;
    static final int KHAKI = 0xB8A67A;
    static final int RED = 0xB5222E;
    static final int CRIMSON = 0x9A1F38;
    static final int BLUE = 0x24408E;
    static final int LIGHT_BLUE = 0x76A9D6;
    static final int WHITE = 0xF3F0E6;
    static final int YELLOW = 0xF0C02E;
    static final int GOLD = 0xDBA632;
    static final int GREEN = 0x2C6B42;
    static final int BLACK = 0x1B1B1D;
    static final int GRAY = 0x989BA1;
    static final int ORANGE = 0xE07B27;

    private final double half;
    private final List<Mark> marks = new ArrayList<>();

    /** @param height where the width is 100 */
    Cloth(double height) {
        half = height / 2;
    }

    List<Mark> marks() {
        return marks;
    }

    Cloth add(Mark mark) {
        marks.add(mark);
        return this;
    }

    Cloth area(Outline outline, int rgb) {
        marks.add(Mark.area(outline, rgb));
        return this;
    }

    Cloth area(String path, int rgb) {
        return area(Outline.path(path), rgb);
    }

    Cloth bothSides(String path, int rgb) {
        return area(path, rgb).area(Outline.path(path).placed(Placement.mirrored()), rgb);
    }

    Cloth line(String path, int rgb, double width) {
        return line(Outline.path(path), rgb, width);
    }

    Cloth line(Outline outline, int rgb, double width) {
        marks.add(Mark.line(outline, rgb, width));
        return this;
    }

    /** A line with round ends. */
    Cloth cord(String path, int rgb, double width) {
        marks.add(new Mark.Line(Outline.path(path), rgb, width, 1, Mark.Ends.ROUND, List.of()));
        return this;
    }

    /** Marks seen only within an outline. */
    Cloth within(Outline clip, Cloth inner) {
        marks.add(Mark.within(clip, inner.marks));
        return this;
    }

    /** Block letters of a height about a middle, their top at a place. */
    Cloth letters(String text, double cx, double top, double height, double stroke, int rgb) {
        marks.add(Lettering.line(text, cx, top, height, stroke, rgb));
        return this;
    }

    Cloth fitted(String text, double cx, double top, double width, double height, double stroke, int rgb) {
        marks.add(Lettering.fitted(text, cx, top, width, height, stroke, rgb));
        return this;
    }

    /** A field cut along its edge, with a border inside it; no border when its width is 0. */
    Cloth field(Outline outline, int rgb, int border, double width) {
        area(outline, rgb);
        if (width > 0) {
            marks.add(Mark.within(outline, List.of(Mark.line(outline, border, 2 * width))));
        }
        return this;
    }

    /** A round field as wide as the insigne. */
    Cloth disc(int rgb, int border, double width) {
        return field(Outline.circle(0, 0, 50), rgb, border, width);
    }

    /** A square standing on a point, as wide as the insigne. */
    Cloth onPoint(int rgb, int border, double width) {
        return field(Outline.polygon(0, -50, 50, 0, 0, 50, -50, 0), rgb, border, width);
    }

    /** A shield with a level top and sides that curve to a point. */
    Cloth shield(int rgb, int border, double width) {
        return field(shieldOutline(), rgb, border, width);
    }

    Outline shieldOutline() {
        return Outline.path("M-50 %1$sH50V%2$sC50 %3$s 22 %4$s 0 %5$sC-22 %4$s -50 %3$s -50 %2$sZ"
                .formatted(-half, half * 0.16, half * 0.62, half * 0.84, half));
    }

    /** A curved tab above the field, with white or coloured letters. */
    Cloth tab(String text, double radius, double top, int ground, int letters) {
        double height = 17;
        double turn = Math.toDegrees(Math.asin(49.5 / radius));
        double cy = top + radius;
        var pen = new Outline.Pen()
                .arc(0, cy, radius, radius, -turn, turn, true)
                .arc(0, cy, radius - height, radius - height, turn, -turn, false)
                .close();
        area(pen.outline(), ground);
        marks.add(Lettering.around(text, 0, cy, radius - height + 4, 0, 9, 1.9, letters, false));
        return this;
    }

    double half() {
        return half;
    }
}
