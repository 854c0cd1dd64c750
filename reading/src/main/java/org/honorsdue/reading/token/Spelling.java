package org.honorsdue.reading.token;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.honorsdue.reading.token.Vocabulary.Known;

/** Misspellings one or two letters off, and abbreviations nobody listed. Short words need an exact match. */
final class Spelling {
    private Spelling() {}

    /** Letters that may be wrong in a word of that length. */
    private static int allowed(int length) {
        return length < 5 ? 0 : length < 8 ? 1 : 2;
    }

    /** The known words nearest to a word in capitals, all equally near; empty when none is near enough. */
    static List<Known> near(String typed, Vocabulary vocabulary) {
        int best = allowed(typed.length());
        if (best == 0 || typed.length() > 24) {
            return List.of();
        }
        int letters = Vocabulary.letters(typed);
        var nearest = new ArrayList<Known>();
        int widest = best;
        for (int length = typed.length() - widest; length <= typed.length() + widest; length++) {
            for (Known known : vocabulary.ofLength(length)) {
                int limit = Math.min(best, allowed(length));
                if (Integer.bitCount(letters ^ known.letters()) > 2 * limit) {
                    continue;
                }
                int off = distance(typed, known.spelling(), limit);
                if (off <= limit) {
                    if (off < best) {
                        nearest.clear();
                        best = off;
                    }
                    nearest.add(known);
                }
            }
        }
        return nearest;
    }

    /**
     * The spelling of an idea that a word was meant for, where the words before already call for that idea: one letter
     * off from four letters on, or letters left out of the word in full.
     *
     * @return empty when it was not meant
     */
    static String meant(String typed, Lexicon lexicon, int idea) {
        String full = lexicon.idea(idea);
        String name = (full.startsWith("=") ? full.substring(1) : full).toUpperCase(Locale.ROOT);
        if (isShortFor(typed, name)) {
            return name;
        }
        for (String spelling : lexicon.spellings(idea)) {
            if (spelling.length() >= 4 && looksAlike(typed, spelling)) {
                return spelling;
            }
        }
        int allowed = typed.length() < 4 ? 0 : typed.length() < 8 ? 1 : 2;
        if (allowed > 0) {
            for (String spelling : lexicon.spellings(idea)) {
                if (spelling.length() >= 4 && distance(typed, spelling, allowed) <= allowed) {
                    return spelling;
                }
            }
        }
        return "";
    }

    /**
     * The idea that a word of three or four letters was meant for, to be trusted only when the words after it agree:
     * letters left out, or one letter off in four.
     *
     * @return empty when it was not meant
     */
    static String shortMeant(String typed, Lexicon lexicon, int idea) {
        String name = lexicon.idea(idea);
        if (name.startsWith("=")) {
            return "";
        }
        String full = name.toUpperCase(Locale.ROOT);
        if (full.length() >= 5 && isShortFor(typed, full)) {
            return full;
        }
        return typed.length() == 4 && full.length() == 4 && distance(typed, full, 1) <= 1 ? full : "";
    }

    /** Whether a word of three letters or more is another with letters left out, the first kept. */
    private static boolean isShortFor(String typed, String full) {
        if (typed.length() < 3 || typed.length() >= full.length() || typed.charAt(0) != full.charAt(0)) {
            return false;
        }
        int at = 0;
        for (int i = 0; i < full.length() && at < typed.length(); i++) {
            if (full.charAt(i) == typed.charAt(at)) {
                at++;
            }
        }
        return at == typed.length();
    }

    /** Letters that look alike when run together: {@code rn} and {@code m}, {@code cl} and {@code d}. */
    private static boolean looksAlike(String typed, String spelling) {
        return typed.length() >= 3 && sameShape(typed).equals(sameShape(spelling));
    }

    private static String sameShape(String word) {
        return word.replace("RN", "M").replace("CL", "D").replace("VV", "W").replace("LI", "U");
    }

    /** Letters to change, add, leave out or swap with the next; anything above the limit comes back as limit + 1. */
    static int distance(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) > limit) {
            return limit + 1;
        }
        int[] two = new int[b.length() + 1];
        int[] one = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            one[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            int least = i;
            for (int j = 1; j <= b.length(); j++) {
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                int cost = Math.min(one[j - 1] + (same ? 0 : 1), 1 + Math.min(one[j], row[j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost = Math.min(cost, two[j - 2] + 1);
                }
                row[j] = cost;
                least = Math.min(least, cost);
            }
            if (least > limit) {
                return limit + 1;
            }
            int[] spare = two;
            two = one;
            one = row;
            row = spare;
        }
        return Math.min(one[b.length()], limit + 1);
    }
}
