package org.honorsdue.scanning.form;

/** A rectangle; the unit is said where it is used. The far edges are exclusive. */
public record Area(double x, double y, double width, double height) {
    public Area {
        if (!(width >= 0) || !(height >= 0)) {
            throw new IllegalArgumentException("A rectangle of %s by %s.".formatted(width, height));
        }
    }

    public static Area between(double left, double top, double right, double bottom) {
        return new Area(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public double size() {
        return width * height;
    }

    /** The part both share; of no size where they do not meet. */
    public Area meet(Area other) {
        return between(
                Math.max(x, other.x),
                Math.max(y, other.y),
                Math.min(right(), other.right()),
                Math.min(bottom(), other.bottom()));
    }

    /** Shrunk (or, negative, grown) on all four sides. */
    public Area inset(double by) {
        return between(x + by, y + by, right() - by, bottom() - by);
    }
}
