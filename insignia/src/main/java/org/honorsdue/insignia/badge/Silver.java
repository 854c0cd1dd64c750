package org.honorsdue.insignia.badge;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.ribbon.Metal;

/** Gathers the marks of a badge struck in one metal, light from above. Lengths in inches. */
final class Silver {
    private final Metal metal;
    private final List<Mark> marks = new ArrayList<>();

    Silver(Metal metal) {
        this.metal = metal;
    }

    List<Mark> marks() {
        return marks;
    }

    Silver add(Mark mark) {
        marks.add(mark);
        return this;
    }

    /** A solid part with a lit upper side. */
    Silver part(Outline outline, double top, double foot) {
        marks.add(Mark.area(
                outline,
                new Paint.Along(
                        0,
                        top,
                        0,
                        foot,
                        List.of(
                                new Paint.Stop(0, metal.light()),
                                new Paint.Stop(0.6, metal.body()),
                                new Paint.Stop(1, metal.shade())))));
        marks.add(new Mark.Line(outline, metal.edge(), 0.012, 1, Mark.Ends.ROUND, List.of()));
        return this;
    }

    Silver cut(Outline line, double width) {
        marks.add(new Mark.Line(line, metal.edge(), width, 0.85, Mark.Ends.ROUND, List.of()));
        return this;
    }

    Silver ridge(Outline line, double width) {
        marks.add(new Mark.Line(line, metal.edge(), width + 0.016, 1, Mark.Ends.ROUND, List.of()));
        marks.add(new Mark.Line(line, metal.light(), width, 1, Mark.Ends.ROUND, List.of()));
        return this;
    }

    /**
     * Two sprays of oak that rise from the foot on both sides of an ellipse.
     *
     * @param from degrees up from the foot where the first leaf stands
     * @param to where the last one stands
     */
    Silver oakWreath(double cx, double cy, double rx, double ry, double leaf, double from, double to, int leaves) {
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < leaves; i++) {
                double angle = Math.toRadians(from + (to - from) * i / (leaves - 1));
                double x = rx * Math.sin(angle);
                double y = ry * Math.cos(angle);
                // The way the spray grows here.
                double heading = Math.toDegrees(Math.atan2(-ry * Math.sin(angle), rx * Math.cos(angle)));
                for (int lean = -1; lean <= 1; lean += 2) {
                    Outline shape = Outline.path(
                                    "M0 0C12 -16 18 -4 26 -16C34 -28 40 -12 50 -20C60 -28 66 -12 76 -14C88 -14 96 -8 100 0C96 8"
                                            + " 88 14 76 14C66 12 60 28 50 20C40 12 34 28 26 16C18 4 12 16 0 0Z")
                            .placed(Placement.scaled(leaf / 100)
                                    .then(Placement.turned(heading + lean * 26))
                                    .then(Placement.at(x, y))
                                    .then(side < 0 ? Placement.mirrored() : Placement.HERE)
                                    .then(Placement.at(cx, cy)));
                    marks.add(Mark.area(shape, lean < 0 ? metal.light() : metal.body()));
                    marks.add(new Mark.Line(shape, metal.edge(), 0.01, 1, Mark.Ends.ROUND, List.of()));
                }
            }
        }
        return this;
    }

    /**
     * A pair of wings of long feathers from a middle.
     *
     * @param reach of one wing
     * @param lift how far the tips lie above the roots
     * @param feathers rows of them
     */
    Silver wings(double cx, double cy, double root, double reach, double height, double lift, int feathers) {
        for (int side = -1; side <= 1; side += 2) {
            Placement place = (side < 0 ? Placement.mirrored() : Placement.HERE).then(Placement.at(cx, cy));
            for (int i = feathers - 1; i >= 0; i--) {
                double part = (double) i / feathers;
                double tip = root + (reach - root) * (1 - 0.13 * i);
                double y = height * (part - 0.5);
                double nextY = height * ((i + 1.0) / feathers - 0.5);
                double tipY = y - lift * (1 - 0.35 * part);
                Outline feather = new Outline.Pen()
                        .move(root, y)
                        .curve(
                                root + (tip - root) * 0.4,
                                y - lift * 0.15,
                                root + (tip - root) * 0.75,
                                tipY + lift * 0.12,
                                tip,
                                tipY)
                        .curve(
                                tip + height * 0.03,
                                tipY + (nextY - y) * 0.7,
                                tip - reach * 0.05,
                                tipY + (nextY - y) * 1.15,
                                tip - reach * 0.09,
                                tipY + (nextY - y) * 1.1)
                        .curve(
                                root + (tip - root) * 0.7,
                                nextY - lift * 0.25,
                                root + (tip - root) * 0.35,
                                nextY,
                                root,
                                nextY)
                        .close()
                        .outline()
                        .placed(place);
                part(feather, cy - height / 2 - lift, cy + height / 2);
            }
            // The short feathers over the roots of the long ones.
            Outline shoulder = new Outline.Pen()
                    .move(root, -height / 2)
                    .curve(
                            root + reach * 0.18,
                            -height / 2 - lift * 0.1,
                            root + reach * 0.34,
                            -height * 0.42 - lift * 0.2,
                            root + reach * 0.4,
                            -height * 0.22 - lift * 0.2)
                    .curve(root + reach * 0.3, 0, root + reach * 0.16, height * 0.2, root, height * 0.28)
                    .close()
                    .outline()
                    .placed(place);
            part(shoulder, cy - height / 2, cy + height / 3);
        }
        return this;
    }
}
