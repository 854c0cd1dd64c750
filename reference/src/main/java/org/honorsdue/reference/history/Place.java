package org.honorsdue.reference.history;

import java.util.List;
import java.util.Set;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Theater;

/**
 * A place or a command word that stands on papers as a destination.
 *
 * @param theaters the theatres it lies in; more than one when the word alone does not tell
 * @param occupation which occupation clasp duty there counts for after the surrender
 */
public record Place(
        String name,
        List<String> aliases,
        Set<Theater> theaters,
        Occupation occupation,
        String note,
        Provenance provenance) {
    public Place {
        aliases = List.copyOf(aliases);
        theaters = Set.copyOf(theaters);
    }

    /** What duty at the place after the surrender counts for. */
    public enum Occupation {
        NONE,
        /** Germany, Austria, the named parts of Italy: GERMANY clasp. */
        GERMANY,
        /** Japan and its former home islands, Korea: JAPAN clasp. */
        JAPAN,
        /** Only part of the area counts, or only some units. */
        DEPENDS
    }
}
