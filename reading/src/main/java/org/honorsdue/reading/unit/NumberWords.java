package org.honorsdue.reading.unit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Numbers in words, as armies, air forces and service commands bear them, and Roman ones. */
final class NumberWords {
    private static final List<String> ORDINAL_ONES = List.of(
            "FIRST",
            "SECOND",
            "THIRD",
            "FOURTH",
            "FIFTH",
            "SIXTH",
            "SEVENTH",
            "EIGHTH",
            "NINTH",
            "TENTH",
            "ELEVENTH",
            "TWELFTH",
            "THIRTEENTH",
            "FOURTEENTH",
            "FIFTEENTH",
            "SIXTEENTH",
            "SEVENTEENTH",
            "EIGHTEENTH",
            "NINETEENTH");
    private static final List<String> ONES_IN_WORDS = List.of(
            "ONE",
            "TWO",
            "THREE",
            "FOUR",
            "FIVE",
            "SIX",
            "SEVEN",
            "EIGHT",
            "NINE",
            "TEN",
            "ELEVEN",
            "TWELVE",
            "THIRTEEN",
            "FOURTEEN",
            "FIFTEEN",
            "SIXTEEN",
            "SEVENTEEN",
            "EIGHTEEN",
            "NINETEEN");
    private static final List<String> TENS_IN_WORDS =
            List.of("TWENTY", "THIRTY", "FORTY", "FIFTY", "SIXTY", "SEVENTY", "EIGHTY", "NINETY");
    private static final String HUNDRED = "HUNDRED";
    private static final Map<String, Integer> VALUES = ordinals();
    private static final Map<String, Integer> COMPONENTS = components();

    private static final String[] TENS = {"", "X", "XX"};
    private static final String[] ONES = {"", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"};

    private NumberWords() {}

    private static Map<String, Integer> ordinals() {
        var values = new HashMap<String, Integer>();
        for (int i = 0; i < ORDINAL_ONES.size(); i++) {
            values.put(ORDINAL_ONES.get(i), i + 1);
        }
        for (int i = 0; i < TENS_IN_WORDS.size(); i++) {
            values.put(TENS_IN_WORDS.get(i).replaceAll("Y$", "IETH"), 10 * (i + 2));
        }
        values.put(HUNDRED + "TH", 100);
        return Map.copyOf(values);
    }

    private static Map<String, Integer> components() {
        var values = new HashMap<String, Integer>();
        for (int i = 0; i < ONES_IN_WORDS.size(); i++) {
            values.put(ONES_IN_WORDS.get(i), i + 1);
        }
        for (int i = 0; i < TENS_IN_WORDS.size(); i++) {
            values.put(TENS_IN_WORDS.get(i), 10 * (i + 2));
        }
        values.put(HUNDRED, 100);
        return Map.copyOf(values);
    }

    /** Whether the word can stand in a number written out before its last word: three, hundred, thirty. */
    static boolean isComponent(String capitals) {
        return COMPONENTS.containsKey(capitals);
    }

    /** The number of words that end in an ordinal: three hundred thirty first. */
    static int composed(List<String> capitals) {
        int sum = 0;
        for (String word : capitals) {
            if (word.equals(HUNDRED) || word.equals(HUNDRED + "TH")) {
                sum = Math.max(1, sum) * 100;
            } else {
                sum += COMPONENTS.getOrDefault(word, VALUES.getOrDefault(word, 0));
            }
        }
        return sum;
    }

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
