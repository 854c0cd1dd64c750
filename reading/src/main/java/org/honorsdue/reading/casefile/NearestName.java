package org.honorsdue.reading.casefile;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/** The known name that an unknown one was most likely meant to be. */
final class NearestName {
    private NearestName() {}

    /**
     * The nearest by letters changed, at most a third of the word; else one that contains the word or begins as it does;
     * else the nearest again, at most two fifths of the word. The first in the alphabet of equally near ones.
     */
    static Optional<String> of(String word, Collection<String> known) {
        if (word.length() > 60) {
            return Optional.empty();
        }
        String plain = plain(word);
        var names = new TreeSet<>(known);
        return nearest(plain, names, Math.max(1, plain.length() / 3))
                .or(() -> names.stream()
                        .filter(name -> plain.length() >= 5 && plain(name).contains(plain))
                        .findFirst())
                .or(() -> names.stream()
                        .filter(name -> plain.length() >= 4 && plain(name).startsWith(plain.substring(0, 4)))
                        .findFirst())
                .or(() -> nearest(plain, names, (plain.length() * 2 + 4) / 5));
    }

    private static Optional<String> nearest(String plain, TreeSet<String> names, int limit) {
        int best = limit + 1;
        Optional<String> nearest = Optional.empty();
        for (String name : names) {
            int distance = distance(plain, plain(name));
            if (distance < best) {
                best = distance;
                nearest = Optional.of(name);
            }
        }
        return nearest;
    }

    /** {@code Did you mean "grade"?}, or the known names when none is near. */
    static String hint(String word, Collection<String> known) {
        return of(word, known)
                .map("Did you mean \"%s\"?"::formatted)
                .orElseGet(() -> known.size() <= 12
                        ? "Known here: %s.".formatted(String.join(", ", known))
                        : "Take it out, or see the list of names in the casefile's description.");
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    }

    private static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(swap, 1 + Math.min(before[j], row[j - 1]));
            }
            int[] done = before;
            before = row;
            row = done;
        }
        return before[b.length()];
    }
}
