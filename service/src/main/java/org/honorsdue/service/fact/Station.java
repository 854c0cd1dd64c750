package org.honorsdue.service.fact;

import java.util.Optional;
import java.util.Set;
import org.honorsdue.reference.Theater;

/**
 * Presence on duty at a place, from evidence; both ends inclusive.
 *
 * @param place as given
 * @param knownPlace the place in the reference table, when it is there
 */
public record Station(
        String place,
        Optional<String> knownPlace,
        Set<Theater> theaters,
        Optional<PartialDate> from,
        Optional<PartialDate> to,
        Basis basis)
        implements ServiceFact {
    public Station {
        theaters = Set.copyOf(theaters);
    }
}
