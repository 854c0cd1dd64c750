package org.honorsdue.insignia.drawing;

import java.util.List;

/**
 * A sheet with marks on it.
 *
 * @param width in inches
 * @param height in inches
 */
public record Drawing(double width, double height, List<Mark> marks) {
    public Drawing {
        marks = List.copyOf(marks);
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException("A drawing needs a width and a height above nothing.");
        }
    }

    /** This drawing as a mark of another, its upper left corner at a place. */
    public Mark at(double x, double y) {
        return Mark.group(Placement.at(x, y), marks);
    }

    /** This drawing as a mark of another, its middle at a place. */
    public Mark centred(double x, double y) {
        return at(x - width / 2, y - height / 2);
    }
}
