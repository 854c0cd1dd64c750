package org.honorsdue.reading.unit;

import java.util.Map;
import java.util.Optional;

/** Numbers in words, as armies, air forces and service commands bear them. */
final class NumberWords {
    private static final Map<String, Integer> VALUES = Map.ofEntries(
            Map.entry("FIRST", 1),
            Map.entry("SECOND", 2),
            Map.entry("THIRD", 3),
            Map.entry("FOURTH", 4),
            Map.entry("FIFTH", 5),
            Map.entry("SIXTH", 6),
            Map.entry("SEVENTH", 7),
            Map.entry("EIGHTH", 8),
            Map.entry("NINTH", 9),
            Map.entry("TENTH", 10),
            Map.entry("ELEVENTH", 11),
            Map.entry("TWELFTH", 12),
            Map.entry("THIRTEENTH", 13),
            Map.entry("FOURTEENTH", 14),
            Map.entry("FIFTEENTH", 15),
            Map.entry("TWENTIETH", 20));
    private static final String[] TENS = {"", "X", "XX"};
    private static final String[] ONES = {"", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"};

    private NumberWords() {}

    static Optional<Integer> value(String capitals) {
        return Optional.ofNullable(VALUES.get(capitals));
    }

    /** Corps and air commands write theirs so; numbers above twenty-nine stay Arabic. */
    static String toRoman(int number) {
        return number < 30 ? TENS[number / 10] + ONES[number % 10] : org.honorsdue.reference.unit.Ordinal.text(number);
    }

    /** A Roman number up to XXIX, as corps bear them. */
    static Optional<Integer> roman(String capitals) {
        for (int tens = 0; tens < TENS.length; tens++) {
            for (int ones = 0; ones < ONES.length; ones++) {
                if (capitals.equals(TENS[tens] + ONES[ones]) && tens + ones > 0) {
                    return Optional.of(tens * 10 + ones);
                }
            }
        }
        return Optional.empty();
    }
}
