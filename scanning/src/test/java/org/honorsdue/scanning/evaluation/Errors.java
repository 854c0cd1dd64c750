package org.honorsdue.scanning.evaluation;

import java.util.Locale;

/** How far a reading is from the truth. Letters count in one case, and runs of spaces as one. */
final class Errors {
    private Errors() {}

    static String plain(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
    }

    /** Letters to insert, leave out or change (Levenshtein). */
    static int distance(String read, String truth) {
        var before = new int[truth.length() + 1];
        for (int j = 0; j <= truth.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= read.length(); i++) {
            var now = new int[truth.length() + 1];
            now[0] = i;
            for (int j = 1; j <= truth.length(); j++) {
                int change = before[j - 1] + (read.charAt(i - 1) == truth.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(change, Math.min(before[j], now[j - 1]) + 1);
            }
            before = now;
        }
        return before[truth.length()];
    }
}
