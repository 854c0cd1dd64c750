package org.honorsdue.insignia.badge;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Lettering;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;

/** Chevrons of olive drab on dark blue, points up, about 3 1/8 inches wide (size and shades from memory). */
final class ChevronArt {
    private static final int CLOTH = 0x20253A;
    private static final int BAR = 0xA69A66;
    private static final double EDGE = 0.12;
    private static final double THICK = 0.25;
    private static final double PITCH = 0.34;
    private static final double RISE = 0.95;
    private static final double SAG = 0.62;

    private ChevronArt() {}

    static Drawing of(EnlistedGrade grade, double width) {
        double cx = width / 2;
        double side = EDGE + THICK / 2 + 0.05;
        double first = EDGE + THICK * 0.62;
        // A single bar leaves no room for a letter below it, so a sign keeps a space of its own.
        double sign = grade.mark() == EnlistedGrade.Mark.NONE ? 0 : 0.16;
        double arcsFrom = first + RISE + PITCH * (grade.bars() - 1) + PITCH * 0.9 + sign;
        var lines = new ArrayList<Outline>();
        for (int i = 0; i < grade.bars(); i++) {
            double y = first + PITCH * i;
            lines.add(Outline.through(side, y + RISE, cx, y, width - side, y + RISE));
        }
        for (int i = 0; i < grade.arcs(); i++) {
            double y = arcsFrom + PITCH * i;
            double sag = SAG * 4 / 3;
            lines.add(new Outline.Pen()
                    .move(side, y)
                    .curve(width * 0.3, y + sag, width * 0.7, y + sag, width - side, y)
                    .outline());
        }
        double lowest = grade.arcs() > 0
                ? arcsFrom + PITCH * (grade.arcs() - 1) + SAG
                : first + PITCH * (grade.bars() - 1) + RISE;
        double signTop = first + PITCH * (grade.bars() - 1) + THICK * 1.45;
        double signHeight = 0.52;
        if (grade.mark() != EnlistedGrade.Mark.NONE) {
            lowest = Math.max(lowest, signTop + signHeight);
        }
        double height = lowest + THICK / 2 + EDGE;
        var marks = new ArrayList<Mark>();
        double left = side - THICK / 2 - 0.04;
        double right = width - left;
        double shoulder = first + RISE + THICK * 0.3;
        var ground = new Outline.Pen()
                .move(left, shoulder - THICK)
                .line(cx, 0.01)
                .line(right, shoulder - THICK)
                .line(right, Math.max(shoulder, arcsFrom + PITCH * Math.max(0, grade.arcs() - 1)));
        if (grade.arcs() > 0) {
            double y = arcsFrom + PITCH * (grade.arcs() - 1) + THICK / 2 + EDGE / 2;
            ground.line(right, y).curve(width * 0.7, y + SAG * 4 / 3, width * 0.3, y + SAG * 4 / 3, left, y);
        } else {
            double foot = first + PITCH * (grade.bars() - 1) + RISE + THICK * 0.55;
            ground.line(right, foot)
                    .line(cx, Math.max(foot - RISE * 0.55, signTop + signHeight * sign / 0.16 + EDGE))
                    .line(left, foot);
        }
        marks.add(Mark.area(ground.close().outline(), CLOTH));
        for (Outline line : lines) {
            marks.add(Mark.line(line, CLOTH, THICK + 0.12));
        }
        for (Outline line : lines) {
            marks.add(Mark.line(line, BAR, THICK));
        }
        switch (grade.mark()) {
            case LETTER_T -> marks.add(Lettering.line("T", cx, signTop, signHeight, 0.13, BAR));
            case LOZENGE -> {
                double cy = signTop + signHeight / 2;
                marks.add(Mark.line(
                        Outline.polygon(cx, cy - 0.26, cx + 0.34, cy, cx, cy + 0.26, cx - 0.34, cy), BAR, 0.1));
            }
            case NONE -> {}
        }
        return new Drawing(width, height, List.copyOf(marks));
    }
}
