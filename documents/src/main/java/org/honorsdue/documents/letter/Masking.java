package org.honorsdue.documents.letter;

import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Pattern;
import org.honorsdue.service.paper.Entry;

/** What is left out of a paper that others will see. */
public enum Masking {
    /** For sharing: serial number but its last three digits, addresses, race, thumb print and insurance withheld. */
    SHARED,
    /** For the family alone: everything as typed. */
    PRIVATE;

    private static final String WITHHELD = "[withheld]";
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

    // An Army serial number: seven or eight digits, perhaps spaced or after a letter. Common practice, no source.
    private static final Pattern SERIAL =
            Pattern.compile("(?<![\\dA-Za-z])(?:[A-Z][- ]?)?(\\d[ -]?){4,5}(\\d[ -]?\\d[ -]?\\d)(?![\\d])");

    /** The entry's text as it may be shown. */
    public String show(Entry entry, String text) {
        if (this == PRIVATE) {
            return text;
        }
        return WHOLLY.contains(entry) ? WITHHELD : serial(text);
    }

    /** Free text with every serial number in it cut to its last three digits. */
    public String show(String text) {
        return this == PRIVATE ? text : serial(text);
    }

    private static String serial(String text) {
        return SERIAL.matcher(text)
                .replaceAll(match -> "\u2026" + match.group(2).replaceAll("[ -]", ""));
    }
}
