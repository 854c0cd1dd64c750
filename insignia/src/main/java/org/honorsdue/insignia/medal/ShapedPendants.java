package org.honorsdue.insignia.medal;

import java.util.List;
import org.honorsdue.insignia.drawing.Lettering;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.medal.Relief.Wings;
import org.honorsdue.insignia.ribbon.Metal;

/** Sketches of the medals whose outline is no circle, each after its official description; 100 wide, middle at 0,0. */
final class ShapedPendants {
    private static final int ENAMEL_WHITE = 0xF3F1E8;
    private static final int ENAMEL_GREEN = 0x2F6B45;
    private static final int ENAMEL_BLUE = 0x22397A;
    private static final int ENAMEL_CRIMSON = 0x8E1F35;
    private static final int ENAMEL_PURPLE = 0x55287A;

    private ShapedPendants() {}

    /** Five-pointed star tipped with trefoils on a green laurel wreath, Minerva in the middle; hung by an eagle on a bar. */
    static List<Mark> medalOfHonor() {
        var gold = new Relief(Metal.GOLD);
        gold.add(Mark.line(Outline.circle(0, 4, 38), Metal.GOLD.edge(), 9.5));
        gold.add(Mark.line(Outline.circle(0, 4, 38), ENAMEL_GREEN, 8));
        for (int i = 0; i < 24; i++) {
            Outline leaf = Outline.path("M0 -42C3 -39 3 -36 0 -33C-3 -36 -3 -39 0 -42Z")
                    .placed(Placement.turned(15.0 * i + 7.5).then(Placement.at(0, 4)));
            gold.add(Mark.line(leaf, Metal.GOLD.body(), 0.9));
        }
        // The star hangs point down.
        Placement down = Placement.turned(180).then(Placement.at(0, 4));
        gold.raised(Outline.star(5, 0, 0, 41, 17).placed(down));
        for (int i = 0; i < 5; i++) {
            Placement arm = Placement.turned(72.0 * i).then(down);
            gold.raised(Outline.circle(0, -43, 3.2).placed(arm));
            gold.raised(Outline.circle(-4.2, -39, 2.8).placed(arm));
            gold.raised(Outline.circle(4.2, -39, 2.8).placed(arm));
            gold.add(Mark.area(
                    Outline.path("M0 -34C3.4 -30 3.4 -24 0 -19C-3.4 -24 -3.4 -30 0 -34Z")
                            .placed(arm),
                    ENAMEL_GREEN));
        }
        gold.raised(Outline.circle(0, 4, 14));
        gold.raised("M-5 14C-7 8 -8 4 -6 -1C-4 -6 4 -6 6 -1C8 2 7 4 8 7C6 8 6 10 4 11C4 12 5 13 5 14Z");
        gold.raised("M-22 -42H22V-35H-22Z");
        gold.add(Lettering.line("VALOR", 0, -41, 5, 0.9, Metal.GOLD.edge()));
        gold.eagle(0, -54, 34, Wings.LEVEL);
        return gold.marks();
    }

    /** Cross with an eagle on its middle and a scroll below. */
    static List<Mark> distinguishedServiceCross() {
        String arm = "M-9 -9L-14 -44C-15 -50 -8 -50 -6 -53C-3 -56 3 -56 6 -53C8 -50 15 -50 14 -44L9 -9Z";
        var bronze = new Relief(Metal.OLD_BRONZE);
        for (int i = 0; i < 4; i++) {
            double reach = i % 2 == 0 ? 1 : 0.91;
            bronze.raised(Outline.path(arm).placed(Placement.scaled(1, reach).then(Placement.turned(90.0 * i))));
        }
        return bronze.eagle(0, -3, 66, Wings.RAISED)
                .raised("M-24 17C-12 22 12 22 24 17L26 26C12 31 -12 31 -26 26Z")
                .words("FOR VALOR", 20.6, 5.4)
                .marks();
    }

    /** A ring of blue enamel with the arms of the United States within. */
    static List<Mark> distinguishedServiceMedal() {
        var gold = new Relief(Metal.GOLD);
        gold.add(Mark.line(Outline.circle(0, 0, 43), Metal.GOLD.edge(), 14));
        gold.add(Mark.line(Outline.circle(0, 0, 43), Metal.GOLD.body(), 12.6));
        gold.add(Mark.line(Outline.circle(0, 0, 43), ENAMEL_BLUE, 9.6));
        gold.add(Lettering.around("FOR DISTINGUISHED SERVICE", 0, 0, 40.6, 0, 5, 0.9, Metal.GOLD.light(), false));
        gold.add(Lettering.around("MCMXVIII", 0, 0, 45.6, 180, 5, 0.9, Metal.GOLD.light(), true));
        gold.eagle(0, 0, 72, Wings.RAISED);
        gold.raised("M-9 -8H9V6C9 12 4 16 0 18C-4 16 -9 12 -9 6Z");
        gold.groove("M-4.5 -1V14M0 -1V17M4.5 -1V14M-9 -2H9", 1.3);
        return gold.marks();
    }

    /** Gilt star, laurel wreath in the middle, a small silver star on it. */
    static List<Mark> silverStar() {
        var gold = facetedStar(Metal.GOLD);
        gold.add(Mark.area(Outline.circle(0, 0, 15.5), Metal.GOLD.shade()));
        gold.wreath(13, 7.5, 10, 165, 9);
        for (int i = 0; i < 20; i++) {
            gold.add(Mark.line(Outline.path("M0 -4V-10").placed(Placement.turned(18.0 * i)), Metal.GOLD.light(), 0.8));
        }
        gold.add(Mark.area(Outline.star(0, 0, 7.4), Metal.SILVER.edge()));
        gold.add(Mark.area(Outline.star(0, 0, 6.3), Metal.SILVER.light()));
        return gold.marks();
    }

    /** Bronze star, a small star raised in the middle with its rays in line. */
    static List<Mark> bronzeStar() {
        var bronze = facetedStar(Metal.OLD_BRONZE);
        bronze.add(Mark.area(Outline.star(0, 0, 8.4), Metal.OLD_BRONZE.edge()));
        bronze.add(Mark.area(Outline.star(0, 0, 6.9), Metal.OLD_BRONZE.light()));
        for (int i = 0; i < 5; i++) {
            bronze.add(Mark.area(
                    Outline.polygon(0, 0, 0, -6.9, 1.55, -2.13).placed(Placement.turned(72.0 * i)),
                    Metal.OLD_BRONZE.shade()));
        }
        return bronze.marks();
    }

    private static Relief facetedStar(Metal metal) {
        var star = new Relief(metal);
        // A star within a circle 100 across; its middle is the middle of that circle.
        Outline whole = Outline.star(0, 0, 50);
        double inner = 50 * 0.381966;
        star.add(Mark.area(whole, metal.body()));
        for (int i = 0; i < 5; i++) {
            Placement turn = Placement.turned(72.0 * i);
            double x = inner * Math.sin(Math.toRadians(36));
            double y = -inner * Math.cos(Math.toRadians(36));
            star.add(Mark.area(
                    Outline.polygon(0, 0, -x, y, 0, -50).placed(turn), i < 1 || i > 2 ? metal.light() : metal.body()));
            star.add(Mark.area(
                    Outline.polygon(0, 0, 0, -50, x, y).placed(turn), i < 1 || i > 2 ? metal.body() : metal.shade()));
        }
        star.add(Mark.line(whole, metal.edge(), 1.3));
        return star;
    }

    /** White star of five double-pointed arms edged crimson on a green wreath, blue centre with stars. */
    static List<Mark> legionOfMerit() {
        var gold = new Relief(Metal.GOLD);
        gold.add(Mark.line(Outline.circle(0, 0, 36), Metal.GOLD.edge(), 10));
        gold.add(Mark.line(Outline.circle(0, 0, 36), ENAMEL_GREEN, 8.6));
        for (int i = 0; i < 30; i++) {
            gold.add(Mark.line(
                    Outline.path("M0 -40C2.6 -38 2.6 -35 0 -32C-2.6 -35 -2.6 -38 0 -40Z")
                            .placed(Placement.turned(12.0 * i)),
                    Metal.GOLD.body(),
                    0.8));
        }
        for (int i = 0; i < 5; i++) {
            Placement between = Placement.turned(72.0 * i + 36);
            gold.ridge(Outline.path("M-8 -20L5 -37M8 -20L-5 -37").placed(between), 1.6);
        }
        for (int i = 0; i < 5; i++) {
            Placement arm = Placement.turned(72.0 * i);
            Outline wedge = Outline.path("M-6 -8L-16 -47L0 -40L16 -47L6 -8Z").placed(arm);
            gold.add(Mark.line(wedge, Metal.GOLD.edge(), 3.4));
            gold.add(Mark.line(wedge, Metal.GOLD.body(), 2.4));
            gold.add(Mark.area(wedge, ENAMEL_CRIMSON));
            gold.add(Mark.area(
                    Outline.path("M-5 -10L-12.4 -42.5L0 -36.6L12.4 -42.5L5 -10Z")
                            .placed(arm),
                    ENAMEL_WHITE));
            gold.raised(Outline.circle(-16, -47, 2.4).placed(arm));
            gold.raised(Outline.circle(16, -47, 2.4).placed(arm));
        }
        gold.add(Mark.area(Outline.circle(0, 0, 15), Metal.GOLD.edge()));
        gold.add(Mark.area(Outline.circle(0, 0, 14), Metal.GOLD.light()));
        gold.add(Mark.area(Outline.circle(0, 0, 10.6), ENAMEL_BLUE));
        int[] rows = {1, 4, 3, 4, 1};
        for (int row = 0; row < rows.length; row++) {
            for (int i = 0; i < rows[row]; i++) {
                gold.add(Mark.area(Outline.star((i - (rows[row] - 1) / 2.0) * 4.4, -7 + 3.5 * row, 1.7), ENAMEL_WHITE));
            }
        }
        gold.raised("M0 43C-6 38 -13 41 -13 46C-9 49 -4 48 0 46C4 48 9 49 13 46C13 41 6 38 0 43Z");
        return gold.marks();
    }

    /** Cross pattee with a square of rays behind and a four-bladed propeller over it. */
    static List<Mark> distinguishedFlyingCross() {
        var bronze = new Relief(Metal.OLD_BRONZE);
        Outline square = Outline.rectangle(-30, -30, 60, 60);
        bronze.add(Mark.area(square, Metal.OLD_BRONZE.shade()));
        for (int i = 0; i < 4; i++) {
            for (int ray = -4; ray <= 4; ray++) {
                bronze.add(Mark.line(
                        Outline.path("M0 0L0 -40").placed(Placement.turned(45 + 90.0 * i + ray * 8)),
                        ray % 2 == 0 ? Metal.OLD_BRONZE.light() : Metal.OLD_BRONZE.edge(),
                        1.6));
            }
        }
        var rays = List.copyOf(bronze.marks());
        var cross = new Relief(Metal.OLD_BRONZE);
        cross.add(Mark.within(square, rays));
        cross.add(Mark.line(square, Metal.OLD_BRONZE.edge(), 1));
        for (int i = 0; i < 4; i++) {
            cross.raised(Outline.path("M-6 -6L-17 -50H17L6 -6Z").placed(Placement.turned(90.0 * i)));
        }
        for (int i = 0; i < 4; i++) {
            cross.raised(Outline.path("M-2.4 -3C-7 -14 -7 -34 -3 -45C0 -48 4 -46 5 -42C7 -30 5 -14 2.4 -3Z")
                    .placed(Placement.turned(90.0 * i)));
        }
        cross.raised(Outline.circle(0, 0, 6));
        return cross.marks();
    }

    /** Octagon, eagle on fasces between two groups of stars. */
    static List<Mark> soldiersMedal() {
        double c = 50;
        double k = c * Math.tan(Math.toRadians(22.5));
        var bronze = new Relief(Metal.OLD_BRONZE)
                .flan(Outline.polygon(-k, -c, k, -c, c, -k, c, k, k, c, -k, c, -c, k, -c, -k));
        double i = c - 5;
        double m = i * Math.tan(Math.toRadians(22.5));
        bronze.groove(
                "M%s %sL%s %sL%s %sL%s %sL%s %sL%s %sL%s %sL%s %sZ"
                        .formatted(-m, -i, m, -i, i, -m, i, m, m, i, -m, i, -i, m, -i, -m),
                1.2);
        bronze.ridge("M-22 27H22", 6);
        bronze.eagle(0, -4, 68, Wings.RAISED);
        for (int star = 0; star < 6; star++) {
            bronze.raised(Outline.star(-35 + 5.5 * (star % 2), -22 + 9 * star / 2.0, 2.6));
        }
        for (int star = 0; star < 7; star++) {
            bronze.raised(Outline.star(35 - 5.5 * (star % 2), -22 + 8 * star / 2.0, 2.6));
        }
        return bronze.marks();
    }

    /** Heart of purple in a gilt edge, Washington in profile, his arms above between green leaves. */
    static List<Mark> purpleHeart() {
        String heart =
                "M0 58.7C-10 45 -50 21 -50 -12C-50 -34 -34 -46 -20 -46C-10 -46 -3 -40 0 -34C3 -40 10 -46 20 -46C34 -46 50 -34 50"
                        + " -12C50 21 10 45 0 58.7Z";
        Outline outer = Outline.path(heart);
        Outline inner = outer.placed(Placement.scaled(0.84).then(Placement.at(0, 0.6)));
        var gold = new Relief(Metal.GOLD);
        gold.flan(outer);
        gold.add(Mark.area(inner, Metal.GOLD.edge()));
        gold.add(Mark.area(
                inner.placed(Placement.scaled(0.975)),
                new Paint.Outward(
                        -12,
                        -16,
                        80,
                        List.of(
                                new Paint.Stop(0, 0x7C46A8),
                                new Paint.Stop(0.6, ENAMEL_PURPLE),
                                new Paint.Stop(1, 0x34154F)))));
        gold.raised(
                "M-19 34C-18 26 -10 24 -6 19C-9 14 -10 10 -11 6C-14 5 -14 3 -12 0C-14 -4 -13 -8 -11 -11C-9 -20 0 -25 9 -23C18 -21 21"
                        + " -12 18 -4C21 2 20 9 14 12C13 16 13 19 15 22C20 25 22 29 22 34C9 39 -8 39 -19 34Z");
        gold.groove("M-8 -5H-4M-10 8C-8 9 -6 9 -5 8M4 -20C10 -12 10 0 8 10", 1.4);
        gold.bothSides("M9 -52C18 -62 28 -60 33 -52C26 -48 17 -46 9 -46Z");
        for (int side = -1; side <= 1; side += 2) {
            gold.add(Mark.area(
                    Outline.path("M11 -51C18 -58 26 -57 30 -52C24 -49 17 -48 11 -48Z")
                            .placed(Placement.scaled(side, 1)),
                    ENAMEL_GREEN));
        }
        Outline shield = Outline.path("M-9 -64H9V-52C9 -45 4 -42 0 -40C-4 -42 -9 -45 -9 -52Z");
        gold.add(Mark.area(shield, ENAMEL_WHITE));
        gold.add(Mark.within(
                shield,
                List.of(
                        Mark.area(Outline.rectangle(-9, -57, 18, 3.4), 0xB0202F),
                        Mark.area(Outline.rectangle(-9, -50, 18, 3.4), 0xB0202F))));
        for (int i = -1; i <= 1; i++) {
            gold.add(Mark.area(Outline.star(i * 5.2, -60.4, 2.1), 0xB0202F));
        }
        gold.add(Mark.line(shield, Metal.GOLD.edge(), 1.2));
        return gold.marks();
    }

    /** Compass rose of sixteen points, an eagle in flight with lightning. */
    static List<Mark> airMedal() {
        var bronze = new Relief(Metal.OLD_BRONZE);
        for (int i = 0; i < 16; i++) {
            double reach = i % 4 == 0 ? 50 : i % 2 == 0 ? 46 : 40;
            Placement turn = Placement.turned(22.5 * i);
            double half = 9;
            bronze.add(Mark.area(Outline.polygon(0, 0, -half, -30, 0, -reach).placed(turn), Metal.OLD_BRONZE.light()));
            bronze.add(Mark.area(Outline.polygon(0, 0, 0, -reach, half, -30).placed(turn), Metal.OLD_BRONZE.shade()));
            bronze.add(Mark.line(
                    Outline.through(-half, -30, 0, -reach, half, -30).placed(turn), Metal.OLD_BRONZE.edge(), 1));
        }
        bronze.add(Mark.area(Outline.circle(0, 0, 32), Metal.OLD_BRONZE.lit(-30, -30, 60, 60)));
        bronze.raised(
                "M-40 -20C-24 -22 -12 -16 -4 -8C2 -20 12 -32 30 -38C28 -32 30 -28 33 -26C27 -24 25 -20 26 -16C20 -14 17 -9 16 -4C22"
                        + " 2 22 8 18 12L10 8C4 12 -4 12 -10 6C-20 2 -32 -6 -40 -20Z");
        bronze.raised("M14 2C22 0 28 2 32 8C26 8 22 10 18 12Z");
        bronze.ridge("M-2 10L-14 22L-8 22L-20 36M6 11L6 24L11 22L10 38", 2);
        return bronze.marks();
    }

    /** Hexagon, one point up; eagle with level wings and arrows, shield on its breast. */
    static List<Mark> armyCommendation() {
        double x = 50;
        double y = 50 / Math.cos(Math.toRadians(30));
        return new Relief(Metal.OLD_BRONZE)
                .flan(Outline.polygon(0, -y, x, -y / 2, x, y / 2, 0, y, -x, y / 2, -x, -y / 2))
                .groove(
                        "M0 %sL%s %sV%sL0 %sL%s %sV%sZ"
                                .formatted(-y + 6, x - 5, -y / 2 + 3, y / 2 - 3, y - 6, -x + 5, y / 2 - 3, -y / 2 + 3),
                        1.2)
                .eagle(0, 0, 80, Wings.LEVEL)
                .raised("M-7 -6H7V5C7 10 3 13 0 15C-3 13 -7 10 -7 5Z")
                .ridge("M-18 24L18 34M18 24L-18 34M-20 29H20", 1.8)
                .marks();
    }

    /** Cross with swords between its arms and a head in the middle. */
    static List<Mark> frenchWarCross() {
        var bronze = new Relief(Metal.OLD_BRONZE);
        bronze.ridge("M-38 38L38 -38M38 38L-38 -38", 3.4);
        bronze.ridge("M-36 27L-27 36M36 27L27 36", 3);
        for (int i = 0; i < 4; i++) {
            bronze.raised(Outline.path("M-8 -8L-19 -50H19L8 -8Z").placed(Placement.turned(90.0 * i)));
        }
        bronze.raised(Outline.circle(0, 0, 21));
        bronze.raised(
                "M-6 15C-8 8 -12 4 -11 -4C-10 -13 0 -17 7 -13C12 -10 12 -4 11 0C14 4 13 6 11 7C11 11 9 12 5 12L7 15Z");
        return bronze.marks();
    }

    /** Cross with a lion in the middle and swords between its arms, a crown above. */
    static List<Mark> belgianWarCross() {
        var bronze = new Relief(Metal.OLD_BRONZE);
        bronze.ridge("M-38 38L38 -38M38 38L-38 -38", 3.4);
        for (int i = 0; i < 4; i++) {
            bronze.raised(Outline.path("M-7 -7L-16 -44L-10 -48L0 -43L10 -48L16 -44L7 -7Z")
                    .placed(Placement.turned(90.0 * i)));
        }
        bronze.raised(Outline.circle(0, 0, 15));
        bronze.raised("M-6 9C-6 2 -8 -2 -5 -6C-2 -10 4 -9 5 -5C9 -3 8 2 6 3L8 9H4L2 4L-2 9Z");
        bronze.raised("M-13 -50L-17 -64C-10 -60 -8 -68 0 -70C8 -68 10 -60 17 -64L13 -50Z");
        return bronze.marks();
    }

    /** Winged shield of three stripes with stars above, for the Philippine Liberation Medal. */
    static List<Mark> philippineLiberation() {
        var bronze = new Relief(Metal.OLD_BRONZE)
                .bothSides("M16 -22C30 -26 42 -34 50 -46C50 -30 46 -10 34 4C28 10 20 12 14 12Z");
        Outline shield = Outline.path("M-19 -38C-8 -32 8 -32 19 -38V18C19 34 8 44 0 50C-8 44 -19 34 -19 18Z");
        bronze.add(Mark.within(
                shield,
                List.of(
                        Mark.area(Outline.rectangle(-19, -40, 13, 92), 0x274A94),
                        Mark.area(Outline.rectangle(-6, -40, 12, 92), ENAMEL_WHITE),
                        Mark.area(Outline.rectangle(6, -40, 13, 92), 0xB5202F))));
        bronze.add(Mark.line(shield, Metal.OLD_BRONZE.edge(), 1.6));
        bronze.ridge("M0 -6V34", 3);
        for (int i = -1; i <= 1; i++) {
            bronze.raised(Outline.star(i * 11, i == 0 ? -25 : -22, 4));
        }
        return bronze.marks();
    }
}
