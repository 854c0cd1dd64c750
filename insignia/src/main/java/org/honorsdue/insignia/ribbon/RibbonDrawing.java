package org.honorsdue.insignia.ribbon;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.RibbonDesign;
import org.honorsdue.reference.insignia.RibbonStripe;

/** Draws one ribbon bar, 1 3/8 x 3/8 inch, or a unit emblem in its gold frame, 1 7/16 x 9/16 inch. */
public final class RibbonDrawing {
    /** Height of a ribbon bar (trade practice, from memory). */
    public static final Inches HEIGHT = Inches.of(3, 8);

    /** A framed emblem over all (Institute of Heraldry description, Presidential Unit Citation, as reproduced). */
    public static final Inches FRAMED_WIDTH = Inches.of(23, 16);

    public static final Inches FRAMED_HEIGHT = Inches.of(9, 16);
    /** Width of the gold frame (same description). */
    public static final Inches FRAME = Inches.of(1, 16);

    private RibbonDrawing() {}

    /** The bar as it is worn, with its devices. */
    public static Drawing of(RibbonDesign design, DeviceRow devices, Finish finish) {
        return design.framed() ? framed(design, devices, finish) : bar(design, devices, finish);
    }

    private static Drawing bar(RibbonDesign design, DeviceRow devices, Finish finish) {
        double width = design.width().decimal();
        double height = HEIGHT.decimal();
        var marks = new ArrayList<Mark>(cloth(design, width, height, finish));
        marks.addAll(devices.marks(height));
        return new Drawing(width, height, marks);
    }

    /** Plain silk for the drape of a medal, without what is worked into the bar. */
    public static List<Mark> cloth(RibbonDesign design, double width, double height) {
        var marks = new ArrayList<Mark>(stripes(design, height));
        marks.addAll(silk(width, height));
        return marks;
    }

    /** The silk itself, with what is worked into it. */
    private static List<Mark> cloth(RibbonDesign design, double width, double height, Finish finish) {
        var marks = new ArrayList<Mark>(stripes(design, height));
        if (finish == Finish.SILK) {
            marks.addAll(silk(width, height));
        }
        marks.addAll(overlay(design, width, height));
        return marks;
    }

    /** Each stripe runs on under the next one, so that no ground shines through between them. */
    public static List<Mark> stripes(RibbonDesign design, double height) {
        var marks = new ArrayList<Mark>();
        double right = design.width().decimal();
        Inches left = Inches.ZERO;
        for (RibbonStripe stripe : design.stripes()) {
            double x = left.decimal();
            Paint paint = stripe.color().isRainbow()
                    ? new Paint.Along(
                            x,
                            0,
                            x + stripe.drawn().decimal(),
                            0,
                            Paint.evenly(stripe.color().stops()))
                    : Paint.plain(stripe.color().srgb());
            marks.add(Mark.area(Outline.rectangle(x, 0, right - x, height), paint));
            left = left.plus(stripe.drawn());
        }
        return marks;
    }

    private static List<Mark> silk(double width, double height) {
        var marks = new ArrayList<Mark>();
        double pitch = 1.0 / 32;
        int ribs = (int) Math.round(height / pitch);
        for (int i = 0; i < ribs; i++) {
            marks.add(new Mark.Area(
                    Outline.rectangle(0, i * pitch + pitch * 0.62, width, pitch * 0.38), Paint.plain(0x000000), 0.09));
        }
        marks.add(new Mark.Area(Outline.rectangle(0, 0, width, height * 0.12), Paint.plain(0xFFFFFF), 0.16));
        marks.add(
                new Mark.Area(Outline.rectangle(0, height * 0.12, width, height * 0.12), Paint.plain(0xFFFFFF), 0.07));
        marks.add(
                new Mark.Area(Outline.rectangle(0, height * 0.86, width, height * 0.14), Paint.plain(0x000000), 0.14));
        return marks;
    }

    private static List<Mark> overlay(RibbonDesign design, double width, double height) {
        double cx = width / 2;
        double cy = height / 2;
        int white = 0xF8F6EF;
        return switch (design.overlay()) {
            case NONE -> List.of();
            case FIVE_STARS -> {
                // The letter M: two stars above, three below. Size and spacing are our own.
                double radius = height * 0.17;
                var marks = new ArrayList<Mark>();
                for (int i = -2; i <= 2; i++) {
                    double y = i % 2 == 0 ? cy + height * 0.17 : cy - height * 0.17;
                    marks.add(DeviceArt.plainStar(cx + i * radius * 1.35, y, radius, white));
                }
                yield marks;
            }
            case THREE_STARS -> {
                double radius = height * 0.165;
                yield List.of(
                        DeviceArt.plainStar(cx, cy - height * 0.2, radius, white),
                        DeviceArt.plainStar(cx - radius * 1.05, cy + height * 0.2, radius, white),
                        DeviceArt.plainStar(cx + radius * 1.05, cy + height * 0.2, radius, white));
            }
        };
    }

    private static Drawing framed(RibbonDesign design, DeviceRow devices, Finish finish) {
        double width = FRAMED_WIDTH.decimal();
        double height = FRAMED_HEIGHT.decimal();
        double frame = FRAME.decimal();
        double ribbon = design.width().decimal();
        Outline window = Outline.rectangle(frame, frame, width - 2 * frame, height - 2 * frame);
        var silk = new ArrayList<Mark>(cloth(design, ribbon, height, finish));
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(Outline.rectangle(0, 0, width, height), Metal.GOLD.shade()));
        marks.add(Mark.within(window, List.of(Mark.group(Placement.at((width - ribbon) / 2, 0), silk))));
        marks.addAll(laurel(width, height, frame));
        marks.addAll(List.of(Mark.group(Placement.at((width - ribbon) / 2, 0), devices.marks(height))));
        return new Drawing(width, height, marks);
    }

    /** A frame of laurel leaves; those of the sides point up, those above and below towards the middle. */
    private static List<Mark> laurel(double width, double height, double frame) {
        Metal gold = Metal.GOLD;
        var places = new ArrayList<Placement>();
        double step = frame * 1.15;
        int across = (int) Math.floor((width / 2 - frame) / step);
        for (int i = 0; i < across; i++) {
            double fromEdge = frame + (i + 0.5) * step;
            for (double y : new double[] {frame / 2, height - frame / 2}) {
                places.add(leafPlace(fromEdge, y, frame, 90));
                places.add(leafPlace(width - fromEdge, y, frame, -90));
            }
        }
        int up = (int) Math.floor((height - 2 * frame) / step);
        double start = (height - up * step) / 2;
        for (int i = 0; i < up; i++) {
            double y = height - start - (i + 0.5) * step;
            places.add(leafPlace(frame / 2, y, frame, 0));
            places.add(leafPlace(width - frame / 2, y, frame, 0));
        }
        Outline left = leaves("M0 45C-8 10 -22 -30 -42 -48C-46 -12 -34 26 0 45Z", places);
        Outline right = leaves("M0 45C8 10 22 -30 42 -48C46 -12 34 26 0 45Z", places);
        Outline inner = Outline.rectangle(frame, frame, width - 2 * frame, height - 2 * frame);
        return List.of(
                Mark.area(Outline.rectangle(0, 0, width, height).and(inner), gold.lit(0, 0, width, height)),
                Mark.area(left, gold.light()),
                Mark.area(right, gold.body()),
                Mark.line(left.and(right), gold.edge(), 0.003),
                Mark.line(inner, gold.edge(), 0.008),
                Mark.line(Outline.rectangle(0.004, 0.004, width - 0.008, height - 0.008), gold.edge(), 0.008));
    }

    /** Where a pair of leaves stands that spreads as a V, pointing up before it is turned. */
    private static Placement leafPlace(double cx, double cy, double frame, double degrees) {
        return Placement.scaled(frame / 100).then(Placement.turned(degrees)).then(Placement.at(cx, cy));
    }

    private static Outline leaves(String leaf, List<Placement> places) {
        Outline one = Outline.path(leaf);
        return places.stream().map(one::placed).reduce(Outline::and).orElseThrow();
    }
}
