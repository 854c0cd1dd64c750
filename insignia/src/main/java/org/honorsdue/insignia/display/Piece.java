package org.honorsdue.insignia.display;

import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.insignia.Inches;

/**
 * One thing to lay in the case.
 *
 * @param id stable, for moving and locking it: the award id, or the kind and a number
 * @param drawing in its true size, which is {@code width} by {@code height}
 * @param pending not settled yet: its place is marked and stays empty
 * @param parts what somebody has to have in hand for it, one line each
 * @param authority where the award is proved; empty for what is no award
 * @param sizeGrade how far its size was verified
 */
public record Piece(
        String id,
        Kind kind,
        String name,
        Inches width,
        Inches height,
        Drawing drawing,
        boolean pending,
        List<Part> parts,
        String authority,
        Grade sizeGrade) {
    public Piece {
        parts = List.copyOf(parts);
    }

    /**
     * A line of the parts list.
     *
     * @param size as on a rule, in inches; empty for devices that come in one size
     */
    public record Part(String what, int count, String size) {}
}
