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
     * Whether a word of three or four letters was meant for another, to be trusted only when the words after it agree:
     * letters left out, or one letter off in four.
     */
    static boolean isShortMeant(String typed, String full) {
        if (full.length() >= 5) {
            return isShortFor(typed, full);
        }
        return typed.length() == 4 && full.length() == 4 && distance(typed, full, 1) <= 1;
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

    /**
     * Letters to change, add, leave out or swap with the next; anything above the limit comes back as limit + 1. Only the
     * cells that can stay within the limit are looked at.
     */
    static int distance(String a, String b, int limit) {
        int n = b.length();
        if (Math.abs(a.length() - n) > limit) {
            return limit + 1;
        }
        int far = limit + 1;
        int[] two = new int[n + 1];
        int[] one = new int[n + 1];
        int[] row = new int[n + 1];
        for (int j = 0; j <= n; j++) {
            one[j] = Math.min(j, far);
        }
        for (int i = 1; i <= a.length(); i++) {
            int from = Math.max(1, i - limit);
            int to = Math.min(n, i + limit);
            row[from - 1] = from == 1 ? Math.min(i, far) : far;
            int least = row[from - 1];
            char c = a.charAt(i - 1);
            for (int j = from; j <= to; j++) {
                char d = b.charAt(j - 1);
                int above = j < i + limit ? one[j] : far;
                int cost = Math.min(one[j - 1] + (c == d ? 0 : 1), 1 + Math.min(above, row[j - 1]));
                if (i > 1 && j > 1 && c == b.charAt(j - 2) && a.charAt(i - 2) == d) {
                    cost = Math.min(cost, two[j - 2] + 1);
                }
                row[j] = Math.min(cost, far);
                least = Math.min(least, cost);
            }
            if (least > limit) {
                return far;
            }
            int[] spare = two;
            two = one;
            one = row;
            row = spare;
        }
        return Math.min(one[n], far);
    }
}
