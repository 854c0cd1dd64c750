package org.honorsdue.insignia.medal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.ribbon.Metal;
import org.honorsdue.insignia.ribbon.RibbonDrawing;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.reference.insignia.MedalDesign;
import org.honorsdue.reference.insignia.RibbonDesign;

/** Draws a full-size medal on its drape. */
public final class MedalDrawing {
    /** How much of the drape is seen (trade practice, from memory: 1 3/8 to 1 1/2). */
    public static final Inches DRAPE = Inches.of(3, 2);

    /** Where the drape begins to be folded in, and how wide it is at its foot: our own. */
    private static final double FOLD = 1.08;

    private static final double FOOT = 0.42;
    /** Between drape and pendant. */
    private static final Inches LINK = Inches.of(3, 16);

    private MedalDrawing() {}

    /** Whether the award has a medal that is drawn. */
    public static boolean has(String award, InsigniaTables tables) {
        return tables.medal(award).isPresent()
                && tables.ribbon(award).isPresent()
                && Pendants.of(award).isPresent();
    }

    /** Width over all: the widest of drape, pendant and clasp. */
    public static Inches width(String award, List<WornDevice> worn, InsigniaTables tables) {
        Inches widest = tables.ribbon(award).orElseThrow().width();
        widest = widest.max(tables.medal(award).orElseThrow().width());
        return DrapeDevices.widest(worn, tables).max(widest);
    }

    /** Height from the top of the drape to the foot of the pendant. */
    public static Inches height(String award, InsigniaTables tables) {
        return DRAPE.plus(LINK).plus(tables.medal(award).orElseThrow().height());
    }

    /** The medal with its devices; empty where the award has none or it is not drawn. */
    public static Optional<Drawing> of(String award, List<WornDevice> worn, InsigniaTables tables) {
        if (!has(award, tables)) {
            return Optional.empty();
        }
        RibbonDesign ribbon = tables.ribbon(award).orElseThrow();
        MedalDesign medal = tables.medal(award).orElseThrow();
        Pendant pendant = Pendants.of(award).orElseThrow();
        double width = width(award, worn, tables).decimal();
        double height = height(award, tables).decimal();
        double middle = width / 2;
        var marks = new ArrayList<Mark>();
        double unit = medal.width().decimal() / 100;
        double hangs = DRAPE.plus(LINK).decimal();
        marks.addAll(link(middle, medal));
        marks.add(Mark.group(
                Placement.scaled(unit).then(Placement.at(middle, hangs - pendant.top() * unit)), pendant.marks()));
        if (medal.suspension() == MedalDesign.Suspension.NECK) {
            marks.addAll(NeckRibbon.marks(ribbon, middle));
        } else {
            marks.add(Mark.group(Placement.at(middle - ribbon.width().decimal() / 2, 0), drape(ribbon)));
        }
        marks.add(Mark.group(
                Placement.at(middle - ribbon.width().decimal() / 2, 0),
                DrapeDevices.marks(worn, ribbon.width(), tables)));
        return Optional.of(new Drawing(width, height, marks));
    }

    /** The ribbon a medal hangs from, folded to a narrow foot. */
    private static List<Mark> drape(RibbonDesign ribbon) {
        double width = ribbon.width().decimal();
        double height = DRAPE.decimal();
        double left = (width - FOOT) / 2;
        Outline shape = Outline.polygon(0, 0, width, 0, width, FOLD, width - left, height, left, height, 0, FOLD);
        var cloth = new ArrayList<Mark>(RibbonDrawing.cloth(ribbon, width, height));
        // The folds turn away from the light.
        cloth.add(new Mark.Area(Outline.polygon(0, FOLD - 0.1, left, height, 0, height), Paint.plain(0x000000), 0.22));
        cloth.add(new Mark.Area(
                Outline.polygon(width, FOLD - 0.1, width - left, height, width, height), Paint.plain(0x000000), 0.3));
        return List.of(
                Mark.within(shape, cloth), new Mark.Line(shape, 0x000000, 0.012, 0.5, Mark.Ends.BUTT, List.of()));
    }

    private static List<Mark> link(double middle, MedalDesign medal) {
        Metal metal = medal.metal().equals("gold") ? Metal.GOLD : Metal.OLD_BRONZE;
        double drape = DRAPE.decimal();
        double link = LINK.decimal();
        return switch (medal.suspension()) {
            case RING, NECK -> outlined(Outline.circle(middle, drape + link * 0.42, link * 0.58), metal, 0.035);
            case LOOP -> outlined(Outline.rounded(middle - 0.2, drape - 0.06, 0.4, link + 0.1, 0.05), metal, 0.045);
            case BAR -> {
                var marks = new ArrayList<Mark>(
                        outlined(Outline.rounded(middle - 0.3, drape - 0.05, 0.6, 0.12, 0.03), metal, 0.05));
                marks.addAll(outlined(Outline.through(middle, drape + 0.06, middle, drape + link + 0.03), metal, 0.06));
                yield marks;
            }
        };
    }

    private static List<Mark> outlined(Outline outline, Metal metal, double width) {
        return List.of(Mark.line(outline, metal.edge(), width + 0.016), Mark.line(outline, metal.body(), width));
    }
}
