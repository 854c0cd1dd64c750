package org.honorsdue.insignia.display;

import org.honorsdue.reference.insignia.Inches;

/**
 * A piece at its place.
 *
 * @param number on the plan and in the parts list, from 1
 * @param x of the upper left corner, from that of the opening
 * @param fixed the user put or locked it there
 */
public record Placed(int number, Piece piece, Inches x, Inches y, boolean fixed) {
    public Box box() {
        return new Box(x, y, piece.width(), piece.height());
    }
}
