package org.honorsdue.insignia.ribbon;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.ribbon.RibbonRack.Worn;

/** Draws a rack: the groups of both breasts side by side, ribbons of a row touching. */
final class RackDrawing {
    private static final double MARGIN = 0.125;
    private static final double BETWEEN_BREASTS = 0.75;
    private static final double CAPTION = 0.12;
    private static final int INK = 0x3A3630;

    private RackDrawing() {}

    static Drawing of(RibbonRack rack) {
        if (rack.isEmpty()) {
            return new Drawing(
                    3,
                    0.625,
                    List.of(new Mark.Words(
                            "No ribbon is authorized by the findings.",
                            1.5,
                            0.35,
                            0.14,
                            Mark.Anchor.MIDDLE,
                            Mark.Face.REGULAR,
                            INK)));
        }
        RackStyle style = rack.style();
        Drawing left = group(rack.leftBreast(), style);
        Drawing right = group(rack.rightBreast(), style);
        boolean both = !rack.leftBreast().isEmpty() && !rack.rightBreast().isEmpty();
        double leftWidth = rack.leftBreast().isEmpty() ? 0 : left.width();
        double rightWidth = rack.rightBreast().isEmpty() ? 0 : right.width();
        double tallest = Math.max(
                rack.leftBreast().isEmpty() ? 0 : left.height(),
                rack.rightBreast().isEmpty() ? 0 : right.height());
        double width = 2 * MARGIN + leftWidth + rightWidth + (both ? BETWEEN_BREASTS : 0);
        double height = 2 * MARGIN + tallest + (style.captions() ? CAPTION * 1.9 : 0);
        var marks = new ArrayList<Mark>();
        double foot = MARGIN + tallest;
        double x = MARGIN;
        if (!rack.rightBreast().isEmpty()) {
            marks.add(right.at(x, foot - right.height()));
            caption(marks, style, "wearer's right breast", x + rightWidth / 2, foot);
            x += rightWidth + (both ? BETWEEN_BREASTS : 0);
        }
        if (!rack.leftBreast().isEmpty()) {
            marks.add(left.at(x, foot - left.height()));
            caption(marks, style, "wearer's left breast", x + leftWidth / 2, foot);
        }
        return new Drawing(width, height, marks);
    }

    private static void caption(List<Mark> marks, RackStyle style, String words, double x, double foot) {
        if (style.captions()) {
            marks.add(new Mark.Words(
                    words, x, foot + CAPTION * 1.5, CAPTION, Mark.Anchor.MIDDLE, Mark.Face.REGULAR, INK));
        }
    }

    /** The rows of one breast, without margins; a small empty sheet when there are none. */
    static Drawing group(List<List<Worn>> rows, RackStyle style) {
        double gap = style.rowGap().decimal();
        double width = 0;
        double height = 0;
        for (List<Worn> row : rows) {
            width = Math.max(width, rowWidth(row));
            height += rowHeight(row) + (height > 0 ? gap : 0);
        }
        if (rows.isEmpty()) {
            return new Drawing(0.01, 0.01, List.of());
        }
        var marks = new ArrayList<Mark>();
        double y = 0;
        for (List<Worn> row : rows) {
            double x = style.topRow() == RackStyle.TopRow.CENTERED ? (width - rowWidth(row)) / 2 : 0;
            for (Worn worn : row) {
                Drawing ribbon = ribbon(worn, style);
                marks.add(ribbon.at(x, y));
                x += ribbon.width();
            }
            y += rowHeight(row) + gap;
        }
        marks.addAll(seams(rows, style, width));
        return new Drawing(width, height, marks);
    }

    /** A hair of shade where two bars meet, so that like colours do not run together. */
    private static List<Mark> seams(List<List<Worn>> rows, RackStyle style, double width) {
        var marks = new ArrayList<Mark>();
        double gap = style.rowGap().decimal();
        double y = 0;
        for (List<Worn> row : rows) {
            double rowWidth = rowWidth(row);
            double x = style.topRow() == RackStyle.TopRow.CENTERED ? (width - rowWidth) / 2 : 0;
            double height = rowHeight(row);
            marks.add(seam(Outline.rectangle(x, y, rowWidth, height)));
            for (int i = 1; i < row.size(); i++) {
                x += width(row.get(i - 1));
                marks.add(seam(Outline.through(x, y, x, y + height)));
            }
            y += height + gap;
        }
        return marks;
    }

    private static Mark seam(Outline outline) {
        return new Mark.Line(outline, 0x000000, 0.012, 0.45, Mark.Ends.BUTT, List.of());
    }

    private static Drawing ribbon(Worn worn, RackStyle style) {
        return worn.isPlaceKept() ? place(worn) : RibbonDrawing.of(worn.design(), worn.devices(), style.finish());
    }

    /** An empty place with a dashed edge and a question mark. */
    private static Drawing place(Worn worn) {
        double width = width(worn);
        double height = height(worn);
        return new Drawing(
                width,
                height,
                List.of(
                        new Mark.Area(Outline.rectangle(0, 0, width, height), Paint.plain(0xF3EFE6), 1),
                        new Mark.Line(
                                Outline.rectangle(0.03, 0.03, width - 0.06, height - 0.06),
                                0x7A746A,
                                0.012,
                                1,
                                Mark.Ends.BUTT,
                                List.of(0.06, 0.04)),
                        new Mark.Words(
                                "?",
                                width / 2,
                                height / 2 + 0.075,
                                0.22,
                                Mark.Anchor.MIDDLE,
                                Mark.Face.BOLD,
                                0x7A746A)));
    }

    private static double rowWidth(List<Worn> row) {
        return row.stream().mapToDouble(RackDrawing::width).sum();
    }

    private static double rowHeight(List<Worn> row) {
        return row.stream().mapToDouble(RackDrawing::height).max().orElse(0);
    }

    static double width(Worn worn) {
        return worn.design().framed()
                ? RibbonDrawing.FRAMED_WIDTH.decimal()
                : worn.design().width().decimal();
    }

    static double height(Worn worn) {
        return worn.design().framed() ? RibbonDrawing.FRAMED_HEIGHT.decimal() : RibbonDrawing.HEIGHT.decimal();
    }
}
