package org.honorsdue.reference.history;

import java.util.List;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Theater;

/**
 * A campaign of the Second World War.
 *
 * @param id as in {@code EA-RHI}
 * @param name official name
 * @param variants other official names and the spellings on papers
 * @param ground dates for ground units, both inclusive
 * @param air dates for air units, both inclusive; the same as ground unless the lists differ
 * @param area where, in words
 * @param blanket a credit of a whole theatre (antisubmarine, ground combat, air combat) rather than a named campaign
 */
public record Campaign(
        String id,
        Theater theater,
        String medal,
        String name,
        List<String> variants,
        DateSpan ground,
        DateSpan air,
        String area,
        boolean blanket,
        String note,
        Provenance provenance) {
    public Campaign {
        variants = List.copyOf(variants);
    }
}
