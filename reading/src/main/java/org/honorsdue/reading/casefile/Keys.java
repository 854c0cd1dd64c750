package org.honorsdue.reading.casefile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.reading.casefile.YamlNode.Mapping;
import org.honorsdue.reading.casefile.YamlNode.Pair;
import org.honorsdue.reading.casefile.YamlNode.Scalar;
import org.honorsdue.service.fact.PartialDate;

/** The values under one set of keys, asked for one by one; what is not as it should be becomes a fault. */
final class Keys {
    private final Mapping mapping;
    private final Map<String, Pair> byName = new LinkedHashMap<>();
    private final Faults faults;

    /** @param known the keys that may stand here; any other is a fault */
    Keys(Mapping mapping, List<String> known, String whatItIs, Faults faults) {
        this.mapping = mapping;
        this.faults = faults;
        for (Pair pair : mapping.pairs()) {
            String key = pair.key().text();
            if (known.contains(key)) {
                byName.put(key, pair);
            } else {
                faults.add(
                        pair.key(),
                        "There is no key \"%s\" in %s.".formatted(shortened(key), whatItIs),
                        NearestName.hint(key, known));
            }
        }
    }

    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 57) + "...";
    }

    Optional<YamlNode> node(String key) {
        return Optional.ofNullable(byName.get(key)).map(Pair::value).filter(value -> !isNothing(value));
    }

    private static boolean isNothing(YamlNode value) {
        return value instanceof Scalar scalar && scalar.isNothing();
    }

    Optional<Scalar> scalar(String key) {
        var given = node(key);
        if (given.isPresent() && !(given.get() instanceof Scalar)) {
            faults.add(
                    given.get(), "\"%s\" is %s.".formatted(key, given.get().kind()), "Write one text after the colon.");
            return Optional.empty();
        }
        return given.map(Scalar.class::cast);
    }

    Optional<String> text(String key) {
        return scalar(key).map(Scalar::text).map(String::strip);
    }

    /** A text that must be there. */
    String required(String key, String whatItIs, String example) {
        boolean wrongKind = node(key).isPresent();
        var text = text(key);
        if (text.isEmpty() && !wrongKind) {
            faults.add(
                    mapping,
                    "%s lacks \"%s\".".formatted(whatItIs, key),
                    "Add it, as in %s: %s".formatted(key, example));
        }
        return text.orElse("");
    }

    /** A date as far as known: {@code 1944-12-03}, {@code 1944-12} or {@code 1944}. */
    Optional<PartialDate> date(String key) {
        var given = scalar(key);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        String text = given.get().text().strip();
        try {
            return Optional.of(date(text, given.get()));
        } catch (DateTimeException e) {
            faults.add(
                    given.get(),
                    "\"%s\" is not a date of the calendar.".formatted(shortened(text)),
                    "Write %s as 1944-12-03, or 1944-12 or 1944 when that is all that is known.".formatted(key));
            return Optional.empty();
        }
    }

    private PartialDate date(String text, YamlNode where) {
        PartialDate date = switch (text.length()) {
            case 4 -> PartialDate.year(Integer.parseInt(digits(text)));
            case 7 -> PartialDate.month(YearMonth.parse(text));
            default -> PartialDate.day(LocalDate.parse(text));
        };
        if (date.earliest().getYear() < 1850 || date.latest().getYear() > 2100) {
            faults.add(
                    where,
                    "The year of \"%s\" cannot be meant.".formatted(text),
                    "Check the year; four digits, as in 1944-12-03.");
        }
        return date;
    }

    private static String digits(String text) {
        if (!text.chars().allMatch(c -> c >= '0' && c <= '9')) {
            throw new DateTimeException(text);
        }
        return text;
    }

    /** Two dates that must not lie the wrong way round. */
    void inOrder(String firstKey, Optional<PartialDate> first, String lastKey, Optional<PartialDate> last) {
        if (first.isPresent()
                && last.isPresent()
                && last.get().latest().isBefore(first.get().earliest())) {
            faults.add(
                    node(lastKey).orElse(mapping),
                    "\"%s\" (%s) lies before \"%s\" (%s).".formatted(lastKey, last.get(), firstKey, first.get()),
                    "Check whether the two dates were swapped.");
        }
    }

    OptionalInt number(String key) {
        var given = scalar(key);
        if (given.isEmpty()) {
            return OptionalInt.empty();
        }
        String text = given.get().text().strip();
        if (!text.isEmpty() && text.length() <= 6 && text.chars().allMatch(c -> c >= '0' && c <= '9')) {
            return OptionalInt.of(Integer.parseInt(text));
        }
        faults.add(
                given.get(),
                "\"%s\" is not a whole number.".formatted(shortened(text)),
                "Write %s in digits.".formatted(key));
        return OptionalInt.empty();
    }

    boolean flag(String key) {
        var given = scalar(key);
        if (given.isEmpty()) {
            return false;
        }
        String text = given.get().text().strip();
        if (text.equalsIgnoreCase("true") || text.equalsIgnoreCase("yes")) {
            return true;
        }
        if (!text.equalsIgnoreCase("false") && !text.equalsIgnoreCase("no")) {
            faults.add(
                    given.get(),
                    "\"%s\" is neither true nor false.".formatted(shortened(text)),
                    "Write true or false.");
        }
        return false;
    }

    /** One of some words. */
    <E extends Enum<E>> E choice(String key, Class<E> choices, E whenAbsent) {
        var given = scalar(key);
        if (given.isEmpty()) {
            return whenAbsent;
        }
        String text = given.get().text().strip();
        var known = new ArrayList<String>();
        for (E choice : choices.getEnumConstants()) {
            String word = choice.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
            if (word.equalsIgnoreCase(text)) {
                return choice;
            }
            known.add(word);
        }
        faults.add(
                given.get(),
                "\"%s\" is not known as %s.".formatted(shortened(text), key),
                NearestName.of(text, known)
                        .map("Did you mean \"%s\"?"::formatted)
                        .orElse("Write one of: %s.".formatted(String.join(", ", known))));
        return whenAbsent;
    }
}
