package org.honorsdue.reference.law;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.Citation;
import org.honorsdue.reference.Provenance;

/**
 * An award, badge or insigne that a finding can be about.
 *
 * @param id stable id, as in {@code eame-campaign-medal}; outside scripts depend on it
 * @param otherNames names it bore or is called by, the official ones first
 * @param established first day on which it existed in law; empty when not known
 * @param establishedBy the act, order or circular that created it
 * @param precedence lower is worn first; empty when it is not worn in the ribbon order
 * @param meaning one plain sentence for a reader who never heard of it
 */
public record Award(
        String id,
        String name,
        List<String> otherNames,
        Kind kind,
        Optional<LocalDate> established,
        Citation establishedBy,
        Optional<Integer> precedence,
        String meaning,
        Provenance provenance) {
    public Award {
        otherNames = List.copyOf(otherNames);
    }

    /** What sort of thing it is. */
    public enum Kind {
        DECORATION,
        SERVICE_MEDAL,
        UNIT_AWARD,
        FOREIGN_AWARD,
        FOREIGN_UNIT_AWARD,
        BADGE,
        INSIGNE,
        NOT_AUTHORIZED,
        /** No award: a general rule that findings cite. */
        RULE
    }
}
