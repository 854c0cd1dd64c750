package org.honorsdue.insignia.drawing;

import java.util.List;
import java.util.Optional;

/** One thing drawn. Later marks lie over earlier ones. Lengths in inches, colours {@code 0xRRGGBB}, opacity 0 to 1. */
public sealed interface Mark {

    static Mark area(Outline outline, int rgb) {
        return new Area(outline, Paint.plain(rgb), 1);
    }

    static Mark area(Outline outline, Paint paint) {
        return new Area(outline, paint, 1);
    }

    static Mark line(Outline outline, int rgb, double width) {
        return new Line(outline, rgb, width, 1, Ends.BUTT, List.of());
    }

    static Mark group(Placement placement, List<Mark> marks) {
        return new Group(placement, Optional.empty(), marks);
    }

    /** Marks seen only within an outline, which is in the coordinates of the marks. */
    static Mark within(Outline clip, List<Mark> marks) {
        return new Group(Placement.HERE, Optional.of(clip), marks);
    }

    /** A filled outline; where outlines of one area overlap, every second layer is a hole. */
    record Area(Outline outline, Paint paint, double opacity) implements Mark {}

    /** A drawn outline. */
    record Line(Outline outline, int rgb, double width, double opacity, Ends ends, List<Double> dashes)
            implements Mark {
        public Line {
            dashes = List.copyOf(dashes);
        }
    }

    /** Words set in the project's book face. */
    record Words(String text, double x, double baseline, double size, Anchor anchor, Face face, int rgb)
            implements Mark {}

    /** Marks moved together. */
    record Group(Placement placement, Optional<Outline> clip, List<Mark> marks) implements Mark {
        public Group {
            marks = List.copyOf(marks);
        }
    }

    /** How a line ends and turns. */
    enum Ends {
        /** Cut off square, corners mitred. */
        BUTT,
        /** Cut off square half a width beyond the end; corners mitred unless they are sharp. */
        SQUARE,
        ROUND
    }

    /** Which part of the words stands at their place. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** Which cut of the face. */
    enum Face {
        REGULAR,
        BOLD
    }
}
