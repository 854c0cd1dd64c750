package org.honorsdue.insignia.medal;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Lettering;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.ribbon.Metal;

/** Gathers the marks of a struck piece, light from the upper left. The piece is 100 across, its middle at 0,0. */
final class Relief {
    private final Metal metal;
    private final List<Mark> marks = new ArrayList<>();

    Relief(Metal metal) {
        this.metal = metal;
    }

    Metal metal() {
        return metal;
    }

    List<Mark> marks() {
        return marks;
    }

    Relief add(Mark mark) {
        marks.add(mark);
        return this;
    }

    Relief addAll(List<Mark> more) {
        marks.addAll(more);
        return this;
    }

    /** A round flan with a raised rim. */
    Relief disc() {
        marks.add(Mark.area(Outline.circle(0, 0, 50), metal.edge()));
        marks.add(Mark.area(Outline.circle(0, 0, 49), metal.lit(-45, -45, 90, 90)));
        marks.add(Mark.area(
                Outline.circle(0, 0, 45),
                new Paint.Outward(
                        -14,
                        -16,
                        66,
                        List.of(
                                new Paint.Stop(0, metal.light()),
                                new Paint.Stop(0.55, metal.body()),
                                new Paint.Stop(1, metal.shade())))));
        marks.add(new Mark.Line(Outline.circle(0, 0, 45), metal.edge(), 1.1, 0.7, Mark.Ends.BUTT, List.of()));
        return this;
    }

    /** A flan of another shape. */
    Relief flan(Outline outline) {
        marks.add(Mark.area(outline, metal.lit(-45, -45, 90, 90)));
        marks.add(Mark.line(outline, metal.edge(), 1.6));
        return this;
    }

    /** Something that stands up from the ground. */
    Relief raised(String path) {
        return raised(Outline.path(path));
    }

    Relief raised(Outline outline) {
        marks.add(new Mark.Area(outline.placed(Placement.at(1, 1.2)), Paint.plain(metal.edge()), 0.65));
        marks.add(Mark.area(
                outline,
                new Paint.Along(
                        -34,
                        -40,
                        34,
                        40,
                        List.of(
                                new Paint.Stop(0, Metal.mixed(metal.light(), 0xFFF4DC, 0.3)),
                                new Paint.Stop(1, Metal.mixed(metal.light(), metal.body(), 0.55))))));
        marks.add(new Mark.Line(outline, metal.edge(), 0.9, 0.85, Mark.Ends.ROUND, List.of()));
        return this;
    }

    /** The same on both sides of the upright. */
    Relief bothSides(String path) {
        Outline right = Outline.path(path);
        return raised(right).raised(right.placed(Placement.mirrored()));
    }

    /** A line that stands up. */
    Relief ridge(String path, double width) {
        return ridge(Outline.path(path), width);
    }

    Relief ridge(Outline line, double width) {
        marks.add(new Mark.Line(
                line.placed(Placement.at(0.8, 1)), metal.edge(), width + 0.9, 0.65, Mark.Ends.ROUND, List.of()));
        marks.add(new Mark.Line(line, metal.light(), width, 1, Mark.Ends.ROUND, List.of()));
        return this;
    }

    /** A cut line. */
    Relief groove(String path, double width) {
        marks.add(new Mark.Line(Outline.path(path), metal.edge(), width, 0.8, Mark.Ends.ROUND, List.of()));
        return this;
    }

    /** Words round the rim, over the top or along the foot. */
    Relief legendAbove(String text, double radius, double height) {
        return legend(Lettering.around(text, 0, 0, radius, 0, height, height * 0.17, metal.edge(), false));
    }

    Relief legendBelow(String text, double radius, double height) {
        return legend(Lettering.around(text, 0, 0, radius, 180, height, height * 0.17, metal.edge(), true));
    }

    Relief words(String text, double top, double height) {
        return legend(Lettering.line(text, 0, top, height, height * 0.17, metal.edge()));
    }

    private Relief legend(Mark letters) {
        if (letters instanceof Mark.Line line) {
            marks.add(new Mark.Line(
                    line.outline().placed(Placement.at(-0.5, -0.6)),
                    metal.light(),
                    line.width(),
                    0.8,
                    line.ends(),
                    List.of()));
        }
        marks.add(letters);
        return this;
    }

    /**
     * An eagle seen from the front, its head to the viewer's left.
     *
     * @param size of the box it fills
     */
    Relief eagle(double cx, double cy, double size, Wings wings) {
        var bird = new Relief(metal);
        bird.bothSides(wings.path);
        bird.raised("M-9 40L-5 24H5L9 40C4 45 -4 45 -9 40Z");
        bird.raised("M0 -22C9 -20 12 -8 11 4C10 18 5 28 0 32C-5 28 -10 18 -11 4C-12 -8 -9 -20 0 -22Z");
        bird.raised("M3 -20C6 -28 2 -35 -4 -34C-9 -34 -13 -31 -15 -27C-12 -27 -10 -27 -9 -25C-8 -22 -5 -19 -3 -17Z");
        bird.groove("M-3 -8C-1 -6 1 -6 3 -8M-5 2C-2 5 2 5 5 2M-3 12C-1 14 1 14 3 12", 1.2);
        marks.add(Mark.group(Placement.scaled(size / 100).then(Placement.at(cx, cy)), bird.marks));
        return this;
    }

    /** How the eagle holds its wings; the path is the right one. */
    enum Wings {
        RAISED(
                "M7 -12C18 -20 20 -38 38 -50C38 -44 41 -42 46 -42C43 -37 45 -34 49 -33C45 -28 46 -25 49 -23C44 -19 44 -16 46 -13C40"
                        + " -10 39 -6 40 -3C33 -2 30 2 29 6C22 5 15 8 10 14Z"),
        LEVEL(
                "M7 -14C20 -22 34 -20 50 -26C48 -20 49 -17 50 -14C45 -12 46 -8 46 -5C40 -4 40 0 39 3C33 3 32 7 31 10C25 9 22 13 20"
                        + " 16C15 13 12 14 10 16Z"),
        LOWERED(
                "M7 -16C22 -26 40 -16 50 14C46 12 43 14 42 18C39 15 36 17 35 21C32 18 28 20 27 24C24 20 20 22 18 26C15 18 12 12 10"
                        + " 8Z");

        private final String path;

        Wings(String path) {
            this.path = path;
        }
    }

    /** Two sprays of leaves that rise from the foot on both sides of a circle. */
    Relief wreath(double radius, double leafLength, double from, double to, int pairs) {
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < pairs; i++) {
                double angle = from + (to - from) * i / (pairs - 1);
                for (int lean = -1; lean <= 1; lean += 2) {
                    Placement place = Placement.scaled(leafLength / 100)
                            .then(Placement.turned(-90 + lean * 24))
                            .then(Placement.at(radius, 0))
                            .then(Placement.turned(90 - angle))
                            .then(side < 0 ? Placement.mirrored() : Placement.HERE);
                    Outline leaf = Outline.path("M0 0C20 -26 70 -26 100 0C70 26 20 26 0 0Z")
                            .placed(place);
                    marks.add(Mark.area(leaf, lean > 0 ? metal.light() : metal.body()));
                    marks.add(new Mark.Line(leaf, metal.edge(), 0.8, 1, Mark.Ends.ROUND, List.of()));
                }
            }
        }
        return this;
    }
}
