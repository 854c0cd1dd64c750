package org.honorsdue.insignia.medal;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.reference.insignia.RibbonDesign;

/** The pad of the Medal of Honor with its thirteen stars in three chevrons, and the ends of the neck ribbon. */
final class NeckRibbon {
    private static final int WHITE = 0xF8F6EF;

    private NeckRibbon() {}

    static List<Mark> marks(RibbonDesign ribbon, double middle) {
        int blue = ribbon.stripes().get(0).color().srgb();
        double half = ribbon.width().decimal() / 2;
        double foot = MedalDrawing.DRAPE.decimal();
        double pad = foot - 1.0;
        double cut = 0.28;
        var marks = new ArrayList<Mark>();
        for (int side = -1; side <= 1; side += 2) {
            Outline end = Outline.polygon(
                    middle + side * half * 0.15,
                    pad + 0.3,
                    middle + side * half * 0.1,
                    0,
                    middle + side * half,
                    0,
                    middle + side * half * 0.95,
                    pad + 0.3);
            marks.add(Mark.area(end, blue));
            marks.add(new Mark.Area(end, Paint.plain(0x000000), 0.16));
            marks.add(new Mark.Line(end, 0x000000, 0.012, 0.5, Mark.Ends.BUTT, List.of()));
        }
        Outline octagon = Outline.polygon(
                middle - half + cut,
                pad,
                middle + half - cut,
                pad,
                middle + half,
                pad + cut,
                middle + half,
                foot - cut,
                middle + half - cut,
                foot,
                middle - half + cut,
                foot,
                middle - half,
                foot - cut,
                middle - half,
                pad + cut);
        marks.add(Mark.area(octagon, blue));
        marks.add(new Mark.Line(octagon, 0x000000, 0.014, 0.55, Mark.Ends.BUTT, List.of()));
        // Three chevrons of five, five and three stars. How they are spaced is our own.
        for (int row = 0; row < 3; row++) {
            int arm = row < 2 ? 2 : 1;
            for (int i = -arm; i <= arm; i++) {
                double x = middle + i * 0.2;
                double y = pad + 0.24 + row * 0.23 + Math.abs(i) * 0.085;
                marks.add(Mark.area(Outline.star(x, y, 0.075), WHITE));
            }
        }
        return marks;
    }
}
