package org.honorsdue.scanning.choice;

import java.util.List;

/**
 * The reading offered for one line of typing.
 *
 * @param raw the engine's first reading of the line as it is
 * @param alternatives further readings, without {@code text}
 * @param confidence 0 to 1, that the whole line is right
 * @param clearness 0 to 1, how clear the letters are one by one; low where no typing stands
 */
public record LineChoice(String text, String raw, List<Alternative> alternatives, double confidence, double clearness) {
    /** Of a line that there was no time for. */
    public static final LineChoice UNREAD = new LineChoice("", "", List.of(), 0, 0);

    public LineChoice {
        alternatives = List.copyOf(alternatives);
    }

    /**
     * Another reading of the line.
     *
     * @param behind how much less the picture speaks for it, as a natural logarithm; below 0 where it was set aside for
     *     what can stand in the entry
     */
    public record Alternative(String text, double behind) {}
}
