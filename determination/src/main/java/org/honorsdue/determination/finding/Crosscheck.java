package org.honorsdue.determination.finding;

import java.util.List;
import java.util.Set;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.paper.Entry;

/**
 * One entry held against another.
 *
 * @param check id, as in {@code points-score}
 * @param awards ids of the awards the outcome touches
 */
public record Crosscheck(
        String check,
        Outcome outcome,
        String says,
        List<Entry> entries,
        List<Origin> origins,
        Set<String> awards,
        Provenance rule) {
    public Crosscheck {
        entries = List.copyOf(entries);
        origins = List.copyOf(origins);
        awards = Set.copyOf(awards);
    }

    /** Whether the entries fit together. */
    public enum Outcome {
        AGREES("agrees"),
        DISAGREES("disagrees"),
        CANNOT_TELL("cannot-tell");

        private final String id;

        Outcome(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }
}
