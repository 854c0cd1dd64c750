package org.honorsdue.reading.token;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Every spelling known, with the ideas it can stand for. Immutable once built; looked up without making strings. */
final class Vocabulary {
    /**
     * One spelling, in capitals without apostrophes.
     *
     * @param ideas numbers of the ideas it can stand for
     * @param letters a bit for each letter of the alphabet in it
     * @param number the value of a number word; -1 for any other word
     * @param ordinal whether the number word is an ordinal
     */
    record Known(String spelling, int[] ideas, int letters, int number, boolean ordinal) {}

    /** Ordinals as words, from the first. */
    static final List<String> ORDINAL_WORDS =
            List.of("FIRST", "SECOND", "THIRD", "FOURTH", "FIFTH", "SIXTH", "SEVENTH", "EIGHTH", "NINTH", "TENTH");

    /** Numbers as words, from zero. */
    static final List<String> NUMBER_WORDS = List.of(
            "ZERO",
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
            "FIFTEEN");

    private final @Nullable Known[] table;
    private final int mask;
    private final List<List<Known>> byLength = new ArrayList<>();

    Vocabulary(Map<String, int[]> spellings) {
        int size = Integer.highestOneBit(Math.max(16, spellings.size() * 3)) * 2;
        table = new Known[size];
        mask = size - 1;
        for (var spelling : spellings.entrySet()) {
            String word = spelling.getKey();
            boolean correctable = word.length() >= 5 && isLetters(word);
            int ordinal = ORDINAL_WORDS.indexOf(word) + 1;
            var known = new Known(
                    word,
                    spelling.getValue(),
                    letters(word),
                    ordinal > 0 ? ordinal : NUMBER_WORDS.indexOf(word),
                    ordinal > 0);
            int slot = hash(word, 0, word.length()) & mask;
            while (table[slot] != null) {
                slot = slot + 1 & mask;
            }
            table[slot] = known;
            while (byLength.size() <= word.length()) {
                byLength.add(new ArrayList<>());
            }
            if (correctable) {
                byLength.get(word.length()).add(known);
            }
        }
    }

    private static boolean isLetters(String word) {
        return word.chars().allMatch(c -> c >= 'A' && c <= 'Z');
    }

    static int letters(CharSequence word) {
        int letters = 0;
        for (int i = 0; i < word.length(); i++) {
            letters |= 1 << (word.charAt(i) - 'A' & 31);
        }
        return letters;
    }

    private static int hash(CharSequence word, int from, int to) {
        int hash = 0;
        for (int i = from; i < to; i++) {
            hash = hash * 31 + word.charAt(i);
        }
        return hash ^ hash >>> 15;
    }

    private static int hash(char[] upper, int from, int to) {
        int hash = 0;
        for (int i = from; i < to; i++) {
            hash = hash * 31 + upper[i];
        }
        return hash ^ hash >>> 15;
    }

    @Nullable
    Known find(char[] upper, int from, int to) {
        int slot = hash(upper, from, to) & mask;
        for (Known known = table[slot]; known != null; known = table[slot]) {
            if (equal(known.spelling, upper, from, to)) {
                return known;
            }
            slot = slot + 1 & mask;
        }
        return null;
    }

    @Nullable
    Known find(String word) {
        int slot = hash(word, 0, word.length()) & mask;
        for (Known known = table[slot]; known != null; known = table[slot]) {
            if (known.spelling.equals(word)) {
                return known;
            }
            slot = slot + 1 & mask;
        }
        return null;
    }

    private static boolean equal(String spelling, char[] upper, int from, int to) {
        if (spelling.length() != to - from) {
            return false;
        }
        for (int i = from; i < to; i++) {
            if (spelling.charAt(i - from) != upper[i]) {
                return false;
            }
        }
        return true;
    }

    /** The spellings that many letters long to which a misspelling may be corrected. */
    List<Known> ofLength(int length) {
        return length < byLength.size() ? byLength.get(length) : List.of();
    }
}
