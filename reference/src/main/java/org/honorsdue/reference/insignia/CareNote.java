package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/** What to do with the things in a case, or what to keep out of it. */
public record CareNote(String id, Kind kind, String says, Provenance provenance) {

    /** Advice can be weighed; a caution is about safety or the law. */
    public enum Kind {
        ADVICE,
        CAUTION
    }
}
