package org.honorsdue.reading.token;

import java.util.ArrayList;
import java.util.List;

/** A pattern of words with parts that may be left out, {@code [a|b c]}, and choices, {@code (a|b)}, written out in full. */
final class Pattern {
    private final String pattern;
    private int at;

    private Pattern(String pattern) {
        this.pattern = pattern;
    }

    /**
     * Every word sequence the pattern stands for.
     *
     * @throws IllegalArgumentException when its brackets do not match, or nothing remains when all is left out
     */
    static List<List<String>> expand(String pattern) {
        var parser = new Pattern(pattern);
        var all = parser.choices();
        if (parser.at < pattern.length()) {
            throw new IllegalArgumentException(
                    "The pattern \"%s\" closes a bracket that it does not open.".formatted(pattern));
        }
        if (all.contains(List.<String>of())) {
            throw new IllegalArgumentException("Every word of the pattern \"%s\" may be left out.".formatted(pattern));
        }
        return all.stream().distinct().toList();
    }

    private List<List<String>> choices() {
        var all = new ArrayList<>(sequence());
        while (at < pattern.length() && pattern.charAt(at) == '|') {
            at++;
            all.addAll(sequence());
        }
        return all;
    }

    private List<List<String>> sequence() {
        List<List<String>> so = List.of(List.of());
        while (at < pattern.length()) {
            char c = pattern.charAt(at);
            if (c == ' ') {
                at++;
            } else if (c == '[' || c == '(') {
                at++;
                var group = new ArrayList<>(choices());
                char wanted = c == '[' ? ']' : ')';
                if (at >= pattern.length() || pattern.charAt(at) != wanted) {
                    throw new IllegalArgumentException(
                            "The pattern \"%s\" lacks a closing %s.".formatted(pattern, wanted));
                }
                at++;
                if (c == '[') {
                    group.add(List.of());
                }
                so = followed(so, group);
            } else if (c == '|' || c == ']' || c == ')') {
                break;
            } else {
                int from = at;
                while (at < pattern.length() && " |[]()".indexOf(pattern.charAt(at)) < 0) {
                    at++;
                }
                so = followed(so, List.of(List.of(pattern.substring(from, at))));
            }
        }
        return so;
    }

    private static List<List<String>> followed(List<List<String>> heads, List<List<String>> tails) {
        var all = new ArrayList<List<String>>();
        for (var head : heads) {
            for (var tail : tails) {
                var joined = new ArrayList<>(head);
                joined.addAll(tail);
                all.add(joined);
            }
        }
        return all;
    }
}
