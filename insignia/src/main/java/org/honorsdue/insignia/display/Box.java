package org.honorsdue.insignia.display;

import org.honorsdue.reference.insignia.Inches;

/** A rectangle in the opening of a frame; {@code x} and {@code y} are its upper left corner from that of the opening. */
public record Box(Inches x, Inches y, Inches width, Inches height) {

    public Inches right() {
        return x.plus(width);
    }

    public Inches foot() {
        return y.plus(height);
    }

    public Inches middle() {
        return x.plus(width.half());
    }

    /** Whether the two share any area; touching edges do not. */
    public boolean overlaps(Box other) {
        return x.compareTo(other.right()) < 0
                && other.x.compareTo(right()) < 0
                && y.compareTo(other.foot()) < 0
                && other.y.compareTo(foot()) < 0;
    }

    public boolean liesWithin(Box other) {
        return x.compareTo(other.x) >= 0
                && y.compareTo(other.y) >= 0
                && right().compareTo(other.right()) <= 0
                && foot().compareTo(other.foot()) <= 0;
    }

    /** Larger by a border on every side. */
    public Box grown(Inches border) {
        return new Box(x.minus(border), y.minus(border), width.plus(border.times(2)), height.plus(border.times(2)));
    }

    public Box at(Inches newX, Inches newY) {
        return new Box(newX, newY, width, height);
    }

    /** The free way between two boxes that lie beside or above each other: the longer of the two directions. */
    public Inches gapTo(Box other) {
        Inches across = x.compareTo(other.x) <= 0 ? other.x.minus(right()) : x.minus(other.right());
        Inches down = y.compareTo(other.y) <= 0 ? other.y.minus(foot()) : y.minus(other.foot());
        return across.max(down);
    }
}
