package org.honorsdue.insignia.display;

import java.util.List;
import org.honorsdue.reference.Grade;

/**
 * A rule that the plan does not keep.
 *
 * @param says what, where and what to do
 * @param pieces ids of the pieces it is about
 * @param grade of the rule: nearly all are the practice of the trade, from memory
 */
public record Breach(Rule rule, String says, List<String> pieces, Grade grade) {
    public Breach {
        pieces = List.copyOf(pieces);
    }

    /** What the rule is about. */
    public enum Rule {
        /** It does not fit and was left out. */
        ROOM,
        /** A place the user chose is taken or lies outside. */
        PLACE_TAKEN,
        MARGIN,
        CLEAR_SPACE,
        /** Order of wear. */
        ORDER,
        /** Unit awards stand on the other side. */
        SIDE,
        BALANCE,
        DEPTH,
        /** A piece is named that the case does not have. */
        UNKNOWN_PIECE
    }
}
