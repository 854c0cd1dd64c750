package org.honorsdue.insignia.sleeve;

import static org.honorsdue.insignia.sleeve.Cloth.BLACK;
import static org.honorsdue.insignia.sleeve.Cloth.BLUE;
import static org.honorsdue.insignia.sleeve.Cloth.GOLD;
import static org.honorsdue.insignia.sleeve.Cloth.GRAY;
import static org.honorsdue.insignia.sleeve.Cloth.GREEN;
import static org.honorsdue.insignia.sleeve.Cloth.KHAKI;
import static org.honorsdue.insignia.sleeve.Cloth.LIGHT_BLUE;
import static org.honorsdue.insignia.sleeve.Cloth.OLIVE;
import static org.honorsdue.insignia.sleeve.Cloth.RED;
import static org.honorsdue.insignia.sleeve.Cloth.WHITE;
import static org.honorsdue.insignia.sleeve.Cloth.YELLOW;

import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Placement;

/** Divisions numbered 65 to 104, and the cavalry. One insigne a method, after its blazon. */
final class WarDivisions {
    private WarDivisions() {}

    static Cloth sixtyFifth() {
        return new Cloth(125)
                .shield(BLUE, BLUE, 0)
                .area("M-3.5 52V-50L0 -58L3.5 -50V52Z", WHITE)
                .area("M3 -34C14 -36 22 -30 30 -36C32 -20 32 -8 28 4C20 -2 12 -4 3 -4Z", WHITE)
                .area("M-3 -30L-24 -20L-14 -14L-3 -10Z", WHITE);
    }

    static Cloth seventyFirst() {
        return new Cloth(100)
                .disc(WHITE, RED, 7)
                .within(
                        Outline.circle(0, 0, 50),
                        new Cloth(100)
                                .line(Outline.path("M-26 -24H0L-16 28").placed(Placement.turned(12)), BLUE, 10)
                                .line(Outline.path("M16 -26V28").placed(Placement.turned(12)), BLUE, 10));
    }

    static Cloth seventySixth() {
        var cloth = new Cloth(123.5);
        return cloth.shield(RED, RED, 0)
                .within(
                        cloth.shieldOutline(),
                        new Cloth(123.5).area("M-50 -62H50V-24H-50Z", BLUE).area("M-50 -25H50V-21.5H-50Z", OLIVE))
                .area("M-32 -54H32V-47H32V-34H24V-47H4V-34H-4V-47H-24V-34H-32Z", WHITE);
    }

    static Cloth seventyEighth() {
        var field = new Outline.Pen().arc(0, 25, 50, 50, -90, 90, true).close().outline();
        return new Cloth(50)
                .area(field, RED)
                .area("M-22 -14L6 -8L2 -1L30 14L-4 8L2 0Z", WHITE)
                .within(field, new Cloth(50).line(field, OLIVE, 2));
    }

    static Cloth seventyNinth() {
        return new Cloth(122)
                .shield(BLUE, GRAY, 5)
                .area("M-5 -44H5V-30H18V-20H5V-6H28V4H5V44H-5V4H-28V-6H-5V-20H-18V-30H-5Z", GRAY);
    }

    static Cloth eightieth() {
        var cloth = new Cloth(110);
        return cloth.shield(OLIVE, WHITE, 4)
                .within(
                        cloth.shieldOutline(),
                        new Cloth(110).area("M-42 10L-22 -22L-4 6L0 -36L22 4L26 -18L44 12V20L0 56L-44 20Z", OLIVE))
                .line("M-40 14L-22 -18L-4 14Z", WHITE, 6)
                .area("M-40 14L-22 -18L-4 14Z", BLUE)
                .line("M40 14L22 -18L4 14Z", WHITE, 6)
                .area("M40 14L22 -18L4 14Z", BLUE)
                .line("M-22 14L0 -30L22 14Z", WHITE, 6)
                .area("M-22 14L0 -30L22 14Z", BLUE);
    }

    static Cloth eightySecond() {
        return new Cloth(147.4)
                .area("M-50 -26.3H50V73.7H-50Z", RED)
                .area(Outline.circle(0, 23.7, 36.8), BLUE)
                .line("M-24 44V20C-24 -2 -5 -2 -5 20V44M-24 26H-5", WHITE, 5.3)
                .line("M24 44V20C24 -2 5 -2 5 20V44M5 26H24", WHITE, 5.3)
                .tab("AIRBORNE", 72, -73, BLUE, WHITE);
    }

    static Cloth eightyThird() {
        return new Cloth(88)
                .area("M-50 -44H50L0 44Z", BLACK)
                .line(Outline.circle(0, -15, 20), GOLD, 4)
                .line("M-9 -33V3M9 -33V3M-9 -15H9", GOLD, 4)
                .line(Outline.circle(0, -15, 6.5), GOLD, 3)
                .line("M0 -40V-22M0 -8V16", GOLD, 3.4);
    }

    static Cloth eightyFifth() {
        return new Cloth(100)
                .disc(KHAKI, KHAKI, 0)
                .line("M6 -20C-4 -38 -34 -30 -34 0C-34 30 -4 38 6 20", RED, 8)
                .line("M6 -28V28H12C42 28 42 -28 12 -28H6", RED, 8);
    }

    static Cloth eightySeventh() {
        return new Cloth(100)
                .disc(GREEN, GREEN, 0)
                .area("M-22 -4C-20 20 -6 28 0 38C6 28 20 20 22 -4Z", GOLD)
                .area("M-27 -4C-26 -20 -14 -28 0 -28C14 -28 26 -20 27 -4Z", 0xC08A20)
                .line("M-20 -8L-10 -24M-8 -6L0 -27M8 -6L10 -24M20 -8L18 -18M-26 -12H26", 0x6E4C0C, 1.6)
                .cord("M0 -28C0 -34 2 -38 6 -40", GOLD, 5);
    }

    static Cloth eightyEighth() {
        var cloth = new Cloth(100);
        Outline ring = Outline.ellipse(0, -24, 17, 22.5);
        for (int i = 0; i < 4; i++) {
            cloth.line(ring.placed(Placement.turned(90.0 * i)), BLUE, 7);
        }
        return cloth;
    }

    static Cloth eightyNinth() {
        return new Cloth(106)
                .area(Outline.ellipse(0, 0, 50, 53), KHAKI)
                .line(Outline.circle(0, 0, 36), BLACK, 7)
                .line("M-26 -20L-13 26L0 -14L13 26L26 -20", BLACK, 7);
    }

    static Cloth ninetieth() {
        return new Cloth(100)
                .area("M-50 -50H50V50H-50Z", KHAKI)
                .line(Outline.ellipse(0, 4, 36, 24), RED, 7)
                .line("M-26 -36H26M0 -36V30", RED, 8);
    }

    static Cloth ninetyFirst() {
        return new Cloth(157)
                .area(
                        "M-6 78V52H-50L-26 26H-40L-18 -4H-30L-10 -34H-18L0 -78L18 -34H10L30 -4H18L40 26H26L50 52H6V78Z",
                        0x1F5A36);
    }

    static Cloth ninetyThird() {
        return new Cloth(100)
                .disc(BLACK, BLACK, 0)
                .area("M-30 8C-32 -16 -16 -30 2 -30C20 -30 31 -16 30 6Z", LIGHT_BLUE)
                .area("M-40 14C-34 8 -28 6 -22 6H28C34 8 38 12 42 18C26 14 -20 14 -40 14Z", LIGHT_BLUE)
                .line("M-22 -22C-10 -38 14 -38 24 -22", LIGHT_BLUE, 5)
                .line("M-31 6C-10 1 10 1 31 6", BLACK, 2);
    }

    /** Gray above with a black 9, black below with a gray 4: the viewer's upper left is gray. */
    static Cloth ninetyFourth() {
        Outline disc = Outline.circle(0, 0, 50);
        return new Cloth(100)
                .area(disc, GRAY)
                .within(disc, new Cloth(100).area("M60 -60V60H-60Z", BLACK))
                .within(disc, new Cloth(100).line(disc, BLACK, 10))
                .letters("9", -16, -34, 42, 7, BLACK)
                .letters("4", 16, -6, 40, 7, GRAY);
    }

    static Cloth ninetyFifth() {
        return new Cloth(144)
                .area(Outline.ellipse(0, 0, 50, 72), BLUE)
                .line("M2 8C-30 14 -32 -40 0 -40C28 -40 28 -4 20 16C16 30 6 42 -8 48", WHITE, 15)
                .line("M2 8C-30 14 -32 -40 0 -40C28 -40 28 -4 20 16C16 30 6 42 -8 48", RED, 9)
                .line("M-30 -38L0 48L30 -38", WHITE, 10)
                .line("M17 -24C24 -8 22 6 18 20", WHITE, 15)
                .line("M17.5 -26C24 -8 22 6 17 24", RED, 9);
    }

    static Cloth ninetySixth() {
        return new Cloth(67)
                .area("M-22 -33H22L50 0L22 33H-22L-50 0Z", OLIVE)
                .area("M-14 -26L12 0L-14 26L-40 0Z", WHITE)
                .area("M14 -26L40 0L14 26L-12 0Z", BLUE);
    }

    static Cloth ninetySeventh() {
        return new Cloth(137.5)
                .shield(BLUE, WHITE, 4)
                .line("M0 54V-44", WHITE, 6)
                .line("M-24 -34V-16C-24 2 24 2 24 -16V-34", WHITE, 6)
                .area("M0 -58L8 -40H-8ZM-24 -50L-16 -32H-32ZM24 -50L32 -32H16Z", WHITE)
                .line("M-12 16H12", WHITE, 5);
    }

    static Cloth ninetyNinth() {
        var cloth = new Cloth(111);
        Outline shield = Outline.path("M-50 -55.5H50V10L0 55.5L-50 10Z");
        cloth.area(shield, BLACK);
        var band = new Cloth(111);
        double side = 100.0 / 6;
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 6; column++) {
                band.area(
                        Outline.rectangle(-50 + column * side, -30 + row * side, side + 0.1, side + 0.1),
                        (row + column) % 2 == 0 ? WHITE : BLUE);
            }
        }
        return cloth.within(shield, band);
    }

    static Cloth hundredth() {
        var cloth = new Cloth(129);
        cloth.shield(BLUE, BLUE, 0).letters("100", 0, -24, 40, 9, WHITE);
        return cloth.within(Outline.rectangle(-50, -4, 100, 40), new Cloth(129).letters("100", 0, -24, 40, 9, GOLD));
    }

    static Cloth hundredSecond() {
        return new Cloth(100)
                .disc(BLUE, BLUE, 0)
                .line(Outline.circle(0, -6, 25), GOLD, 8)
                .line("M-11 -17H11L-11 5H11", GOLD, 6.5)
                .line(Outline.arc(0, -2, 40, 130, 230), GOLD, 7);
    }

    static Cloth hundredThird() {
        Outline field = Outline.ellipse(0, 0, 50, 47.6);
        return new Cloth(95.2)
                .area(field, YELLOW)
                .within(field, new Cloth(95.2).area("M-50 20H50V50H-50Z", 0x3A4A9E))
                .line("M0 22V-34", GREEN, 12)
                .cord("M0 6H-20V-14", GREEN, 8)
                .cord("M0 0H20V-22", GREEN, 8)
                .cord("M0 -34V10", GREEN, 12);
    }

    /** The horse's head is a simple outline of our own. */
    static Cloth firstCavalry() {
        var cloth = new Cloth(135.5);
        Outline shield = Outline.path(
                "M-42 -67H42C48 -67 50 -62 50 -56C50 -8 30 42 6 65C2 68 -2 68 -6 65C-30 42 -50 -8 -50 -56C-50 -62"
                        + " -48 -67 -42 -67Z");
        cloth.area(shield, YELLOW);
        cloth.within(shield, new Cloth(135.5).area("M-60 -50L-60 -26L44 60L56 44Z", BLACK));
        cloth.area(
                "M14 -26C12 -36 16 -46 24 -52L22 -58L28 -54L32 -58L33 -51C40 -46 43 -38 42 -30L45 -10L24 -18L27 -30L20 -26C18 -24 15 -23 14 -26Z",
                BLACK);
        return cloth.within(shield, new Cloth(135.5).line(shield, BLACK, 3));
    }

    static Cloth secondCavalry() {
        var cloth = new Cloth(128.6);
        Outline shield = Outline.path(
                "M-42 -64H42C48 -64 50 -59 50 -54C50 -8 30 40 6 62C2 65 -2 65 -6 62C-30 40 -50 -8 -50 -54C-50 -59"
                        + " -48 -64 -42 -64Z");
        return cloth.area(shield, YELLOW)
                .within(shield, new Cloth(128.6).area("M0 -20L54 30V50L0 2L-54 50V30Z", BLUE))
                .area(Outline.star(8, -22, -40, 11, 5.5), BLUE)
                .area(Outline.star(8, 22, -40, 11, 5.5), BLUE);
    }

    static Cloth eleventhAirborne() {
        var cloth = new Cloth(130);
        Outline shield = Outline.path("M-48 -32H48V20C48 44 22 56 0 65C-22 56 -48 44 -48 20Z");
        return cloth.area(shield, BLUE)
                .bothSides("M16 4C28 -4 36 -6 44 -20C46 -6 44 8 34 16C28 20 20 20 14 16Z", WHITE)
                .area(Outline.circle(0, 10, 23), WHITE)
                .area(Outline.circle(0, 10, 20), RED)
                .letters("11", 0, -4, 28, 6, WHITE)
                .tab("AIRBORNE", 72, -65, BLUE, WHITE);
    }

    /** The claw is a simple outline of our own. */
    static Cloth seventeenthAirborne() {
        return new Cloth(130)
                .area(Outline.circle(0, 19, 46), BLACK)
                .area(
                        "M34 -10C26 -2 16 0 8 8C-4 6 -18 8 -28 18C-32 24 -32 30 -30 36C-26 26 -18 20 -8 20C-16 28 -20 38 -16 50C-12 38 -6 30"
                                + " 4 26C2 36 4 46 12 52C12 40 14 32 18 24C26 20 34 14 40 4Z",
                        GOLD)
                .tab("AIRBORNE", 72, -65, BLACK, GOLD);
    }

    /** The eagle's head is a simple outline of our own. */
    static Cloth hundredFirst() {
        return new Cloth(153)
                .area("M-50 -34H50V36C50 58 24 68 0 76C-24 68 -50 58 -50 36Z", BLACK)
                .area(
                        "M-32 -6C-22 -24 4 -28 22 -18C38 -8 42 12 40 34C36 48 24 58 10 66C12 56 8 50 2 46C-4 42 -6 36 -4 30C-12 28 -20 24"
                                + " -24 20L-6 12C-14 6 -22 2 -32 -6Z",
                        WHITE)
                .area("M-8 -4C-20 -14 -34 -10 -42 2C-44 8 -42 12 -38 16C-36 8 -28 6 -18 8L-4 12Z", YELLOW)
                .area("M-24 20L-6 12L-4 18C-10 24 -18 24 -24 20Z", YELLOW)
                .area("M-28 15L-10 11L-8 14C-14 18 -22 18 -28 15Z", RED)
                .area(Outline.ellipse(0, -7, 4.4, 3.4), BLACK)
                .area(Outline.circle(-1, -7, 1.3), YELLOW)
                .line("M10 -14C20 -8 26 2 26 14M4 4C14 8 20 18 18 32M2 20C10 24 14 34 12 46", GRAY, 2)
                .tab("AIRBORNE", 84, -76, BLACK, YELLOW);
    }
}
