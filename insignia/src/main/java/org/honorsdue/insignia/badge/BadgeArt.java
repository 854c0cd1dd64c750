package org.honorsdue.insignia.badge;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Lettering;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.ribbon.Metal;

/** Sketches of badges, each filling a width and height in inches. */
final class BadgeArt {
    private static final int INFANTRY_BLUE = 0x4F86C0;
    private static final int CLOTH = 0x5C5534;

    private BadgeArt() {}

    /** Blue bar with a flintlock musket; for combat an oak wreath behind. Which way the musket points is from memory. */
    static Drawing infantryman(double width, double height, boolean combat) {
        double bar = 7.0 / 16;
        double cy = height / 2;
        double cx = width / 2;
        var silver = new Silver(Metal.SILVER);
        if (combat) {
            silver.oakWreath(cx, cy, 0.6, 0.37, 0.24, 14, 162, 8);
            silver.ridge(
                    Outline.path("M-0.1 -0.03L0.1 0.03M0.1 -0.03L-0.1 0.03").placed(Placement.at(cx, height - 0.07)),
                    0.03);
        }
        Outline outer = Outline.rounded(0.006, cy - bar / 2 + 0.006, width - 0.012, bar - 0.012, 0.05);
        silver.part(outer, cy - bar / 2, cy + bar / 2);
        Outline field = Outline.rounded(0.06, cy - bar / 2 + 0.055, width - 0.12, bar - 0.11, 0.02);
        silver.add(Mark.area(
                field,
                new Paint.Along(
                        0,
                        cy - bar / 2,
                        0,
                        cy + bar / 2,
                        List.of(
                                new Paint.Stop(0, Metal.mixed(INFANTRY_BLUE, 0xFFFFFF, 0.18)),
                                new Paint.Stop(1, Metal.mixed(INFANTRY_BLUE, 0x000000, 0.12))))));
        silver.cut(field, 0.01);
        silver.marks().addAll(musket(cx, cy, width * 0.88));
        return new Drawing(width, height, silver.marks());
    }

    private static List<Mark> musket(double cx, double cy, double length) {
        Placement place = Placement.scaled(length / 264).then(Placement.at(cx, cy));
        var silver = new Silver(Metal.SILVER);
        // Stock, with the butt to the viewer's left.
        silver.part(
                Outline.path(
                                "M-132 -3C-112 -7 -92 -9 -78 -7L-58 -6H70V3H-48C-60 4 -72 5 -84 9C-100 13 -118 15 -131 14Z")
                        .placed(place),
                cy - 0.08,
                cy + 0.14);
        silver.part(Outline.path("M-58 -8H132V-4.5H-58Z").placed(place), cy - 0.08, cy - 0.02);
        silver.cut(Outline.path("M-20 -8V3M16 -8V3M56 -8V3").placed(place), 0.02);
        silver.ridge(Outline.path("M-74 5C-74 12 -58 12 -56 4").placed(place), 0.014);
        silver.part(
                Outline.path("M-66 -7C-70 -13 -66 -17 -60 -17L-58 -14C-62 -14 -62 -11 -58 -7Z")
                        .placed(place),
                cy - 0.16,
                cy);
        silver.part(Outline.path("M-50 -8L-46 -16H-43L-44 -8Z").placed(place), cy - 0.16, cy);
        silver.cut(Outline.path("M72 4H124").placed(place), 0.012);
        return silver.marks();
    }

    /** Litter crosswise, a caduceus upright on it with a cross at the top, on an oak wreath. */
    static Drawing medical(double width, double height) {
        double cx = width / 2;
        double cy = height / 2;
        var silver = new Silver(Metal.SILVER);
        silver.oakWreath(cx, cy, 0.53, 0.36, 0.22, 12, 164, 8);
        silver.part(Outline.rounded(0.02, cy - 0.15, width - 0.04, 0.055, 0.02), cy - 0.15, cy - 0.09);
        silver.part(Outline.rounded(0.02, cy + 0.1, width - 0.04, 0.055, 0.02), cy + 0.1, cy + 0.15);
        silver.part(Outline.rectangle(0.2, cy - 0.11, width - 0.4, 0.22), cy - 0.1, cy + 0.1);
        silver.cut(Outline.through(0.32, cy - 0.11, 0.32, cy + 0.11), 0.014);
        silver.cut(Outline.through(width - 0.32, cy - 0.11, width - 0.32, cy + 0.11), 0.014);
        Placement place = Placement.at(cx, cy);
        silver.part(Outline.path("M-0.03 -0.33H0.03V0.46H-0.03Z").placed(place), cy - 0.3, cy + 0.46);
        silver.ridge(
                Outline.path("M0 -0.2C0.2 -0.16 0.18 0 0 0.02C-0.16 0.05 -0.15 0.18 0 0.2C0.12 0.22 0.12 0.32 0 0.36")
                        .placed(place),
                0.032);
        silver.ridge(
                Outline.path("M0 -0.2C-0.2 -0.16 -0.18 0 0 0.02C0.16 0.05 0.15 0.18 0 0.2C-0.12 0.22 -0.12 0.32 0 0.36")
                        .placed(place),
                0.032);
        for (int side = -1; side <= 1; side += 2) {
            silver.part(
                    Outline.path(
                                    "M0 -0.2C0.1 -0.3 0.24 -0.32 0.34 -0.28C0.28 -0.24 0.26 -0.2 0.2 -0.19C0.14 -0.16 0.06 -0.16 0 -0.17Z")
                            .placed(Placement.scaled(side, 1).then(place)),
                    cy - 0.32,
                    cy - 0.15);
        }
        silver.part(
                Outline.path("M-0.045 -0.49H0.045V-0.435H0.1V-0.345H0.045V-0.29H-0.045V-0.345H-0.1V-0.435H-0.045Z")
                        .placed(place),
                cy - 0.49,
                cy - 0.29);
        return new Drawing(width, height, silver.marks());
    }

    /** Open parachute between wings that curve up and in. */
    static Drawing parachutist(double width, double height, int stars) {
        double cx = width / 2;
        var silver = new Silver(Metal.SILVER);
        for (int side = -1; side <= 1; side += 2) {
            Placement place = Placement.scaled(side, 1).then(Placement.at(cx, 0));
            double[] tops = {0.06, 0.3, 0.5, 0.68};
            for (int i = 0; i < tops.length; i++) {
                double out = 0.72 - 0.12 * i;
                double top = tops[i] * height;
                Outline feather = new Outline.Pen()
                        .move(0.02, height * 0.99 - 0.05 * i)
                        .curve(
                                0.34 - 0.03 * i,
                                height * 0.97 - 0.05 * i,
                                out,
                                height * 0.86 - 0.04 * i,
                                out,
                                height * 0.6 - 0.03 * i)
                        .curve(out + 0.01, top + 0.24, out - 0.06, top + 0.1, out - 0.24 + 0.04 * i, top)
                        .curve(out - 0.13, top + 0.16, out - 0.14, top + 0.34, out - 0.18, height * 0.66 - 0.02 * i)
                        .curve(
                                0.42 - 0.05 * i,
                                height * 0.82 - 0.04 * i,
                                0.2,
                                height * 0.88 - 0.05 * i,
                                0.02,
                                height * 0.88 - 0.05 * i)
                        .close()
                        .outline()
                        .placed(place);
                silver.part(feather, 0, height);
            }
        }
        double canopyTop = 0.04;
        double canopyFoot = height * 0.46;
        Outline canopy = new Outline.Pen()
                .move(cx - 0.4, canopyFoot)
                .curve(cx - 0.42, canopyTop + 0.06, cx - 0.2, canopyTop, cx, canopyTop)
                .curve(cx + 0.2, canopyTop, cx + 0.42, canopyTop + 0.06, cx + 0.4, canopyFoot)
                .curve(cx + 0.33, canopyFoot - 0.07, cx + 0.24, canopyFoot - 0.05, cx + 0.2, canopyFoot + 0.01)
                .curve(cx + 0.13, canopyFoot - 0.05, cx + 0.06, canopyFoot - 0.05, cx, canopyFoot + 0.02)
                .curve(cx - 0.06, canopyFoot - 0.05, cx - 0.13, canopyFoot - 0.05, cx - 0.2, canopyFoot + 0.01)
                .curve(cx - 0.24, canopyFoot - 0.05, cx - 0.33, canopyFoot - 0.07, cx - 0.4, canopyFoot)
                .close()
                .outline();
        silver.part(canopy, canopyTop, canopyFoot);
        silver.cut(
                new Outline.Pen()
                        .move(cx - 0.2, canopyFoot)
                        .curve(cx - 0.18, canopyTop + 0.16, cx - 0.08, canopyTop + 0.03, cx, canopyTop)
                        .curve(cx + 0.08, canopyTop + 0.03, cx + 0.18, canopyTop + 0.16, cx + 0.2, canopyFoot)
                        .move(cx, canopyTop)
                        .line(cx, canopyFoot)
                        .outline(),
                0.012);
        double knot = height * 0.86;
        for (double x : new double[] {-0.39, -0.2, 0, 0.2, 0.39}) {
            silver.ridge(Outline.through(cx + x, canopyFoot, cx + x * 0.1, knot), 0.014);
        }
        for (int i = 0; i < stars; i++) {
            double x = cx + (i - (stars - 1) / 2.0) * 0.22;
            double y = i == 0 && stars == 1 ? height * 0.66 : height * 0.7;
            silver.add(Mark.area(Outline.star(x, y, 3.0 / 32), Metal.BRONZE.edge()));
            silver.add(Mark.area(Outline.star(x, y, 3.0 / 32 - 0.016), Metal.BRONZE.light()));
        }
        return new Drawing(width, height, silver.marks());
    }

    /** Glider head-on between wings that curve up and in. */
    static Drawing glider(double width, double height) {
        double cx = width / 2;
        var silver = new Silver(Metal.SILVER);
        for (int side = -1; side <= 1; side += 2) {
            Placement place = Placement.scaled(side, 1).then(Placement.at(cx, 0));
            for (int i = 0; i < 3; i++) {
                double out = 0.735 - 0.1 * i;
                Outline feather = new Outline.Pen()
                        .move(0.02, height - 0.02 - 0.04 * i)
                        .curve(
                                0.4 - 0.04 * i,
                                height - 0.02 - 0.05 * i,
                                out,
                                height * 0.9 - 0.05 * i,
                                out,
                                height * 0.5)
                        .curve(out, height * 0.24 + 0.08 * i, out - 0.06, 0.08 + 0.1 * i, out - 0.2, 0.02 + 0.12 * i)
                        .curve(out - 0.1, 0.2 + 0.1 * i, out - 0.13, height * 0.62, 0.3, height * 0.8 - 0.03 * i)
                        .curve(0.2, height * 0.84, 0.1, height * 0.86, 0.02, height * 0.84 - 0.04 * i)
                        .close()
                        .outline()
                        .placed(place);
                silver.part(feather, 0, height);
            }
        }
        silver.part(
                Outline.path("M-0.66 0.2H0.66V0.26L0.14 0.3H-0.14L-0.66 0.26Z").placed(Placement.at(cx, 0)), 0.2, 0.3);
        silver.part(Outline.rounded(cx - 0.14, 0.16, 0.28, 0.36, 0.06), 0.16, 0.52);
        silver.cut(Outline.path("M-0.1 0.23H0.1V0.33H-0.1ZM0 0.23V0.33").placed(Placement.at(cx, 0)), 0.014);
        silver.part(Outline.circle(cx - 0.11, 0.54, 0.035), 0.5, 0.58);
        silver.part(Outline.circle(cx + 0.11, 0.54, 0.035), 0.5, 0.58);
        return new Drawing(width, height, silver.marks());
    }

    /** Wings with a device between them that tells the rating. */
    static Drawing aviation(double width, double height, AviationRating rating) {
        double cx = width / 2;
        double cy = height * 0.56;
        var silver = new Silver(Metal.SILVER);
        silver.wings(cx, cy, height * 0.16, width / 2 - 0.03, height * 0.46, height * 0.26, 5);
        Placement place = Placement.scaled(height).then(Placement.at(cx, cy));
        switch (rating) {
            case PILOT -> shield(silver, place, cy, height);
            case SENIOR_PILOT -> {
                shield(silver, place, cy, height);
                silver.part(Outline.star(cx, height * 0.09, height * 0.11), 0, height * 0.2);
            }
            case COMMAND_PILOT -> {
                shield(silver, place, cy, height);
                silver.part(Outline.star(cx, height * 0.1, height * 0.08), 0, height * 0.2);
                silver.ridge(Outline.arc(cx, height * 0.1, height * 0.1, 40, 320), 0.02);
            }
            case SERVICE_PILOT, LIAISON_PILOT, GLIDER_PILOT -> {
                shield(silver, place, cy, height);
                String letter = rating == AviationRating.SERVICE_PILOT
                        ? "S"
                        : rating == AviationRating.LIAISON_PILOT ? "L" : "G";
                silver.add(Mark.area(
                        Outline.rectangle(cx - height * 0.13, cy - height * 0.2, height * 0.26, height * 0.38),
                        Metal.SILVER.light()));
                silver.add(Lettering.line(
                        letter, cx, cy - height * 0.17, height * 0.32, height * 0.06, Metal.SILVER.edge()));
            }
            case NAVIGATOR -> {
                silver.ridge(Outline.circle(cx, cy - height * 0.04, height * 0.17), height * 0.06);
                silver.ridge(Outline.ellipse(cx, cy - height * 0.04, height * 0.07, height * 0.17), 0.02);
                silver.ridge(
                        Outline.through(cx - height * 0.2, cy - height * 0.04, cx + height * 0.2, cy - height * 0.04),
                        0.02);
            }
            case BOMBARDIER -> {
                silver.part(Outline.circle(cx, cy - height * 0.04, height * 0.22), cy - 0.2, cy + 0.2);
                silver.cut(Outline.circle(cx, cy - height * 0.04, height * 0.16), 0.014);
                silver.part(
                        Outline.path(
                                        "M0 0.13C-0.07 0.06 -0.07 -0.08 -0.03 -0.14L-0.07 -0.22H0.07L0.03 -0.14C0.07 -0.08 0.07 0.06 0 0.13Z")
                                .placed(place),
                        cy - 0.2,
                        cy + 0.12);
            }
            case AIR_CREW -> {
                silver.part(Outline.circle(cx, cy - height * 0.04, height * 0.22), cy - 0.2, cy + 0.2);
                silver.cut(Outline.circle(cx, cy - height * 0.04, height * 0.16), 0.014);
                silver.part(
                        Outline.path(
                                        "M0 0.16C-0.06 0.1 -0.12 0.02 -0.12 -0.08L-0.08 -0.18H0.08L0.12 -0.08C0.12 0.02 0.06 0.1 0 0.16Z")
                                .placed(place),
                        cy - 0.2,
                        cy + 0.12);
            }
            case AERIAL_GUNNER -> {
                silver.part(Outline.circle(cx, cy - height * 0.04, height * 0.22), cy - 0.2, cy + 0.2);
                silver.cut(Outline.circle(cx, cy - height * 0.04, height * 0.16), 0.014);
                silver.part(
                        Outline.path(
                                        "M0 -0.22C0.05 -0.16 0.05 -0.1 0.05 0.04H0.07V0.1H-0.07V0.04H-0.05C-0.05 -0.1 -0.05 -0.16 0 -0.22Z")
                                .placed(place),
                        cy - 0.2,
                        cy + 0.12);
                for (int side = -1; side <= 1; side += 2) {
                    silver.part(
                            Outline.path("M0.04 0C0.14 -0.04 0.2 -0.12 0.22 -0.2C0.24 -0.08 0.18 0.04 0.06 0.08Z")
                                    .placed(Placement.scaled(side, 1).then(place)),
                            cy - 0.2,
                            cy + 0.1);
                }
            }
            case OBSERVER -> {
                silver.ridge(Outline.circle(cx, cy - height * 0.04, height * 0.18), height * 0.07);
                silver.part(Outline.circle(cx, cy - height * 0.04, height * 0.09), cy - 0.1, cy + 0.1);
            }
            case FLIGHT_ENGINEER -> {
                silver.part(Outline.circle(cx, cy - height * 0.04, height * 0.2), cy - 0.2, cy + 0.2);
                for (int i = 0; i < 4; i++) {
                    silver.part(
                            Outline.path("M-0.03 -0.02C-0.07 -0.08 -0.05 -0.2 0 -0.22C0.05 -0.2 0.05 -0.08 0.03 -0.02Z")
                                    .placed(Placement.turned(90.0 * i)
                                            .then(Placement.at(0, -0.04))
                                            .then(place)),
                            cy - 0.2,
                            cy + 0.2);
                }
            }
            case FLIGHT_SURGEON, FLIGHT_NURSE -> {
                silver.part(Outline.ellipse(cx, cy - height * 0.03, height * 0.17, height * 0.22), cy - 0.2, cy + 0.2);
                silver.ridge(
                        Outline.path(
                                        "M0 -0.16V0.14M0 -0.1C0.12 -0.08 0.1 0 0 0.01C-0.1 0.03 -0.08 0.1 0 0.11M0 -0.1C-0.12 -0.08 -0.1 0 0 0.01C0.1 0.03 0.08 0.1 0 0.11")
                                .placed(place),
                        0.016);
            }
        }
        return new Drawing(width, height, silver.marks());
    }

    private static void shield(Silver silver, Placement place, double cy, double height) {
        silver.part(
                Outline.path(
                                "M-0.17 -0.26C-0.08 -0.3 -0.06 -0.26 0 -0.28C0.06 -0.26 0.08 -0.3 0.17 -0.26C0.2 -0.08 0.16 0.12 0 0.24C-0.16"
                                        + " 0.12 -0.2 -0.08 -0.17 -0.26Z")
                        .placed(place),
                cy - height * 0.3,
                cy + height * 0.24);
        silver.cut(Outline.path("M-0.18 -0.13H0.18").placed(place), 0.016);
        silver.cut(
                Outline.path("M-0.12 -0.13V0.1M-0.06 -0.13V0.17M0 -0.13V0.22M0.06 -0.13V0.17M0.12 -0.13V0.1")
                        .placed(place),
                0.014);
    }

    /** A cross; a wreath for expert, a target for sharpshooter, plain for marksman; bars hang below. */
    static Drawing marksmanship(
            double size, double barWidth, double barHeight, MarksmanshipClass level, List<String> bars) {
        double gap = 1.0 / 16;
        double width = Math.max(size, bars.isEmpty() ? 0 : barWidth);
        double height = size + bars.size() * (barHeight + gap);
        double cx = width / 2;
        double cy = size / 2;
        Metal metal = Metal.SILVER;
        var silver = new Silver(metal);
        double hang = size;
        for (String bar : bars) {
            for (double x : new double[] {cx - barWidth * 0.36, cx + barWidth * 0.36}) {
                silver.ridge(Outline.ellipse(x, hang + gap / 2, 0.035, gap * 0.75), 0.02);
            }
            hang += gap;
            silver.part(
                    Outline.rounded(cx - barWidth / 2 + 0.006, hang + 0.006, barWidth - 0.012, barHeight - 0.012, 0.02),
                    hang,
                    hang + barHeight);
            silver.cut(
                    Outline.rectangle(cx - barWidth / 2 + 0.035, hang + 0.035, barWidth - 0.07, barHeight - 0.07),
                    0.01);
            double letters = barHeight * 0.42;
            double natural = Lettering.width(bar, letters, letters * 0.17);
            double room = barWidth - 0.16;
            silver.add(Lettering.fitted(
                    bar,
                    cx,
                    hang + (barHeight - letters) / 2,
                    Math.min(natural, room),
                    letters,
                    letters * 0.17,
                    metal.edge()));
            hang += barHeight;
        }
        if (level == MarksmanshipClass.EXPERT) {
            silver.oakWreath(cx, cy, size * 0.33, size * 0.33, size * 0.2, 6, 172, 9);
        }
        Placement place = Placement.scaled(size / 100).then(Placement.at(cx, cy));
        for (int i = 0; i < 4; i++) {
            silver.part(
                    Outline.path("M-8 -8L-22 -49C-8 -44 8 -44 22 -49L8 -8Z")
                            .placed(Placement.turned(90.0 * i).then(place)),
                    cy - size / 2,
                    cy + size / 2);
            silver.cut(
                    Outline.path("M-7 -14L-17 -43C-6 -39 6 -39 17 -43L7 -14")
                            .placed(Placement.turned(90.0 * i).then(place)),
                    0.01);
        }
        silver.part(Outline.circle(cx, cy, size * 0.12), cy - size * 0.12, cy + size * 0.12);
        if (level != MarksmanshipClass.MARKSMAN) {
            silver.part(Outline.circle(cx, cy, size * 0.16), cy - size * 0.16, cy + size * 0.16);
            silver.cut(Outline.circle(cx, cy, size * 0.11), 0.02);
            silver.add(Mark.area(Outline.circle(cx, cy, size * 0.055), metal.edge()));
        }
        return new Drawing(width, height, silver.marks());
    }

    /** A cross with a wheel. */
    static Drawing driver(double width, double height) {
        double cx = width / 2;
        double cy = height / 2;
        var silver = new Silver(Metal.SILVER);
        Placement place = Placement.scaled(width / 100).then(Placement.at(cx, cy));
        for (int i = 0; i < 4; i++) {
            silver.part(
                    Outline.path("M-8 -8L-20 -49H20L8 -8Z")
                            .placed(Placement.turned(90.0 * i).then(place)),
                    0,
                    height);
        }
        silver.part(Outline.circle(cx, cy, width * 0.26), cy - 0.26, cy + 0.26);
        silver.cut(Outline.circle(cx, cy, width * 0.2), 0.03);
        for (int i = 0; i < 4; i++) {
            silver.cut(
                    Outline.path("M0 -20V20").placed(Placement.turned(45.0 * i).then(place)), 0.02);
        }
        silver.part(Outline.circle(cx, cy, width * 0.06), cy - 0.06, cy + 0.06);
        return new Drawing(width, height, silver.marks());
    }

    /** Gold eagle with raised wings breaking out of a ring. */
    static Drawing lapelEagle(double width, double height) {
        double cx = width / 2;
        double cy = height * 0.58;
        var gold = new Silver(Metal.GOLD);
        gold.ridge(Outline.circle(cx, cy, width * 0.4), width * 0.1);
        gold.marks().addAll(eagle(cx, height * 0.5, height * 0.98, width));
        return new Drawing(width, height, gold.marks());
    }

    /** The same on a cloth diamond. */
    static Drawing dischargeEmblem(double width, double height) {
        var gold = new Silver(Metal.GOLD);
        Outline diamond =
                Outline.polygon(0.01, height / 2, width / 2, 0.01, width - 0.01, height / 2, width / 2, height - 0.01);
        gold.add(Mark.area(diamond, CLOTH));
        gold.add(new Mark.Line(diamond, 0x2B2716, 0.03, 0.8, Mark.Ends.BUTT, List.of()));
        gold.ridge(Outline.circle(width / 2, height * 0.53, height * 0.29), height * 0.06);
        gold.marks().addAll(eagle(width / 2, height * 0.5, height * 0.7, height * 0.62));
        return new Drawing(width, height, gold.marks());
    }

    private static List<Mark> eagle(double cx, double cy, double height, double width) {
        var gold = new Silver(Metal.GOLD);
        Placement place = Placement.scaled(width / 100, height / 100).then(Placement.at(cx, cy));
        for (int side = -1; side <= 1; side += 2) {
            gold.part(
                    Outline.path(
                                    "M4 -10C16 -16 20 -34 46 -49C46 -40 48 -34 45 -26C44 -18 42 -12 38 -6C34 4 24 10 8 14Z")
                            .placed(Placement.scaled(side, 1).then(place)),
                    cy - height / 2,
                    cy + height * 0.1);
            gold.cut(
                    Outline.path("M14 4C26 -4 34 -18 42 -34M16 -2C24 -8 30 -20 34 -34")
                            .placed(Placement.scaled(side, 1).then(place)),
                    width * 0.02);
        }
        gold.part(Outline.path("M-8 46L-5 26H5L8 46C4 51 -4 51 -8 46Z").placed(place), cy, cy + height / 2);
        gold.part(
                Outline.path("M0 -20C9 -16 11 0 8 14C6 24 2 30 0 32C-2 30 -6 24 -8 14C-11 0 -9 -16 0 -20Z")
                        .placed(place),
                cy - height * 0.2,
                cy + height * 0.3);
        gold.part(
                Outline.path("M4 -16C7 -24 2 -32 -6 -30C-11 -29 -14 -26 -15 -22L-9 -21C-8 -17 -5 -14 -2 -14Z")
                        .placed(place),
                cy - height * 0.3,
                cy - height * 0.1);
        return gold.marks();
    }

    /** Gold bars one above another on a strip of cloth, one for six months overseas. */
    static Drawing overseasBars(double width, double bar, int bars) {
        double gap = 1.0 / 16;
        double edge = 1.0 / 8;
        double height = bars * bar + (bars - 1) * gap + 2 * edge;
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(Outline.rectangle(0, 0, width + 2 * edge, height), CLOTH));
        for (int i = 0; i < bars; i++) {
            marks.addAll(lace(edge, edge + i * (bar + gap), width, bar));
        }
        return new Drawing(width + 2 * edge, height, marks);
    }

    private static List<Mark> lace(double x, double y, double width, double height) {
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(Outline.rectangle(x, y, width, height), 0xC9A13B));
        var threads = new Outline(List.of());
        int count = (int) Math.round(width / 0.04);
        for (int i = 0; i < count; i++) {
            double at = x + (i + 0.5) * width / count;
            threads = threads.and(Outline.through(at, y, at, y + height));
        }
        marks.add(new Mark.Line(threads, 0x8A6A1C, 0.012, 0.7, Mark.Ends.BUTT, List.of()));
        marks.add(new Mark.Line(Outline.rectangle(x, y, width, height), 0x5E4610, 0.014, 1, Mark.Ends.BUTT, List.of()));
        return marks;
    }

    /** Slanting stripes of cloth, one for three years; seen as on the left sleeve, the forward end higher. */
    static Drawing serviceStripes(double length, double stripe, int stripes) {
        double gap = 1.0 / 16;
        double edge = 1.0 / 8;
        double run = length * Math.cos(Math.toRadians(45));
        double thick = stripe / Math.cos(Math.toRadians(45));
        double pitch = (stripe + gap) / Math.cos(Math.toRadians(45));
        double width = run + 2 * edge;
        double height = run + thick + (stripes - 1) * pitch + 2 * edge;
        var marks = new ArrayList<Mark>();
        marks.add(Mark.area(Outline.rectangle(0, 0, width, height), 0x3E3A26));
        for (int i = 0; i < stripes; i++) {
            double y = edge + i * pitch;
            Outline bar = Outline.polygon(edge, y + run, edge + run, y, edge + run, y + thick, edge, y + run + thick);
            marks.add(Mark.area(bar, 0x9C8F5C));
            marks.add(new Mark.Line(bar, 0x1E1C12, 0.012, 0.8, Mark.Ends.BUTT, List.of()));
        }
        return new Drawing(width, height, marks);
    }

    /** Gold wreath of laurel on an olive drab square. */
    static Drawing meritoriousWreath(double size) {
        var gold = new Silver(Metal.GOLD);
        gold.add(Mark.area(Outline.rectangle(0, 0, size, size), CLOTH));
        gold.add(new Mark.Line(
                Outline.rectangle(0.02, 0.02, size - 0.04, size - 0.04),
                0x2B2716,
                0.02,
                0.6,
                Mark.Ends.BUTT,
                List.of()));
        gold.oakWreath(size / 2, size / 2, size * 0.34, size * 0.34, size * 0.17, 6, 168, 11);
        gold.ridge(
                Outline.path("M-0.12 -0.05L0.12 0.05M0.12 -0.05L-0.12 0.05")
                        .placed(Placement.at(size / 2, size * 0.86)),
                0.04);
        return new Drawing(size, size, gold.marks());
    }

    /** A cord of two colours, plaited, in one large and one small loop. */
    static Drawing cord(double width, double height, int first, int second) {
        Outline loop = Outline.path(
                        "M50 4C92 12 96 70 50 90C4 70 8 12 50 4ZM50 20C76 28 78 60 50 74C22 60 24 28 50 20Z")
                .placed(Placement.scaled(width / 100, height / 100));
        var marks = new ArrayList<Mark>();
        double cord = width * 0.075;
        marks.add(new Mark.Line(loop, 0x1B1B1B, cord + 0.03, 1, Mark.Ends.ROUND, List.of()));
        marks.add(new Mark.Line(loop, first, cord, 1, Mark.Ends.ROUND, List.of()));
        marks.add(new Mark.Line(loop, second, cord * 0.9, 1, Mark.Ends.BUTT, List.of(cord * 0.45, cord * 0.6)));
        Outline tip = Outline.path("M47 90H53L54 99H46Z").placed(Placement.scaled(width / 100, height / 100));
        marks.add(Mark.area(tip, Metal.GOLD.lit(width * 0.46, height * 0.9, width * 0.08, height * 0.09)));
        marks.add(Mark.line(tip, Metal.GOLD.edge(), 0.014));
        return new Drawing(width, height, marks);
    }
}
