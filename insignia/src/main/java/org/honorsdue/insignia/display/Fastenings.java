package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Placement;

/**
 * Where the board is pierced or a stitch goes, all by thread or pins that can be undone. Positions are our own; an
 * original is measured before the board is touched.
 */
public final class Fastenings {
    private static final int MARK = 0xB0202F;
    private static final double STITCH = 0.5;

    private Fastenings() {}

    /**
     * One point.
     *
     * @param x in the opening, inches
     */
    public record Point(double x, double y, Sort sort) {}

    /** What is done there. */
    public enum Sort {
        /** Bored through the board. */
        HOLE,
        /** A stitch through the board. */
        STITCH,
        /** A corner of clear strip or paper. */
        CORNER
    }

    /** The points of a piece. */
    public static List<Point> of(Placed one) {
        double x = one.x().decimal();
        double y = one.y().decimal();
        double w = one.piece().width().decimal();
        double h = one.piece().height().decimal();
        double cx = x + w / 2;
        var points = new ArrayList<Point>();
        switch (one.piece().kind()) {
            case MEDAL -> {
                points.add(new Point(cx - 0.4375, y + 0.125, Sort.HOLE));
                points.add(new Point(cx + 0.4375, y + 0.125, Sort.HOLE));
            }
            case RIBBONS, UNIT_EMBLEMS -> {
                double rows = Math.max(1, Math.round(h / 0.4375));
                for (int row = 0; row < rows; row++) {
                    double at = y + h * (row + 0.5) / rows;
                    points.add(new Point(cx - w / 4, at, Sort.HOLE));
                    points.add(new Point(cx + w / 4, at, Sort.HOLE));
                }
            }
            case BADGE, QUALIFICATION, NAMEPLATE -> {
                double at = one.piece().kind() == Kind.QUALIFICATION ? y + Math.min(h, w) / 2 : y + h / 2;
                double out = one.piece().kind() == Kind.NAMEPLATE ? w / 2 - 0.16 : w / 4;
                points.add(new Point(cx - out, at, Sort.HOLE));
                points.add(new Point(cx + out, at, Sort.HOLE));
            }
            case SMALL -> points.add(new Point(cx, y + h / 2, Sort.HOLE));
            case PATCH, SLEEVE_BARS -> edge(points, x + 0.0625, y + 0.0625, w - 0.125, h - 0.125);
            case PHOTOGRAPH, PAPER -> {
                for (double px : new double[] {x, x + w}) {
                    for (double py : new double[] {y, y + h}) {
                        points.add(new Point(px, py, Sort.CORNER));
                    }
                }
            }
            case DOG_TAGS, CORD -> {
                points.add(new Point(cx - w / 4, y + 0.25, Sort.STITCH));
                points.add(new Point(cx + w / 4, y + 0.25, Sort.STITCH));
                points.add(new Point(cx, y + h - 0.25, Sort.STITCH));
            }
            case FLAG -> {
                points.add(new Point(x + w * 0.1, y + h, Sort.CORNER));
                points.add(new Point(x + w * 0.9, y + h, Sort.CORNER));
            }
        }
        return points;
    }

    private static void edge(List<Point> points, double x, double y, double w, double h) {
        int across = Math.max(1, (int) Math.round(w / STITCH));
        int down = Math.max(1, (int) Math.round(h / STITCH));
        for (int i = 0; i <= across; i++) {
            points.add(new Point(x + w * i / across, y, Sort.STITCH));
            points.add(new Point(x + w * i / across, y + h, Sort.STITCH));
        }
        for (int i = 1; i < down; i++) {
            points.add(new Point(x, y + h * i / down, Sort.STITCH));
            points.add(new Point(x + w, y + h * i / down, Sort.STITCH));
        }
    }

    /** A cross in a ring for a hole, a short bar for a stitch, an angle for a corner. */
    static List<Mark> marks(Placed one) {
        var marks = new ArrayList<Mark>();
        double cx = one.box().middle().decimal();
        double cy = one.y().decimal() + one.piece().height().decimal() / 2;
        for (Point point : of(one)) {
            switch (point.sort()) {
                case HOLE -> {
                    marks.add(Mark.line(Outline.circle(point.x(), point.y(), 0.045), MARK, 0.01));
                    marks.add(Mark.line(
                            Outline.path("M-0.08 0H0.08M0 -0.08V0.08").placed(Placement.at(point.x(), point.y())),
                            MARK,
                            0.008));
                }
                case STITCH ->
                    marks.add(Mark.line(
                            Outline.path("M-0.04 -0.04L0.04 0.04M0.04 -0.04L-0.04 0.04")
                                    .placed(Placement.at(point.x(), point.y())),
                            MARK,
                            0.01));
                case CORNER ->
                    marks.add(Mark.line(
                            Outline.path("M0.3 0H0V0.3")
                                    .placed(Placement.scaled(point.x() < cx ? 1 : -1, point.y() < cy ? 1 : -1)
                                            .then(Placement.at(point.x(), point.y()))),
                            MARK,
                            0.016));
            }
        }
        return marks;
    }
}
