package org.honorsdue.insignia.sleeve;

import static org.honorsdue.insignia.sleeve.Cloth.BLACK;
import static org.honorsdue.insignia.sleeve.Cloth.BLUE;
import static org.honorsdue.insignia.sleeve.Cloth.OLIVE;
import static org.honorsdue.insignia.sleeve.Cloth.ORANGE;
import static org.honorsdue.insignia.sleeve.Cloth.RED;
import static org.honorsdue.insignia.sleeve.Cloth.WHITE;
import static org.honorsdue.insignia.sleeve.Cloth.YELLOW;

import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Placement;

/** Armored divisions, corps, armies, theatres and air forces. One insigne a method, after its blazon. */
final class Commands {
    private static final int ULTRAMARINE = 0x1D3C8F;

    private Commands() {}

    /** Triangle of yellow, blue and red; track, gun and lightning over all; the number in the point. */
    static Cloth armored(String number) {
        var cloth = new Cloth(88.7);
        Outline triangle = Outline.path("M0 -44L50 44H-50Z");
        cloth.area(triangle, YELLOW);
        cloth.within(
                triangle,
                new Cloth(88.7)
                        .area("M0 14L-60 -20V50H0Z", BLUE)
                        .area("M0 14L60 -20V50H0Z", RED)
                        .area("M-60 -21L0 14L60 -21V-60H-60Z", YELLOW));
        cloth.line("M-17 8H17C26 8 26 26 17 26H-17C-26 26 -26 8 -17 8Z", BLACK, 4.5);
        for (double x : new double[] {-12, 0, 12}) {
            cloth.area(Outline.circle(x, 17, 4), BLACK);
        }
        cloth.area("M-6 6L22 -3L23 1L-4 10Z", BLACK);
        cloth.area("M14 -14L-14 18H0L-14 40L18 12H4L16 -14Z", RED);
        cloth.letters(number, 0, -28, 17, number.length() > 1 ? 3.2 : 4, BLACK);
        return cloth;
    }

    static Cloth firstArmoredCorps() {
        return armored("I");
    }

    static Cloth firstCorps() {
        return new Cloth(100).disc(BLACK, BLACK, 0).line(Outline.circle(0, 0, 39), WHITE, 11);
    }

    static Cloth thirdCorps() {
        var cloth = new Cloth(88.9);
        for (int i = 0; i < 3; i++) {
            cloth.area(
                    Outline.path("M-14 0L-10.5 -35L0 -57.7L10.5 -35L14 0Z")
                            .placed(Placement.turned(120.0 * i).then(Placement.at(0, 14.5))),
                    BLUE);
        }
        return cloth.area(Outline.polygon(0, -4, 16, 23.7, -16, 23.7), WHITE);
    }

    static Cloth seventhCorps() {
        return new Cloth(100)
                .disc(OLIVE, OLIVE, 0)
                .area(Outline.star(7, 0, 2, 44, 24), RED)
                .area(Outline.circle(0, 2, 21), WHITE)
                .within(Outline.circle(0, 2, 21), new Cloth(100).area("M-30 -30H30V2H-30Z", BLUE))
                .letters("VII", 0, -10.5, 25, 4.2, WHITE)
                .within(Outline.rectangle(-30, 2, 60, 30), new Cloth(100).letters("VII", 0, -10.5, 25, 4.2, BLUE));
    }

    static Cloth eleventhCorps() {
        var cloth = new Cloth(100).disc(BLUE, BLUE, 0);
        Outline square = Outline.rectangle(-15, -15, 30, 30);
        Placement left = Placement.turned(45).then(Placement.at(-17, 0));
        Placement right = Placement.at(22, 0);
        cloth.area(square.placed(left), WHITE).area(square.placed(right), WHITE);
        double[][] five = {{-8, -8}, {8, -8}, {0, 0}, {-8, 8}, {8, 8}};
        for (double[] dot : five) {
            cloth.area(Outline.circle(dot[0], dot[1], 3).placed(left), RED);
        }
        for (double x : new double[] {-7, 7}) {
            for (double y : new double[] {-9, 0, 9}) {
                cloth.area(Outline.circle(x, y, 3).placed(right), RED);
            }
        }
        return cloth;
    }

    static Cloth twentyFirstCorps() {
        var cloth = new Cloth(100).area("M-50 -50H50V50H-50Z", OLIVE);
        cloth.line("M-36 36L36 -36M36 36L-36 -36", BLUE, 4);
        for (int side = -1; side <= 1; side += 2) {
            cloth.area(Outline.path("M40 -40L24 -36L36 -24Z").placed(Placement.scaled(side, 1)), BLUE);
        }
        for (int i = 0; i < 4; i++) {
            double angle = Math.toRadians(90 * i);
            cloth.area(Outline.circle(16 * Math.sin(angle), 16 * Math.cos(angle), 13), BLUE);
        }
        return cloth.area("M-10 -2C-9 9 -3 13 0 18C3 13 9 9 10 -2Z", WHITE)
                .area("M-8 -2C-7 8 -2 11 0 15C2 11 7 8 8 -2Z", RED)
                .area("M-12 -2C-11 -12 11 -12 12 -2Z", WHITE)
                .area("M-10 -3C-9 -10 9 -10 10 -3Z", RED)
                .line("M0 -9V-15", WHITE, 3);
    }

    static Cloth twentyFourthCorps() {
        var cloth = new Cloth(137.5);
        return cloth.shield(WHITE, WHITE, 0)
                .area("M0 44C-14 26 -36 10 -36 -14C-36 -40 -8 -42 0 -24C8 -42 36 -40 36 -14C36 10 14 26 0 44Z", BLUE);
    }

    /** A black block letter on olive drab; the white and red ground came only in 1950. */
    static Cloth firstArmy() {
        return new Cloth(130)
                .area("M-42.5 -65H42.5L50 65H-50Z", OLIVE)
                .area("M-32.5 -55H32.5L40 55H22L18.5 26H-18.5L-22 55H-40ZM-16.6 -39L-17.6 9H17.6L16.6 -39Z", BLACK);
    }

    static Cloth secondArmy() {
        String two = "M-50 -62.5H50V10H-26V36H50V62.5H-50V-14H24V-38H-50Z";
        return new Cloth(125)
                .area(two, RED)
                .within(Outline.path(two), new Cloth(125).area("M-60 -2H60V70H-60Z", WHITE));
    }

    static Cloth thirdArmy() {
        return new Cloth(100)
                .disc(BLUE, BLUE, 0)
                .line(Outline.circle(0, 0, 40), RED, 8.4)
                .line("M-20 27L-9 -25H9L20 27M-16 8H16", WHITE, 6);
    }

    static Cloth fourthArmy() {
        var cloth = new Cloth(100).onPoint(RED, RED, 0);
        for (int i = 0; i < 4; i++) {
            cloth.area(
                    Outline.path("M0 0C-14 -4 -17 -14 -12 -20C-8 -25 -2 -24 0 -20C2 -24 8 -25 12 -20C17 -14 14 -4 0 0Z")
                            .placed(Placement.turned(90.0 * i)),
                    WHITE);
        }
        return cloth;
    }

    static Cloth fifthArmy() {
        Outline field = Outline.path("M-28 -55H28L50 -33V55H-50V-33Z");
        return new Cloth(110)
                .area(field, RED)
                .area(
                        "M-32 50V-8C-32 -16 -27 -18 -26 -28L-23 -34L-20 -28C-19 -18 -14 -16 -14 -10C-8 -10 -6 -30 0 -36C6 -30 8 -10 14 -10C14 -16"
                                + " 19 -18 20 -28L23 -34L26 -28C27 -18 32 -16 32 -8V50Z",
                        BLUE)
                .letters("A", 0, -22, 32, 6, WHITE)
                .letters("5", 0, 16, 26, 6, WHITE);
    }

    /** Olive drab ground until 1960. */
    static Cloth sixthArmy() {
        return new Cloth(100)
                .disc(OLIVE, OLIVE, 0)
                .area(Outline.star(6, 0, 0, 45.5, 26.3), RED)
                .area(Outline.star(6, 0, 0, 39, 22.5), WHITE)
                .letters("A", 0, -15, 32, 6, RED);
    }

    static Cloth seventhArmy() {
        String steps = "M0 -48H10V-30H24V-10H38V14H50V46H-50V14H-38V-10H-24V-30H-10V-48Z";
        return new Cloth(100)
                .area(steps, BLUE)
                .line("M-26 40V24H-18V4H-10V-16H-4V-34H4V-16H10V4H18V24H26V40", YELLOW, 5)
                .area("M-10 14H10V40H-10Z", RED);
    }

    static Cloth eighthArmy() {
        double k = 50 * Math.tan(Math.toRadians(22.5));
        return new Cloth(100)
                .area(Outline.polygon(-k, -50, k, -50, 50, -k, 50, k, k, 50, -k, 50, -50, k, -50, -k), RED)
                .area(
                        "M-14 -40L0 -32L14 -40L5 -5L40 -14L32 0L40 14L5 5L14 40L0 32L-14 40L-5 5L-40 14L-32 0L-40 -14L-5 -5Z",
                        WHITE);
    }

    static Cloth twelfthArmyGroup() {
        Outline wedge = Outline.path("M-50 -62.5H50V-26L0 62.5L-50 -26Z");
        return new Cloth(125)
                .area(wedge, WHITE)
                .within(
                        wedge,
                        new Cloth(125)
                                .area("M-60 -70H60V-28H-60Z", RED)
                                .area("M-60 2H60V70H-60Z", BLUE)
                                .line(wedge, BLACK, 5));
    }

    static Cloth armyGroundForces() {
        Outline disc = Outline.circle(0, 0, 50);
        return new Cloth(100)
                .area(disc, WHITE)
                .within(
                        disc,
                        new Cloth(100).area("M-60 -60H60V-16.7H-60Z", BLUE).area("M-60 16.7H60V60H-60Z", RED));
    }

    static Cloth armyServiceForces() {
        var edge = new Outline.Pen();
        for (int i = 0; i < 6; i++) {
            double from = Math.toRadians(60.0 * i);
            double to = Math.toRadians(60.0 * (i + 1));
            double mid = Math.toRadians(60.0 * i + 30);
            if (i == 0) {
                edge.move(0, -42);
            }
            edge.curve(
                    30 * Math.sin(from + 0.2),
                    -30 * Math.cos(from + 0.2),
                    34 * Math.sin(mid + 0.15),
                    -34 * Math.cos(mid + 0.15),
                    42 * Math.sin(to),
                    -42 * Math.cos(to));
        }
        return new Cloth(100)
                .disc(RED, RED, 0)
                .area(edge.close().outline(), WHITE)
                .area(Outline.star(0, 1, 27), BLUE);
    }

    static Cloth communicationsZone() {
        return new Cloth(144)
                .area(Outline.ellipse(0, 0, 50, 72), BLUE)
                .area("M-34 -44L-8 8L-14 10L0 56L14 10L8 8L34 -44L22 -18L18 -22L0 26L-18 -22L-22 -18Z", RED)
                .area(Outline.circle(0, -26, 23), WHITE)
                .line(Outline.circle(0, -26, 21), RED, 4)
                .area(Outline.star(0, -25, 15), BLUE)
                .line("M-42 10C-38 22 -34 30 -28 38M42 10C38 22 34 30 28 38", YELLOW, 5);
    }

    static Cloth chinaBurmaIndia() {
        var cloth = new Cloth(133);
        Outline shield = cloth.shieldOutline();
        cloth.area(shield, WHITE);
        var stripes = new Cloth(133);
        for (int i = 0; i < 4; i++) {
            stripes.area(Outline.rectangle(-50 + i * 28.57, -12, 14.29, 90), RED);
        }
        stripes.area("M-60 -70H60V-11H-60Z", BLUE);
        cloth.within(shield, stripes);
        for (int i = 0; i < 12; i++) {
            cloth.area(
                    Outline.polygon(-3.6, -11, 0, -19, 3.6, -11)
                            .placed(Placement.turned(30.0 * i).then(Placement.at(-24, -39))),
                    WHITE);
        }
        return cloth.area(Outline.circle(-24, -39, 10), WHITE).area(Outline.star(24, -38, 19), WHITE);
    }

    static Cloth alliedForceHeadquarters() {
        return new Cloth(100).disc(BLUE, RED, 8).letters("AF", 0, -18, 36, 7, WHITE);
    }

    /** White star with a red middle, wings of golden orange. */
    static Cloth armyAirForces() {
        return new Cloth(100)
                .disc(ULTRAMARINE, ULTRAMARINE, 0)
                .bothSides("M4 34C10 26 14 14 14 2C26 -4 36 -14 41 -27C43 -8 38 18 4 34Z", ORANGE)
                .bothSides("M3 24L12 4L10 -2L-1 10Z", ULTRAMARINE)
                .area(Outline.star(0, -6, 22), WHITE)
                .area(Outline.circle(0, -6, 6.6), RED);
    }

    static Cloth airborneCommand() {
        var cloth = new Cloth(153);
        return cloth.area("M-48 -36H48V34C48 56 22 66 0 76C-22 66 -48 56 -48 34Z", RED)
                .area("M-24 4C-24 -22 24 -22 24 4C18 -1 12 -1 8 4C4 -1 -4 -1 -8 4C-12 -1 -18 -1 -24 4Z", WHITE)
                .line("M-23 4L-3 36M-8 4L-1 36M8 4L1 36M23 4L3 36", WHITE, 2)
                .area("M-40 34H-6L0 26L6 34H40V40H6L3 58H-3L-6 40H-40Z", WHITE)
                .tab("AIRBORNE", 84, -76, BLACK, YELLOW);
    }

    static Cloth fifthAirForce() {
        var cloth = new Cloth(100)
                .disc(ULTRAMARINE, ULTRAMARINE, 0)
                .cord("M-16 6C4 -16 22 -26 40 -28M-14 10C8 -6 24 -12 43 -12M-12 14C8 4 24 2 44 4", ORANGE, 3.4)
                .area(Outline.star(-20, 10, 15), WHITE)
                .area(Outline.circle(-20, 10, 4.6), RED)
                .letters("5", 4, -40, 80, 9, ORANGE);
        double[][] cross = {{30, -18}, {38, 0}, {24, 4}, {32, 20}, {36, 10}};
        for (double[] star : cross) {
            cloth.area(Outline.star(star[0], star[1], 4.6), WHITE);
        }
        return cloth;
    }
}
