package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;

/**
 * A row of pieces across a case, centred on its upright middle line. Medals hang from one line; anything else is
 * centred on the height of the row.
 */
record Band(List<Piece> pieces) {
    Band {
        pieces = List.copyOf(pieces);
    }

    private boolean isMedals() {
        return pieces.get(0).kind() == Kind.MEDAL;
    }

    Inches height() {
        return pieces.stream().map(Piece::height).reduce(Inches.ZERO, Inches::max);
    }

    /** From the middle of one piece to the middle of the next. */
    private static Inches pitch(Piece left, Piece right, Spacing spacing) {
        Inches touching = left.width().plus(right.width()).half();
        if (left.kind() == Kind.MEDAL && right.kind() == Kind.MEDAL) {
            return spacing.medalPitch().max(touching.plus(spacing.least()));
        }
        return touching.plus(spacing.beside(left.kind(), right.kind()));
    }

    Inches width(Spacing spacing) {
        Inches width = pieces.get(0).width().half();
        for (int i = 1; i < pieces.size(); i++) {
            width = width.plus(pitch(pieces.get(i - 1), pieces.get(i), spacing));
        }
        return width.plus(pieces.get(pieces.size() - 1).width().half());
    }

    /** The upper left corner of each piece, the band centred on a middle line with its top at a height. */
    List<Box> boxes(Inches middle, Inches top, Spacing spacing) {
        var boxes = new ArrayList<Box>();
        Inches x =
                middle.minus(width(spacing).half()).plus(pieces.get(0).width().half());
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (i > 0) {
                x = x.plus(pitch(pieces.get(i - 1), piece, spacing));
            }
            Inches y =
                    isMedals() ? top : top.plus(height().minus(piece.height()).half());
            boxes.add(new Box(
                    Spacing.marked(x.minus(piece.width().half())), Spacing.marked(y), piece.width(), piece.height()));
        }
        return boxes;
    }

    /** How far apart things stand: at ease, close, rows closer than is usual, or all as close as can be. */
    record Spacing(
            Inches medalPitch, Inches medalRows, Inches badge, Inches patch, Inches groups, Inches least, int ease) {

        static List<Spacing> all(InsigniaTables tables) {
            Inches least = length(tables, "least-gap");
            Inches pitch = length(tables, "medal-pitch");
            Inches rows = length(tables, "medal-rows");
            Inches badge = length(tables, "around-badge");
            Inches patch = length(tables, "around-patch");
            Inches groups = length(tables, "between-groups");
            return List.of(
                    new Spacing(length(tables, "medal-pitch-wide"), rows, badge, patch, groups, least, 0),
                    new Spacing(pitch, rows, badge, patch, patch, least, 1),
                    new Spacing(pitch, least, badge, patch, least, least, 2),
                    new Spacing(pitch, least, least, least, least, least, 3));
        }

        private static Inches length(InsigniaTables tables, String rule) {
            return tables.displayRule(rule).length();
        }

        /** To the nearest sixteenth. */
        static Inches marked(Inches length) {
            return length.nearest(Inches.of(1, 16));
        }

        Inches beside(Kind left, Kind right) {
            return left == Kind.PATCH || right == Kind.PATCH ? patch : badge;
        }

        /** Between the foot of one band and the top of the next. */
        Inches below(Band upper, Band lower) {
            if (upper.isMedals() && lower.isMedals()) {
                return medalRows;
            }
            return groups;
        }
    }
}
