package org.honorsdue.insignia.medal;

import java.util.List;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Outline;
import org.honorsdue.insignia.drawing.Paint;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.medal.Relief.Wings;
import org.honorsdue.insignia.ribbon.Metal;

/** Sketches of the round medals, each after the official description of its face; 100 across, middle at 0,0. */
final class RoundPendants {
    private RoundPendants() {}

    private static Relief disc() {
        return new Relief(Metal.OLD_BRONZE).disc();
    }

    /** Eagle with spread wings on a closed book and sword, three words round it. */
    static List<Mark> goodConduct() {
        return disc().raised("M-24 22H24V31H-24Z")
                .groove("M-24 28H24", 1)
                .ridge("M-32 17H32M-25 13V21", 2.4)
                .eagle(0, -4, 50, Wings.RAISED)
                .legendAbove("EFFICIENCY HONOR", 35, 8)
                .legendBelow("FIDELITY", 43, 8)
                .marks();
    }

    /** Armed Grecian figure on an oak branch, sword raised. */
    static List<Mark> americanDefense() {
        return disc().raised("M-5 -20C-9 -8 -12 10 -14 27H12C10 10 8 -8 5 -20Z")
                .raised(Outline.circle(0, -26, 5.2))
                .raised("M-4 -31C0 -36 6 -34 8 -28C4 -30 0 -31 -4 -31Z")
                .raised(Outline.ellipse(-14, -3, 7.5, 11))
                .ridge("M5 -18L17 -24", 3.4)
                .ridge("M17 -20L21 -41M14 -26L22 -24", 2)
                .groove("M-3 -6L-6 26M2 -6L3 26", 1)
                .ridge("M-26 30C-10 34 10 34 26 29", 2.4)
                .raised("M-30 28C-36 24 -35 18 -28 17C-26 22 -26 26 -30 28Z")
                .raised("M30 27C36 23 35 17 28 16C26 21 26 25 30 27Z")
                .legendAbove("AMERICAN DEFENSE", 36, 7.5)
                .marks();
    }

    /** Helmeted head in profile over a sheathed sword with oak leaves and palm. */
    static List<Mark> womensArmyCorps() {
        return disc().ridge("M-27 22L27 -22", 3)
                .raised(
                        "M-7 26C-10 16 -16 12 -16 2C-18 -14 -6 -26 8 -23C18 -20 20 -10 16 -4C21 2 22 5 18 6C19 12 18 16 10 16C8 20 9 23 11"
                                + " 26Z")
                .raised("M-18 0C-22 -20 -6 -34 14 -28C22 -25 22 -16 18 -12C6 -16 -4 -12 -8 2C-12 4 -15 4 -18 0Z")
                .groove("M10 -6H14M12 8H17", 1.4)
                .legendAbove("WOMEN'S", 35, 8)
                .legendBelow("ARMY CORPS", 43, 8)
                .marks();
    }

    /** Cruiser under way, bomber above, a submarine sinking, factories behind. */
    static List<Mark> americanCampaign() {
        return disc().raised("M-24 -8V-14H-18V-20H-14V-14H-8V-18H-4V-8H2V-15H8V-8Z")
                .raised(
                        "M-36 6H-26V1H-14V-5H-10V-1H-4V-10H1V-1H9V-6H13V1H24V6H36C33 12 30 15 27 16H-28C-32 14 -35 10 -36 6Z")
                .ridge("M-1 -10V-16M11 -6V-11", 1.2)
                .raised("M-22 -27C-10 -29 8 -29 22 -27C24 -26 24 -25 22 -24H6L3 -19H-1L1 -24H-16L-20 -21H-23L-22 -24Z")
                .ridge(
                        "M-36 20C-30 17 -26 23 -20 20C-14 17 -10 23 -4 20C2 17 6 23 12 20C18 17 22 23 28 20C32 18 34 19 36 20",
                        1.8)
                .raised("M6 33L20 23L24 26L12 36Z")
                .legendAbove("AMERICAN CAMPAIGN", 36, 7)
                .marks();
    }

    /** Landing in the tropics: palms, soldiers, ships behind. */
    static List<Mark> asiaticPacific() {
        return disc().ridge("M-22 28C-24 10 -22 -4 -15 -16M17 28C20 14 20 4 16 -8", 3)
                .raised("M-15 -17C-24 -24 -32 -20 -35 -12C-28 -16 -22 -15 -15 -17Z")
                .raised("M-15 -17C-17 -28 -8 -32 -1 -29C-7 -26 -10 -22 -15 -17Z")
                .raised("M-15 -17C-5 -22 3 -17 4 -10C-2 -14 -8 -15 -15 -17Z")
                .raised("M16 -9C8 -15 2 -12 0 -5C6 -8 11 -8 16 -9Z")
                .raised("M16 -9C17 -19 25 -21 31 -17C25 -15 20 -12 16 -9Z")
                .raised("M16 -9C26 -11 32 -6 32 1C27 -4 22 -7 16 -9Z")
                .raised("M-8 28C-8 18 -6 12 -2 8C0 4 5 5 5 9C9 13 10 20 9 28Z")
                .ridge("M-10 16L14 8", 1.8)
                .raised("M20 12H34C33 16 32 18 30 18H22Z")
                .ridge("M-38 30C-26 34 -14 28 -2 31C12 34 24 28 38 30", 2)
                .legendAbove("ASIATIC PACIFIC CAMPAIGN", 37, 5.6)
                .marks();
    }

    /** Landing craft and soldiers going ashore under fire, aircraft above. */
    static List<Mark> europeanAfricanMiddleEastern() {
        return disc().raised("M-38 4C-20 0 -8 -2 4 -10V-18H14V-10H26C27 0 24 10 18 18H-8L-30 12Z")
                .groove("M4 -10L-8 18M14 -10V-2", 1.1)
                .raised("M-26 27C-26 19 -24 14 -20 12C-19 8 -15 9 -15 12C-11 16 -12 22 -12 27Z")
                .raised("M-6 31C-6 23 -4 18 0 16C1 12 5 13 5 16C9 20 8 26 8 31Z")
                .raised("M14 29C14 22 16 18 19 16C20 13 24 13 24 16C27 20 27 25 26 29Z")
                .ridge("M-30 22L-8 14M-10 26L14 18M12 24L30 17", 1.4)
                .raised("M-30 -20H-12L-8 -24H-5L-7 -20L-2 -18L-7 -16L-5 -12H-8L-12 -16H-30C-32 -17 -32 -19 -30 -20Z")
                .legendAbove("EUROPEAN AFRICAN", 37, 5.4)
                .legendBelow("MIDDLE EASTERN CAMPAIGN", 43.5, 5.4)
                .marks();
    }

    /** Standing Liberation, a foot on the war god's helmet, broken sword in her hands. */
    static List<Mark> worldWarTwoVictory() {
        var relief = disc();
        for (int i = 0; i < 15; i++) {
            double angle = Math.toRadians(-84 + 12.0 * i);
            relief.add(new Mark.Line(
                    Outline.through(
                            18 * Math.sin(angle),
                            -4 - 18 * Math.cos(angle),
                            40 * Math.sin(angle),
                            -4 - 40 * Math.cos(angle)),
                    relief.metal().light(),
                    1,
                    0.75,
                    Mark.Ends.BUTT,
                    List.of()));
        }
        return relief.raised("M-6 -22C-12 -6 -13 16 -15 38H14C12 20 13 -4 6 -22Z")
                .raised(Outline.circle(1, -29, 5.4))
                .ridge("M-5 -18L-19 -8L-13 -3M5 -18L18 -12", 3.2)
                .ridge("M-22 0L-8 -6M14 -16L24 -8", 2)
                .groove("M-2 -10L-6 37M2 -10L5 37", 1)
                .raised("M10 38C8 30 12 25 18 25C25 25 28 31 27 38Z")
                .words("WORLD WAR II", 5, 7.5)
                .marks();
    }

    /** Towers of the bridge at Remagen. */
    static List<Mark> occupation() {
        return disc().raised("M-33 28V-2C-33 -10 -30 -14 -25 -16C-20 -14 -17 -10 -17 -2V28Z")
                .raised("M33 28V-2C33 -10 30 -14 25 -16C20 -14 17 -10 17 -2V28Z")
                .raised("M-17 22C-6 2 6 2 17 22H12C5 10 -5 10 -12 22Z")
                .ridge("M-17 22H17M-8 13V22M0 9V22M8 13V22", 1.5)
                .groove("M-28 4H-22M-28 12H-22M22 4H28M22 12H28M-28 20H-22M22 20H28", 2)
                .ridge("M-37 31C-24 35 -12 29 0 32C12 35 24 29 37 31", 1.8)
                .legendAbove("ARMY OF OCCUPATION", 36, 7)
                .marks();
    }

    /** Eagle ringed by barbed wire and bayonet points. */
    static List<Mark> prisonerOfWar() {
        var relief = disc().eagle(0, 0, 58, Wings.RAISED);
        relief.ridge(Outline.circle(0, 0, 38), 1.5);
        for (int i = 0; i < 16; i++) {
            double degrees = 22.5 * i;
            relief.ridge(
                    Outline.path(i % 4 == 2 ? "M-2.4 -35H2.4L0 -44Z" : "M-3 -40L3 -36M-3 -36L3 -40")
                            .placed(Placement.turned(degrees)),
                    1.3);
        }
        return relief.marks();
    }

    /** Transport aircraft within a wreath of wheat, the bear of Berlin below. */
    static List<Mark> humaneAction() {
        return disc().wreath(37, 13, 18, 150, 11)
                .raised(
                        "M-3 -22C-3 -27 3 -27 3 -22L4 -8L28 -2V3L4 1L3 12L10 17V20L0 18L-10 20V17L-3 12L-4 1L-28 3V-2L-4 -8Z")
                .raised("M-7 22H7V30C7 34 3 37 0 38C-3 37 -7 34 -7 30Z")
                .marks();
    }

    /** Winged Victory standing full face. */
    static List<Mark> firstWorldWarVictory() {
        return disc().bothSides("M5 -18C18 -34 30 -34 38 -26C36 -18 32 -8 22 6C16 -2 10 -6 6 -8Z")
                .raised("M-6 -20C-11 -2 -11 18 -13 38H13C11 18 11 -2 6 -20Z")
                .raised(Outline.circle(0, -27, 5.6))
                .ridge("M6 -14L14 12M14 2V26M-6 -14L-15 8", 2.6)
                .raised(Outline.ellipse(-17, 12, 6, 8))
                .groove("M-3 -8L-5 37M3 -8L4 37", 1)
                .marks();
    }

    /** A general in profile, four stars above, sword and laurel beside him. */
    static List<Mark> occupationOfGermany() {
        var relief = disc().raised(
                        "M-14 30C-16 20 -10 16 -6 13C-12 8 -13 2 -12 -4C-14 -16 -2 -24 8 -20C14 -17 14 -10 12 -6C16 0 16 3 13 4C14 10"
                                + " 12 13 6 13C8 18 16 20 18 30Z")
                .raised("M-15 -10C-14 -22 2 -28 14 -20C18 -17 22 -15 22 -12H-4C-8 -12 -12 -11 -15 -10Z")
                .ridge("M-30 22V-16M-34 -8H-26", 2)
                .ridge("M30 26C34 12 32 0 26 -12", 2);
        for (int i = 0; i < 4; i++) {
            relief.raised(Outline.star(-13.5 + 9 * i, -33, 3.6));
        }
        return relief.words("1918 1923", 33, 6).marks();
    }

    /** A figure with the flag, for the Philippine Independence Medal. */
    static List<Mark> philippineIndependence() {
        return new Relief(Metal.GOLD)
                .disc()
                .raised("M-6 -20C-10 -4 -11 16 -13 34H13C11 16 10 -4 6 -20Z")
                .raised(Outline.circle(0, -26, 5.4))
                .ridge("M6 -14L18 -24V30", 2.2)
                .raised("M18 -26C24 -30 30 -22 36 -26V-12C30 -8 24 -16 18 -12Z")
                .ridge("M-20 -14L-26 20M26 2L24 26", 2.2)
                .marks();
    }

    /** A scalloped disc with a figure and three stars, for the Philippine Defense Medal. */
    static List<Mark> philippineDefense() {
        var pen = new Outline.Pen();
        for (int i = 0; i < 10; i++) {
            double at = Math.toRadians(36.0 * i);
            double next = Math.toRadians(36.0 * (i + 1));
            double tip = Math.toRadians(36.0 * i + 18);
            if (i == 0) {
                pen.move(44 * Math.sin(at), -44 * Math.cos(at));
            }
            pen.curve(
                    50 * Math.sin(at + 0.1),
                    -50 * Math.cos(at + 0.1),
                    52 * Math.sin(tip + 0.12),
                    -52 * Math.cos(tip + 0.12),
                    44 * Math.sin(next),
                    -44 * Math.cos(next));
        }
        var relief = new Relief(Metal.GOLD).flan(pen.close().outline());
        relief.add(Mark.line(Outline.circle(0, 0, 36), 0x2E6B3F, 5));
        relief.add(Mark.area(
                Outline.circle(0, 0, 33),
                new Paint.Outward(
                        -10,
                        -12,
                        48,
                        List.of(new Paint.Stop(0, Metal.GOLD.light()), new Paint.Stop(1, Metal.GOLD.shade())))));
        return relief.raised("M-6 -12C-9 2 -9 16 -11 28H11C9 16 9 2 6 -12Z")
                .raised(Outline.circle(0, -16, 4.6))
                .raised(Outline.ellipse(-12, 6, 6, 9))
                .ridge("M6 -6L16 -16V8", 2)
                .raised(Outline.star(0, -27, 3.6))
                .raised(Outline.star(-9, -24, 3.2))
                .raised(Outline.star(9, -24, 3.2))
                .marks();
    }
}
