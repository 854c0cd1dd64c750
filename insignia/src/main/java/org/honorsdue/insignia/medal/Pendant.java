package org.honorsdue.insignia.medal;

import java.util.List;
import org.honorsdue.insignia.drawing.Mark;

/**
 * A sketch 100 wide about 0,0.
 *
 * @param top where it is hung, above 0
 * @param foot its lowest point
 */
record Pendant(List<Mark> marks, double top, double foot) {
    Pendant {
        marks = List.copyOf(marks);
    }
}
