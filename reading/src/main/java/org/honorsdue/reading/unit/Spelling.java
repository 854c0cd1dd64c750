package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Spellings to words: whole, run together, and one letter wrong. */
final class Spelling {
    private static final int SHORTEST_PUT_RIGHT = 4;
    private static final int LONGEST_RUN = 40;

    /** Words of nicknames and names that lie a letter away from a spelling and are never put right. */
    private static final Set<String> PROPER = Set.of(
            "AMERICAN",
            "BULL",
            "LION",
            "CACTUS",
            "CUSTER",
            "CENTURY",
            "DIXIE",
            "MARS",
            "WALTER",
            "SANTA",
            "LIBERTY",
            "VICTORY",
            "BLUE",
            "STAR",
            "PANTHER",
            "CYCLONE");

    private static final Map<String, List<Word>> KNOWN = known();
    private static final int LONGEST =
            KNOWN.keySet().stream().mapToInt(String::length).max().orElse(0);
    private static final Map<String, List<String>> ONE_LETTER_LESS = oneLetterLess();

    private Spelling() {}

    private static Map<String, List<Word>> known() {
        var known = new HashMap<String, List<Word>>();
        for (Word word : Word.values()) {
            for (String spelling : word.spellings()) {
                known.put(spelling, List.of(word));
            }
        }
        for (RunOn runOn : RunOn.values()) {
            known.put(runOn.name(), runOn.words());
        }
        return Map.copyOf(known);
    }

    private static Map<String, List<String>> oneLetterLess() {
        var shorter = new HashMap<String, List<String>>();
        for (String spelling : KNOWN.keySet()) {
            if (spelling.length() >= SHORTEST_PUT_RIGHT) {
                for (int i = 0; i < spelling.length(); i++) {
                    shorter.computeIfAbsent(without(spelling, i), key -> new ArrayList<>())
                            .add(spelling);
                }
            }
        }
        return shorter;
    }

    private static String without(String text, int i) {
        return text.substring(0, i) + text.substring(i + 1);
    }

    /** Whether the word stands for itself and is no slip of another. */
    static boolean isProper(String capitals) {
        return PROPER.contains(capitals);
    }

    /** The words a spelling in capitals stands for. */
    static Optional<List<Word>> whole(String capitals) {
        return Optional.ofNullable(KNOWN.get(capitals));
    }

    /** A run of capitals cut into known spellings, as few as possible; a last single letter after "Co" may stay. */
    static Optional<List<String>> cut(String capitals) {
        int length = capitals.length();
        if (length > LONGEST_RUN) {
            return Optional.empty();
        }
        int[] pieces = new int[length + 1];
        int[] from = new int[length + 1];
        for (int end = 1; end <= length; end++) {
            pieces[end] = Integer.MAX_VALUE;
            for (int start = Math.max(0, end - LONGEST); start < end; start++) {
                if (pieces[start] < Integer.MAX_VALUE
                        && end - start >= 2
                        && pieces[start] + 1 < pieces[end]
                        && KNOWN.containsKey(capitals.substring(start, end))) {
                    pieces[end] = pieces[start] + 1;
                    from[end] = start;
                }
            }
        }
        if (pieces[length] == Integer.MAX_VALUE) {
            return Optional.empty();
        }
        var cut = new ArrayList<String>();
        for (int end = length; end > 0; end = from[end]) {
            cut.add(0, capitals.substring(from[end], end));
        }
        return Optional.of(cut);
    }

    /** The one known spelling that is a single slip away: a letter too many, too few, wrong, or two changed over. */
    static Optional<String> putRight(String capitals) {
        for (String looksLike :
                List.of(capitals.replace("RN", "M"), capitals.replace('L', 'I'), capitals.replace('I', 'L'))) {
            if (!looksLike.equals(capitals) && KNOWN.containsKey(looksLike)) {
                return Optional.of(looksLike);
            }
        }
        if (capitals.length() < SHORTEST_PUT_RIGHT) {
            return Optional.empty();
        }
        var found = new ArrayList<String>();
        addAll(found, ONE_LETTER_LESS.get(capitals));
        for (int i = 0; i < capitals.length(); i++) {
            String shorter = without(capitals, i);
            if (shorter.length() >= SHORTEST_PUT_RIGHT && KNOWN.containsKey(shorter)) {
                found.add(shorter);
            }
            var candidates = ONE_LETTER_LESS.get(shorter);
            if (candidates != null) {
                candidates.stream()
                        .filter(candidate -> candidate.length() == capitals.length())
                        .filter(candidate -> oneSlip(capitals, candidate))
                        .forEach(found::add);
            }
        }
        var meanings = found.stream().map(KNOWN::get).distinct().toList();
        return meanings.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static void addAll(List<String> found, @org.jspecify.annotations.Nullable List<String> more) {
        if (more != null) {
            found.addAll(more);
        }
    }

    /** Same length: one letter differs, or two neighbours changed places. */
    private static boolean oneSlip(String a, String b) {
        int first = -1;
        int last = -1;
        for (int i = 0; i < a.length(); i++) {
            if (a.charAt(i) != b.charAt(i)) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        return first == last
                || last == first + 1 && a.charAt(first) == b.charAt(last) && a.charAt(last) == b.charAt(first);
    }
}
