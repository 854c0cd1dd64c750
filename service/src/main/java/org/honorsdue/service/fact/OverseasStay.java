package org.honorsdue.service.fact;

import java.util.Optional;
import java.util.Set;
import org.honorsdue.reference.Theater;

/**
 * One stay outside the continental United States, from the sailing to the return.
 *
 * @param departed left the United States, or the place before
 * @param arrived reached the destination
 * @param left departed from the destination
 * @param returned reached the United States, when this stay ended with a return
 * @param destination as typed
 * @param theaters the theatres the destination may lie in; more than one when the word does not tell; empty when unknown
 * @param place the place in the reference table, when the word names one
 */
public record OverseasStay(
        int paper,
        Optional<PartialDate> departed,
        Optional<PartialDate> arrived,
        Optional<PartialDate> left,
        Optional<PartialDate> returned,
        String destination,
        Set<Theater> theaters,
        Optional<String> place,
        Basis basis)
        implements ServiceFact {
    public OverseasStay {
        theaters = Set.copyOf(theaters);
    }
}
