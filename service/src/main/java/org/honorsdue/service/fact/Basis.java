package org.honorsdue.service.fact;

import java.util.List;

/** What a fact rests on and how surely it was read. */
public record Basis(List<Origin> origins, Certainty certainty) {
    public Basis {
        origins = List.copyOf(origins);
    }

    /** How surely something was read. */
    public enum Certainty {
        /** As typed, one meaning. */
        PLAIN,
        /** A misspelling or a slip of the machine was put right; the note of the reading says how. */
        CORRECTED,
        /** More than one meaning remains possible; this is the likelier. Never settles anything alone. */
        DOUBTFUL
    }

    public static Basis plain(Origin origin) {
        return new Basis(List.of(origin), Certainty.PLAIN);
    }
}
