package org.honorsdue.insignia.drawing;

/**
 * Where and how large a group of marks lies: {@code x' = a x + c y + e}, {@code y' = b x + d y + f}. Lengths in inches,
 * angles in degrees clockwise as seen.
 */
public record Placement(double a, double b, double c, double d, double e, double f) {
    public static final Placement HERE = new Placement(1, 0, 0, 1, 0, 0);

    public static Placement at(double x, double y) {
        return new Placement(1, 0, 0, 1, x, y);
    }

    public static Placement scaled(double factor) {
        return new Placement(factor, 0, 0, factor, 0, 0);
    }

    public static Placement scaled(double across, double down) {
        return new Placement(across, 0, 0, down, 0, 0);
    }

    public static Placement turned(double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return new Placement(cos, sin, -sin, cos, 0, 0);
    }

    /** Left and right swapped about the upright through the origin. */
    public static Placement mirrored() {
        return new Placement(-1, 0, 0, 1, 0, 0);
    }

    /** This first, then the other. */
    public Placement then(Placement next) {
        return new Placement(
                next.a * a + next.c * b,
                next.b * a + next.d * b,
                next.a * c + next.c * d,
                next.b * c + next.d * d,
                next.a * e + next.c * f + next.e,
                next.b * e + next.d * f + next.f);
    }

    double x(double x, double y) {
        return a * x + c * y + e;
    }

    double y(double x, double y) {
        return b * x + d * y + f;
    }
}
