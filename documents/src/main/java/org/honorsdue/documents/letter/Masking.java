package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Typed;
import org.jspecify.annotations.Nullable;

/** What is left out of a paper that others will see. */
public enum Masking {
    /** For sharing: serial number but its last three digits, addresses, race, thumb print and insurance withheld. */
    SHARED,
    /** For the family alone: everything as typed. */
    PRIVATE;

    static final String WITHHELD = "[withheld]";

    private static final Set<Entry> ADDRESSES =
            EnumSet.of(Entry.PERMANENT_ADDRESS, Entry.EMPLOYMENT_ADDRESS, Entry.HOME_ADDRESS);
    private static final Set<Entry> WHOLLY = EnumSet.of(
            Entry.PERMANENT_ADDRESS,
            Entry.EMPLOYMENT_ADDRESS,
            Entry.HOME_ADDRESS,
            Entry.RACE,
            Entry.THUMB_PRINT,
            Entry.INSURANCE,
            Entry.INSURANCE_PAID,
            Entry.INSURANCE_INTENTION,
            Entry.PREMIUM,
            Entry.NEXT_PREMIUM,
            Entry.ALLOTMENT_ENDS);

    // Army serial numbers as clerks typed them: 35000101, 35 000 101, O-1 000 808, A-000 404. Common practice, no
    // source. Digits grouped as a date or a year are no number, nor is the docket of a board's decision.
    private static final Pattern SERIAL = Pattern.compile("(?<![\\p{Alnum}-])(?<!ABCMR )(?<!docket )(?:"
            + "[A-Z]{0,2}[- ]?\\d{4,5}(\\d{3})"
            + "|[A-Z]{0,2}[- ]?\\d{1,2}[ -]\\d{3}[ -](\\d{3})"
            + "|[A-Z]-\\d{2,3}[ -]?(\\d{3})"
            + ")(?![\\p{Alnum}]|-\\d)");

    /** The entry's text as it may be shown. */
    public String show(Entry entry, String text) {
        if (this == PRIVATE) {
            return text;
        }
        if (WHOLLY.contains(entry)) {
            return WITHHELD;
        }
        return entry == Entry.SERIAL_NUMBER ? lastThree(text) : serial(text);
    }

    /** Whether an entry is withheld altogether. */
    boolean withholds(Entry entry) {
        return this == SHARED && WHOLLY.contains(entry);
    }

    /** Free text with every serial number in it cut to its last three digits. */
    public String show(String text) {
        return this == PRIVATE ? text : serial(text);
    }

    /**
     * A scrap of typing that may be part of an address: the words of the street are withheld one by one, because the
     * reading may have cut the line anywhere. Town and state alone are no address.
     */
    String scrap(Casefile casefile, String text) {
        String shown = show(text);
        if (this == PRIVATE) {
            return shown;
        }
        for (var paper : casefile.papers()) {
            for (var entry : ADDRESSES) {
                if (paper.entry(entry) instanceof Typed.Text address) {
                    for (String word : street(address.text())) {
                        shown = Pattern.compile(
                                        "(?<!\\p{L})" + Pattern.quote(word) + "(?!\\p{L})", Pattern.CASE_INSENSITIVE)
                                .matcher(shown)
                                .replaceAll(Matcher.quoteReplacement(WITHHELD));
                    }
                }
            }
        }
        return shown;
    }

    /** House number and street stand in the first three words; what is shorter than four letters tells nothing. */
    private static List<String> street(String address) {
        return Arrays.stream(address.strip().split("\\s+"))
                .limit(3)
                .map(word -> word.replaceAll("[^\\p{L}\\p{N}]", ""))
                .filter(word -> word.length() > 3)
                .toList();
    }

    /**
     * What must not leave the desk, wherever in a document it turns up: besides serial numbers by their looks, this
     * soldier's own in any spacing, and the addresses of the papers.
     */
    UnaryOperator<String> cover(Casefile casefile) {
        if (this == PRIVATE) {
            return UnaryOperator.identity();
        }
        var secrets = secrets(casefile);
        return text -> {
            String covered = text;
            for (var secret : secrets) {
                covered = secret.in().matcher(covered).replaceAll(Matcher.quoteReplacement(secret.shown()));
            }
            return serial(covered);
        };
    }

    private record Secret(Pattern in, String shown) {}

    private static List<Secret> secrets(Casefile casefile) {
        var secrets = new ArrayList<Secret>();
        for (var paper : casefile.papers()) {
            if (paper.entry(Entry.SERIAL_NUMBER) instanceof Typed.Text text) {
                String digits = text.text().replaceAll("\\D", "");
                if (digits.length() > 3) {
                    secrets.add(new Secret(
                            Pattern.compile("(?<!\\d)(?:\\p{Lu}{1,2}[- ]?)?" + String.join("[ -]*", digits.split(""))
                                    + "(?!\\d)"),
                            lastThree(digits)));
                }
            }
            for (var entry : ADDRESSES) {
                if (paper.entry(entry) instanceof Typed.Text text
                        && text.text().strip().length() > 3) {
                    String words = String.join(
                            "\\s+",
                            List.of(text.text().strip().split("\\s+")).stream()
                                    .map(Pattern::quote)
                                    .toList());
                    secrets.add(new Secret(Pattern.compile(words, Pattern.CASE_INSENSITIVE), WITHHELD));
                }
            }
        }
        return secrets;
    }

    private static String lastThree(String serial) {
        String digits = serial.replaceAll("\\D", "");
        return digits.length() > 3 ? "\u2026" + digits.substring(digits.length() - 3) : WITHHELD;
    }

    private static String serial(String text) {
        return SERIAL.matcher(text)
                .replaceAll(match -> "\u2026" + last(match.group(1), match.group(2), match.group(3)));
    }

    private static String last(@Nullable String... groups) {
        for (String group : groups) {
            if (group != null) {
                return group;
            }
        }
        return "";
    }
}
