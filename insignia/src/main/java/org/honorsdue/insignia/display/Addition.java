package org.honorsdue.insignia.display;

import java.util.List;
import org.honorsdue.insignia.badge.EnlistedGrade;
import org.honorsdue.reference.insignia.Inches;

/** Something of the family's own that goes in beside what the findings authorize. */
public sealed interface Addition {

    /** A print of a photograph, with its size. */
    record Photograph(Inches width, Inches height, String says) implements Addition {}

    /** A copy of a paper, with its size; the original stays in a folder. */
    record Paper(Inches width, Inches height, String says) implements Addition {}

    /** Two identity tags on their chain, lying side by side. */
    record DogTags() implements Addition {}

    /** A plate of one to four lines. */
    record Nameplate(List<String> lines) implements Addition {
        public Nameplate {
            lines = List.copyOf(lines);
            if (lines.isEmpty() || lines.size() > 4) {
                throw new IllegalArgumentException(
                        "A nameplate has one to four lines, not %d.".formatted(lines.size()));
            }
        }
    }

    /** A pair of chevrons, side by side. */
    record Chevrons(EnlistedGrade grade) implements Addition {}

    /** A folded flag, with the longest edge of its triangle. */
    record Flag(Inches longEdge) implements Addition {}
}
