package org.honorsdue.insignia.ribbon;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;

/** Our sketches of the devices, each filling a width and height in inches. */
final class DeviceArt {
    /** Half a leaf of white oak along its midrib, from the stem at 0,0 to the tip at 100,0; the other half mirrors it. */
    private static final String HALF_LEAF =
            "M0 0C8 -3 12 -16 20 -15C26 -14 24 -6 31 -8C36 -24 46 -27 52 -23C57 -18 50 -11 57 -11C62 -20 72 -23 78 -19C82"
                    + " -15 77 -9 82 -8C90 -11 98 -8 100 0Z";

    private DeviceArt() {}

    /** A star of five points, each point cut in a lit and a shaded face. */
    static Drawing star(double size, Metal metal) {
        double c = size / 2;
        // The circumscribing circle is the size; the centre lies where a circle through the points has it.
        double outer = c;
        double inner = outer * 0.42;
        var marks = new ArrayList<Mark>();
        Outline whole = Outline.star(5, c, c, outer, inner);
        marks.add(Mark.area(whole, metal.body()));
        for (int point = 0; point < 5; point++) {
            double tip = Math.toRadians(72.0 * point);
            double left = tip - Math.toRadians(36);
            double right = tip + Math.toRadians(36);
            double tipX = c + outer * Math.sin(tip);
            double tipY = c - outer * Math.cos(tip);
            marks.add(Mark.area(
                    Outline.polygon(c, c, c + inner * Math.sin(left), c - inner * Math.cos(left), tipX, tipY),
                    metal.light()));
            marks.add(Mark.area(
                    Outline.polygon(c, c, tipX, tipY, c + inner * Math.sin(right), c - inner * Math.cos(right)),
                    metal.shade()));
        }
        marks.add(Mark.line(whole, metal.edge(), size * 0.05));
        return new Drawing(size, size, marks);
    }

    /** The outline of a star whose metal the paper does not tell. */
    static Drawing hollowStar(double size) {
        double c = size / 2;
        Outline whole = Outline.star(5, c, c, c * 0.94, c * 0.42);
        return new Drawing(size, size, List.of(Mark.area(whole, 0xFFFFFF), Mark.line(whole, 0x333333, size * 0.08)));
    }

    /** A white star, woven or embroidered. */
    static Mark plainStar(double cx, double cy, double radius, int rgb) {
        return Mark.area(Outline.star(cx, cy, radius), rgb);
    }

    static Drawing arrowhead(double width, double height) {
        Metal metal = Metal.BRONZE;
        double c = width / 2;
        Outline whole = Outline.path("M50 0L100 66L66 62L62 100L38 100L34 62L0 66Z")
                .placed(Placement.scaled(width / 100, height / 100));
        Outline lit =
                Outline.path("M50 0L50 100L38 100L34 62L0 66Z").placed(Placement.scaled(width / 100, height / 100));
        return new Drawing(
                width,
                height,
                List.of(
                        Mark.area(whole, metal.shade()),
                        Mark.area(lit, metal.light()),
                        Mark.line(Outline.through(c, height * 0.04, c, height * 0.96), metal.body(), width * 0.06),
                        Mark.line(whole, metal.edge(), width * 0.07)));
    }

    /** A twig of four leaves and three acorns, stem to the viewer's left. */
    static Drawing oakLeaves(double width, double height, Metal metal) {
        double u = width / 100;
        double middle = height / 2;
        var marks = new ArrayList<Mark>();
        Outline stem =
                Outline.path("M0 -3C14 -1 30 0 62 0").placed(Placement.scaled(u).then(Placement.at(0, middle)));
        marks.add(new Mark.Line(stem, metal.edge(), 8 * u, 1, Mark.Ends.ROUND, List.of()));
        marks.add(new Mark.Line(stem, metal.body(), 4 * u, 1, Mark.Ends.ROUND, List.of()));
        marks.addAll(leaf(20 * u, middle, 42 * u, -52, metal));
        marks.addAll(leaf(20 * u, middle, 42 * u, 52, metal));
        marks.addAll(leaf(50 * u, middle, 50 * u, -21, metal));
        marks.addAll(leaf(50 * u, middle, 50 * u, 21, metal));
        marks.addAll(acorn(53 * u, middle - 15 * u, 7.5 * u, metal));
        marks.addAll(acorn(53 * u, middle + 15 * u, 7.5 * u, metal));
        marks.addAll(acorn(44 * u, middle, 7.5 * u, metal));
        return new Drawing(width, height, marks);
    }

    static List<Mark> leaf(double x, double y, double length, double degrees, Metal metal) {
        Outline half = Outline.path(HALF_LEAF);
        Placement place = Placement.scaled(length / 100, length / 80)
                .then(Placement.turned(degrees))
                .then(Placement.at(x, y));
        Outline upper = half.placed(place);
        Outline lower = half.placed(Placement.scaled(1, -1).then(place));
        Outline rib = Outline.through(0, 0, 94, 0).placed(place);
        return List.of(
                Mark.line(upper, metal.edge(), length * 0.07),
                Mark.line(lower, metal.edge(), length * 0.07),
                Mark.area(upper, metal.light()),
                Mark.area(lower, metal.body()),
                Mark.line(rib, metal.shade(), length * 0.04));
    }

    private static List<Mark> acorn(double cx, double cy, double radius, Metal metal) {
        return List.of(
                Mark.area(Outline.ellipse(cx, cy, radius * 1.2, radius), metal.edge()),
                Mark.area(Outline.ellipse(cx, cy, radius, radius * 0.8), metal.light()),
                Mark.area(Outline.ellipse(cx - radius * 0.55, cy, radius * 0.45, radius * 0.8), metal.shade()));
    }

    static Drawing letterV(double width, double height) {
        Metal metal = Metal.BRONZE;
        Outline whole = Outline.path("M0 0H38V13H31L50 64L69 13H62V0H100V13H92L62 100H38L8 13H0Z")
                .placed(Placement.scaled(width / 100, height / 100));
        return new Drawing(
                width,
                height,
                List.of(
                        Mark.area(whole, metal.lit(0, 0, width, height)),
                        Mark.line(whole, metal.edge(), width * 0.05)));
    }

    /** A bar with so many loops, 1 to 5. */
    static Drawing loops(double width, double height, int loops, Metal metal) {
        var marks = new ArrayList<Mark>();
        double cy = height / 2;
        double bar = height * 0.62;
        marks.add(Mark.area(Outline.rounded(0, cy - bar / 2, width, bar, bar * 0.2), metal.edge()));
        marks.add(Mark.area(
                Outline.rectangle(height * 0.07, cy - bar * 0.38, width - height * 0.14, bar * 0.76),
                new Paint.Along(
                        0,
                        cy - bar / 2,
                        0,
                        cy + bar / 2,
                        List.of(
                                new Paint.Stop(0, metal.light()),
                                new Paint.Stop(0.5, metal.body()),
                                new Paint.Stop(1, metal.shade())))));
        double pitch = width / 6;
        double first = width / 2 - pitch * (loops - 1) / 2;
        for (int i = 0; i < loops; i++) {
            double cx = first + pitch * i;
            Outline knot = Outline.ellipse(cx, cy, height * 0.62, height * 0.4);
            marks.add(Mark.area(Outline.ellipse(cx, cy, height * 0.8, height * 0.52), metal.edge()));
            marks.add(Mark.line(knot, metal.light(), height * 0.17));
            marks.add(Mark.area(Outline.ellipse(cx, cy, height * 0.4, height * 0.2), metal.edge()));
        }
        return new Drawing(width, height, marks);
    }

    /** A palm frond lying level, stem to the viewer's left. */
    static Drawing palm(double width, double height) {
        Metal metal = Metal.BRONZE;
        var marks = new ArrayList<Mark>();
        double cy = height / 2;
        int leaves = 9;
        for (int i = 0; i < leaves; i++) {
            double x = width * (0.16 + 0.68 * i / (leaves - 1));
            double reach = height * (0.5 - 0.18 * Math.abs(i - 3.0) / leaves * 2);
            for (int side = -1; side <= 1; side += 2) {
                Outline blade = new Outline.Pen()
                        .move(x - width * 0.05, cy)
                        .curve(
                                x,
                                cy + side * reach * 0.5,
                                x + width * 0.04,
                                cy + side * reach * 0.95,
                                x + width * 0.14,
                                cy + side * reach * 0.9)
                        .curve(
                                x + width * 0.1,
                                cy + side * reach * 0.6,
                                x + width * 0.07,
                                cy + side * reach * 0.2,
                                x + width * 0.03,
                                cy)
                        .close()
                        .outline();
                marks.add(Mark.line(blade, metal.edge(), height * 0.06));
                marks.add(Mark.area(blade, side < 0 ? metal.light() : metal.body()));
            }
        }
        marks.add(new Mark.Line(
                Outline.through(0.02 * width, cy, 0.98 * width, cy),
                metal.edge(),
                height * 0.13,
                1,
                Mark.Ends.ROUND,
                List.of()));
        marks.add(new Mark.Line(
                Outline.through(0.02 * width, cy, 0.98 * width, cy),
                metal.light(),
                height * 0.06,
                1,
                Mark.Ends.ROUND,
                List.of()));
        return new Drawing(width, height, marks);
    }
}
