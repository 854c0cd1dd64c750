package org.honorsdue.casebook;

import java.util.Locale;

/** Words by which a case can be found. */
public record SearchTerm(Field field, String term) {
    private static final int LONGEST = 1000;

    public SearchTerm {
        term = term.length() > LONGEST ? term.substring(0, LONGEST) : term;
    }

    /** What kind of words they are. */
    public enum Field {
        NAME,
        UNIT,
        AWARD,
        QUESTION,
        TEXT
    }

    String folded() {
        return term.toLowerCase(Locale.ROOT);
    }
}
