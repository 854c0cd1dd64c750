package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.ribbon.Metal;

/** Draws a plan: finished in its frame, or bare with numbers for the bench. */
final class CaseDrawing {
    private static final int INK = 0x2A2722;

    private CaseDrawing() {}

    static Drawing finished(CasePlan plan) {
        double w = plan.wish().width().decimal();
        double h = plan.wish().height().decimal();
        var marks = new ArrayList<Mark>();
        marks.addAll(moulding(w, h));
        marks.add(Mark.group(Placement.at(CasePlan.MOULDING, CasePlan.MOULDING), inside(plan, w, h)));
        return new Drawing(w + 2 * CasePlan.MOULDING, h + 2 * CasePlan.MOULDING, marks);
    }

    private static List<Mark> inside(CasePlan plan, double w, double h) {
        int ground = plan.wish().ground();
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(
                Outline.rectangle(0, 0, w, h),
                new Paint.Outward(
                        w / 2,
                        h * 0.42,
                        Math.hypot(w, h) * 0.62,
                        List.of(
                                new Paint.Stop(0, Metal.mixed(ground, 0xFFFFFF, 0.07)),
                                new Paint.Stop(1, Metal.mixed(ground, 0x000000, 0.14))))));
        for (Placed one : plan.placed()) {
            if (!one.piece().pending()) {
                marks.addAll(shadow(one));
            }
            marks.add(one.piece().drawing().at(one.x().decimal(), one.y().decimal()));
        }
        // The lip of the frame throws a shade on the board.
        for (int i = 0; i < 5; i++) {
            double in = 0.05 * (i + 1);
            marks.add(new Mark.Area(Outline.rectangle(0, 0, w, in * 1.6), Paint.plain(0x000000), 0.05));
            marks.add(new Mark.Area(Outline.rectangle(0, 0, in, h), Paint.plain(0x000000), 0.04));
        }
        return marks;
    }

    /** Soft shade under papers, plates and cloth, which have straight edges; metal and silk carry their own edges. */
    private static List<Mark> shadow(Placed one) {
        boolean straight = switch (one.piece().kind()) {
            case PHOTOGRAPH, PAPER, NAMEPLATE, RIBBONS, UNIT_EMBLEMS -> true;
            default -> false;
        };
        if (!straight || one.piece().kind() == Kind.RIBBONS) {
            return List.of();
        }
        var marks = new ArrayList<Mark>();
        for (int i = 0; i < 3; i++) {
            double grow = 0.02 * i;
            marks.add(new Mark.Area(
                    Outline.rectangle(
                            one.x().decimal() + 0.03 - grow,
                            one.y().decimal() + 0.05 - grow,
                            one.piece().width().decimal() + 2 * grow,
                            one.piece().height().decimal() + 2 * grow),
                    Paint.plain(0x000000),
                    0.1));
        }
        return marks;
    }

    private static List<Mark> moulding(double w, double h) {
        double m = CasePlan.MOULDING;
        double right = w + 2 * m;
        double foot = h + 2 * m;
        int wood = 0x4A2E1A;
        var marks = new ArrayList<Mark>();
        marks.add(side(wood, 0.12, 0, 0, right, 0, right - m, m, m, m));
        marks.add(side(wood, -0.1, right, 0, right, foot, right - m, foot - m, right - m, m));
        marks.add(side(wood, -0.2, right, foot, 0, foot, m, foot - m, right - m, foot - m));
        marks.add(side(wood, 0.05, 0, foot, 0, 0, m, m, m, foot - m));
        for (double at : new double[] {0.22, 0.55}) {
            marks.add(new Mark.Line(
                    Outline.rectangle(at * m, at * m, right - 2 * at * m, foot - 2 * at * m),
                    0x000000,
                    0.03,
                    0.35,
                    Mark.Ends.BUTT,
                    List.of()));
            marks.add(new Mark.Line(
                    Outline.rectangle(
                            at * m + 0.03, at * m + 0.03, right - 2 * at * m - 0.06, foot - 2 * at * m - 0.06),
                    0xFFFFFF,
                    0.015,
                    0.16,
                    Mark.Ends.BUTT,
                    List.of()));
        }
        marks.add(Mark.line(Outline.rectangle(m - 0.06, m - 0.06, w + 0.12, h + 0.12), Metal.GOLD.body(), 0.1));
        marks.add(new Mark.Line(
                Outline.rectangle(m - 0.01, m - 0.01, w + 0.02, h + 0.02),
                0x000000,
                0.02,
                0.6,
                Mark.Ends.BUTT,
                List.of()));
        return marks;
    }

    private static Mark side(int wood, double light, double... corners) {
        return Mark.area(Outline.polygon(corners), Metal.mixed(wood, light > 0 ? 0xFFFFFF : 0x000000, Math.abs(light)));
    }

    /** White board, pieces pale, each with its box, number, corner and hole marks. */
    static Drawing bench(CasePlan plan) {
        return board(plan, CaseDrawing::numberWithPlace, 1);
    }

    /** The same with numbers alone, and all that is not to scale magnified. */
    static Drawing overview(CasePlan plan, double magnified) {
        return board(plan, one -> number(one, 0.09 * magnified), magnified);
    }

    private static Drawing board(CasePlan plan, Function<Placed, List<Mark>> number, double magnified) {
        double hair = 0.01 * magnified;
        double w = plan.wish().width().decimal();
        double h = plan.wish().height().decimal();
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(Outline.rectangle(0, 0, w, h), 0xFFFFFF));
        marks.add(new Mark.Line(
                Outline.through(w / 2, 0, w / 2, h),
                0x9A9A9A,
                0.008,
                1,
                Mark.Ends.BUTT,
                List.of(0.25, 0.06, 0.06, 0.06)));
        for (Placed one : plan.placed()) {
            double x = one.x().decimal();
            double y = one.y().decimal();
            double pw = one.piece().width().decimal();
            double ph = one.piece().height().decimal();
            if (!one.piece().pending()) {
                marks.add(one.piece().drawing().at(x, y));
                marks.add(new Mark.Area(Outline.rectangle(x, y, pw, ph), Paint.plain(0xFFFFFF), 0.62));
            }
            marks.add(new Mark.Line(
                    Outline.rectangle(x, y, pw, ph),
                    INK,
                    hair,
                    1,
                    Mark.Ends.BUTT,
                    one.piece().pending() ? List.of(0.1, 0.07) : List.of()));
            if (one.piece().pending()) {
                marks.add(new Mark.Words(
                        "place kept",
                        x + pw / 2,
                        y + ph / 2 + 0.04,
                        Math.min(0.13 * Math.min(magnified, pw / 0.8), ph * 0.5),
                        Mark.Anchor.MIDDLE,
                        Mark.Face.REGULAR,
                        INK));
            } else {
                marks.addAll(Fastenings.marks(one));
            }
        }
        plan.placed().forEach(one -> marks.addAll(number.apply(one)));
        marks.add(new Mark.Line(
                Outline.rectangle(hair / 2, hair / 2, w - hair, h - hair), INK, hair, 1, Mark.Ends.BUTT, List.of()));
        return new Drawing(w, h, marks);
    }

    /** The number in a ring at the upper left corner, with the place of that corner beside it. */
    private static List<Mark> numberWithPlace(Placed one) {
        double r = 0.13;
        var marks = new ArrayList<>(number(one, r));
        marks.add(new Mark.Words(
                one.x().text() + " , " + one.y().text(),
                one.x().decimal() + r + 0.05,
                one.y().decimal() - 0.04,
                0.1,
                Mark.Anchor.START,
                Mark.Face.REGULAR,
                INK));
        return marks;
    }

    private static List<Mark> number(Placed one, double r) {
        double x = one.x().decimal();
        double y = one.y().decimal();
        return List.of(
                Mark.area(Outline.circle(x, y, r), 0xFFFFFF),
                Mark.line(Outline.circle(x, y, r), INK, r * 0.09),
                new Mark.Words(
                        Integer.toString(one.number()),
                        x,
                        y + r * 0.38,
                        r * 1.08,
                        Mark.Anchor.MIDDLE,
                        Mark.Face.BOLD,
                        INK));
    }
}
