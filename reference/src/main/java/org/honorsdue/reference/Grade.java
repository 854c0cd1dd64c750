package org.honorsdue.reference;

import java.util.Optional;

/** How far the text behind a row or a clause was verified. */
public enum Grade {
    /** Read in the publication itself or a faithful reproduction of it. */
    TEXT,
    /** Read in another work that reports the publication. */
    SECONDARY,
    /** Not read: from memory of the trade. May suggest, never decide. */
    MEMORY;

    /** What a reader is told beside a fact: nothing of what was read in the publication itself. */
    public Optional<String> reservation() {
        return switch (this) {
            case TEXT -> Optional.empty();
            case SECONDARY -> Optional.of("at second hand");
            case MEMORY -> Optional.of("from memory");
        };
    }
}
