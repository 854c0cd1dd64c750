package org.honorsdue.scanning.choice;

import java.util.List;

/**
 * The reading offered for one line of typing.
 *
 * @param raw the engine's first reading of the line as it is
 * @param alternatives further readings, the likeliest first, without {@code text}
 * @param confidence 0 to 1
 */
public record LineChoice(String text, String raw, List<String> alternatives, double confidence) {
    public LineChoice {
        alternatives = List.copyOf(alternatives);
    }
}
