package org.honorsdue.insignia.sleeve;

import static org.honorsdue.insignia.sleeve.Cloth.BLACK;
import static org.honorsdue.insignia.sleeve.Cloth.BLUE;
import static org.honorsdue.insignia.sleeve.Cloth.CRIMSON;
import static org.honorsdue.insignia.sleeve.Cloth.GOLD;
import static org.honorsdue.insignia.sleeve.Cloth.GRAY;
import static org.honorsdue.insignia.sleeve.Cloth.GREEN;
import static org.honorsdue.insignia.sleeve.Cloth.LIGHT_BLUE;
import static org.honorsdue.insignia.sleeve.Cloth.OLIVE;
import static org.honorsdue.insignia.sleeve.Cloth.ORANGE;
import static org.honorsdue.insignia.sleeve.Cloth.RED;
import static org.honorsdue.insignia.sleeve.Cloth.WHITE;
import static org.honorsdue.insignia.sleeve.Cloth.YELLOW;

import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;

/** Divisions numbered 1 to 45: Regular Army and National Guard. One insigne a method, after its blazon. */
final class OldDivisions {
    private OldDivisions() {}

    static Cloth first() {
        return new Cloth(150)
                .area("M-50 -75H50V25L0 75L-50 25Z", OLIVE)
                .area("M-14 -30L6 -44H14V27H-6V-20L-14 -15Z", RED);
    }

    /** On the left sleeve the stripes run from the upper rear corner to the lower front. */
    static Cloth third() {
        var cloth = new Cloth(100).area("M-50 -50H50V50H-50Z", BLUE);
        var stripes = new Cloth(100);
        for (int i = -1; i <= 1; i++) {
            stripes.area(Outline.rectangle(-90, -7 + 28 * i, 180, 14).placed(Placement.turned(-45)), WHITE);
        }
        return cloth.within(Outline.rectangle(-50, -50, 100, 100), stripes);
    }

    static Cloth fourth() {
        var cloth = new Cloth(100).onPoint(OLIVE, OLIVE, 0);
        for (int i = 0; i < 4; i++) {
            Placement turn = Placement.turned(90.0 * i);
            cloth.area(
                    Outline.path(
                                    "M0 -8C-3 -12 -8 -12 -13 -10C-11 -15 -14 -19 -18 -21C-13 -23 -12 -28 -11 -32C-7 -30 -4 -34 0 -42C4 -34 7"
                                            + " -30 11 -32C12 -28 13 -23 18 -21C14 -19 11 -15 13 -10C8 -12 3 -12 0 -8Z")
                            .placed(turn),
                    GREEN);
            cloth.line(Outline.path("M0 -4V-36M0 -16L-10 -20M0 -16L10 -20").placed(turn), 0x173D24, 1.2);
        }
        return cloth.line(Outline.circle(0, 0, 5), GREEN, 2.6);
    }

    static Cloth fifth() {
        return new Cloth(166.6).area("M0 -83.3L50 0L0 83.3L-50 0Z", RED);
    }

    static Cloth sixth() {
        // Two triangles whose points lie on one circle.
        double r = 57.7;
        return new Cloth(115.4).area(Outline.star(6, 0, 0, r, r * 0.57735), RED);
    }

    static Cloth seventh() {
        return new Cloth(100).disc(RED, RED, 0).area("M-22.2 -36H22.2L0 0L22.2 36H-22.2L0 0Z", BLACK);
    }

    static Cloth eighth() {
        var cloth = new Cloth(137.5);
        return cloth.shield(BLUE, BLUE, 0)
                .letters("8", 0, -34, 72, 15, WHITE)
                .area("M-3.5 58V-36H-12L0 -58L12 -36H3.5V58Z", GOLD);
    }

    /** Eight petals, the upper ones red and the lower ones blue, a white middle. */
    static Cloth ninth() {
        var cloth = new Cloth(100).disc(OLIVE, OLIVE, 0);
        for (int i = 0; i < 8; i++) {
            double angle = Math.toRadians(22.5 + 45 * i);
            double x = 25 * Math.sin(angle);
            double y = -25 * Math.cos(angle);
            cloth.area(Outline.circle(x, y, 14.2), WHITE);
            cloth.area(Outline.circle(x, y, 12), y < 0 ? RED : BLUE);
        }
        return cloth.area(Outline.circle(0, 0, 21), WHITE)
                .area(Outline.circle(0, 0, 18.6), BLUE)
                .area(halfDisc(18.6), RED)
                .area(Outline.circle(0, 0, 9.5), WHITE);
    }

    private static Outline halfDisc(double radius) {
        return new Outline.Pen()
                .arc(0, 0, radius, radius, -90, 90, true)
                .close()
                .outline();
    }

    static Cloth tenthMountain() {
        var cloth = new Cloth(148);
        String keg =
                "M-34 -46H34C46 -30 50 -8 50 14C50 36 46 58 34 74H-34C-46 58 -50 36 -50 14C-50 -8 -46 -30 -34 -46Z";
        cloth.field(Outline.path(keg), BLUE, WHITE, 5);
        for (int side = -1; side <= 1; side += 2) {
            Placement place = Placement.turned(38.0 * side).then(Placement.at(0, 14));
            Outline blade = Outline.path("M-4.5 26V-20L0 -42L4.5 -20V26H13V32H4V44H-4V32H-13V26Z")
                    .placed(place);
            cloth.line(blade, WHITE, 6).area(blade, RED);
        }
        return cloth.tab("MOUNTAIN", 70, -74, BLUE, WHITE);
    }

    static Cloth americal() {
        var cloth = new Cloth(129);
        cloth.shield(BLUE, BLUE, 0);
        double[][] stars = {{0, -44}, {-27, -14}, {24, -22}, {2, 26}};
        for (double[] star : stars) {
            cloth.area(Outline.star(star[0], star[1], 13), WHITE);
        }
        return cloth;
    }

    private static final String TARO =
            "M0 -34C10 -46 30 -44 38 -28C45 -10 40 8 28 22C18 33 8 40 0 48C-8 40 -18 33 -28 22C-40 8 -45 -10 -38 -28C-30 -44 -10 -46 0"
                    + " -34Z";

    static Cloth twentyFourth() {
        Outline leaf = Outline.path(TARO).placed(Placement.scaled(0.74));
        return new Cloth(100)
                .disc(RED, BLACK, 4)
                .cord("M0 -24C4 -34 2 -40 -4 -42", YELLOW, 7)
                .line(leaf, YELLOW, 6)
                .area(leaf, GREEN)
                .cord("M0 -24C4 -34 2 -40 -4 -42", GREEN, 3.4)
                .cord("M0 -22V28M0 -6L-17 -16M0 -6L17 -16M0 8L-15 4M0 8L15 4", YELLOW, 1.5);
    }

    static Cloth twentyFifth() {
        Outline leaf = Outline.path(TARO).placed(Placement.scaled(1.06, 1.26).then(Placement.at(0, 4)));
        return new Cloth(143.75)
                .area("M-5 -38L-9 -70H7L5 -38Z", YELLOW)
                .line(leaf, YELLOW, 9)
                .area(leaf, RED)
                .area("M-2.5 -30L-4.5 -66H3L2.5 -30Z", RED)
                .area("M10 -44L-15 4H-1L-9 46L16 -8H3L17 -44Z", YELLOW);
    }

    static Cloth twentySixth() {
        return new Cloth(150)
                .area("M0 -75L50 0L0 75L-50 0Z", OLIVE)
                .line("M-14 -26V26H-3C18 26 18 -26 -3 -26H-14", BLUE, 8)
                .line("M-26 -34L-3 2L20 -34M-3 2V38", BLUE, 8);
    }

    static Cloth twentySeventh() {
        var cloth = new Cloth(100)
                .disc(BLACK, BLACK, 0)
                .line(Outline.circle(0, 0, 42), RED, 4)
                .line("M-22 22V-18L2 14V-20", RED, 6)
                .line("M-4 -24L8 -4L20 -24M8 -4V22", RED, 6);
        double[][] orion = {{-26, -14}, {26, -10}, {-7, 31}, {0, 28}, {7, 25}, {-24, 8}, {27, 12}};
        for (double[] star : orion) {
            cloth.area(Outline.star(star[0], star[1], 4.2), RED);
        }
        return cloth;
    }

    static Cloth twentyEighth() {
        return new Cloth(100).area("M-30 -50H30L36 -30H50L32 50H-32L-50 -30H-36Z", RED);
    }

    /** Blue to the wearer's right, which is the viewer's left; an olive drab edge in the war. */
    static Cloth twentyNinth() {
        var grey = new Outline.Pen()
                .arc(0, 0, 45, 45, 0, 180, true)
                .arc(0, 22.5, 22.5, 22.5, 180, 360, false)
                .arc(0, -22.5, 22.5, 22.5, 180, 0, false)
                .close()
                .outline();
        return new Cloth(100)
                .disc(OLIVE, OLIVE, 0)
                .area(Outline.circle(0, 0, 45), BLUE)
                .area(grey, GRAY);
    }

    static Cloth thirtieth() {
        return new Cloth(133)
                .area(Outline.ellipse(0, 0, 50, 66.5), RED)
                .line(Outline.ellipse(0, 0, 36, 50), BLUE, 9)
                .line("M-21 -38V38M21 -38V38", BLUE, 9)
                .line("M-20 -9H20M-20 9H20", BLUE, 3.2)
                .letters("XXX", 0, -9, 18, 3.4, BLUE);
    }

    static Cloth thirtyFirst() {
        return new Cloth(100)
                .disc(WHITE, RED, 7.5)
                .line("M-3.5 -26V26M-3.5 -24H-16L-27 -12V12L-16 24H-3.5", RED, 5)
                .line("M3.5 -26V26M3.5 -24H16L27 -12V12L16 24H3.5", RED, 5);
    }

    static Cloth thirtySecond() {
        return new Cloth(223)
                .area("M-50 -111.5H50V111.5H-50Z", OLIVE)
                .area("M-6 100V-54H-24L0 -100L24 -54H6V100Z", RED)
                .area("M-38 -3H38V9H-38Z", RED);
    }

    static Cloth thirtyThird() {
        return new Cloth(100).disc(BLACK, BLACK, 0).area("M-9 -32H9V-9H32V9H9V32H-9V9H-32V-9H-9Z", YELLOW);
    }

    static Cloth thirtyFourth() {
        String jar =
                "M-20 -56H20C20 -50 16 -47 16 -43C34 -38 50 -20 50 2C50 32 26 56 0 56C-26 56 -50 32 -50 2C-50 -20 -34 -38 -16 -43C-16"
                        + " -47 -20 -50 -20 -56Z";
        return new Cloth(112.5)
                .area(jar, BLACK)
                .area(
                        "M-12 -16C-22 -22 -30 -20 -33 -30C-26 -26 -20 -28 -13 -27C-8 -28 8 -28 13 -27C20 -28 26 -26 33 -30C30 -20 22 -22 12"
                                + " -16C13 -8 10 0 8 10C7 20 6 30 0 33C-6 30 -7 20 -8 10C-10 0 -13 -8 -12 -16Z",
                        RED)
                .area(Outline.ellipse(-6, -8, 2.8, 3.8), BLACK)
                .area(Outline.ellipse(6, -8, 2.8, 3.8), BLACK)
                .area("M-3 23L-1.4 17L0 23ZM3 23L1.4 17L0 23Z", BLACK);
    }

    static Cloth thirtyFifth() {
        return new Cloth(100)
                .disc(BLUE, BLUE, 0)
                .line(Outline.circle(0, 0, 24), WHITE, 5)
                .line("M0 -42V42M-42 0H42", WHITE, 5)
                .line("M-10 -35H10M-10 35H10M-35 -10V10M35 -10V10", WHITE, 5);
    }

    static Cloth thirtySixth() {
        return new Cloth(125)
                .area("M-18 -62.5H18L24 -44L50 -40C46 -12 28 34 0 62.5C-28 34 -46 -12 -50 -40L-24 -44Z", LIGHT_BLUE)
                .area("M-24 -32H24V-18H8V30H-8V-18H-24Z", OLIVE);
    }

    static Cloth thirtySeventh() {
        return new Cloth(100)
                .disc(RED, RED, 0)
                .area(Outline.circle(0, 0, 46), WHITE)
                .area(Outline.circle(0, 0, 28), RED);
    }

    static Cloth thirtyEighth() {
        var cloth = new Cloth(115);
        Outline spade = Outline.path("M-50 -57.5H50V-10C50 24 26 44 0 57.5C-26 44 -50 24 -50 -10Z");
        return cloth.area(spade, BLUE)
                .within(spade, new Cloth(115).area(Outline.rectangle(0, -60, 60, 120), RED))
                .line("M16 -26C8 -38 -26 -34 -26 -4C-26 26 8 30 16 16", WHITE, 6.5)
                .line("M0 -24L14 -2L28 -24M14 -2V28", WHITE, 6.5);
    }

    static Cloth fortieth() {
        var cloth = new Cloth(100).onPoint(BLUE, BLUE, 0);
        for (int i = 0; i < 12; i++) {
            cloth.area(Outline.polygon(-4, -13, 0, -26.4, 4, -13).placed(Placement.turned(30.0 * i)), YELLOW);
        }
        return cloth.area(Outline.circle(0, 0, 11.4), YELLOW);
    }

    static Cloth fortyFirst() {
        var field = new Outline.Pen().arc(0, 25, 50, 50, -90, 90, true).close().outline();
        var cloth = new Cloth(50).area(field, CRIMSON);
        var rays = new Cloth(50);
        for (int i = -5; i <= 5; i++) {
            rays.area(
                    Outline.polygon(-3, 0, 0, -40, 3, 0)
                            .placed(Placement.turned(16.0 * i).then(Placement.at(0, 13))),
                    GOLD);
        }
        rays.area(Outline.circle(0, 13, 17), GOLD).area(Outline.rectangle(-50, 13, 100, 12), BLUE);
        return cloth.within(field, rays);
    }

    /** Red outermost; olive drab edge. */
    static Cloth fortySecond() {
        var cloth = new Cloth(55.6);
        int[] bands = {OLIVE, RED, YELLOW, BLUE, OLIVE};
        double[] radii = {71.1, 66.7, 53.3, 40, 26.7};
        for (int i = 0; i < bands.length; i++) {
            double outer = radii[i];
            double inner = i == bands.length - 1 ? 22.2 : radii[i + 1];
            cloth.area(
                    new Outline.Pen()
                            .arc(0, 43.3, outer, outer, -45, 45, true)
                            .arc(0, 43.3, inner, inner, 45, -45, false)
                            .close()
                            .outline(),
                    bands[i]);
        }
        return cloth;
    }

    static Cloth fortyThird() {
        var cloth = new Cloth(100);
        for (int i = 0; i < 4; i++) {
            double angle = Math.toRadians(45 + 90 * i);
            cloth.area(Outline.circle(28 * Math.sin(angle), 28 * Math.cos(angle), 30), RED);
        }
        return cloth.area(Outline.rectangle(-28, -28, 56, 56), RED)
                .area(
                        "M0 36C-3 28 -8 26 -15 28C-13 22 -18 18 -26 18C-23 12 -26 6 -32 2C-24 0 -24 -6 -26 -14C-18 -10 -13 -14 -12 -22C-6 -18"
                                + " -3 -24 0 -34C3 -24 6 -18 12 -22C13 -14 18 -10 26 -14C24 -6 24 0 32 2C26 6 23 12 26 18C18 18 13 22 15 28C8 26 3"
                                + " 28 0 36Z",
                        BLACK);
    }

    static Cloth fortyFourth() {
        return new Cloth(100)
                .disc(ORANGE, BLUE, 3)
                .line("M-5 30V-34L-32 14H-5", BLUE, 6.5)
                .line("M5 30V-34L32 14H5", BLUE, 6.5);
    }

    static Cloth fortyFifth() {
        return new Cloth(100)
                .onPoint(RED, RED, 0)
                .area(
                        "M-3 -27L2 -30L8 -28L3 -25L3 -19L23 -19L26 8L21 8L20 -6L17 10L13 9L13 -6L10 9L6 8L7 24L2 20L0 27L-2 20L-7 24L-6 8L-10"
                                + " 9L-13 -6L-13 9L-17 10L-20 -6L-21 8L-26 8L-23 -19L-3 -19Z",
                        YELLOW)
                .add(new Mark.Area(Outline.circle(2, -26.5, 1), Paint.plain(RED), 1));
    }
}
