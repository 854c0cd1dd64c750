package org.honorsdue.reference.paper;

import java.util.List;
import org.honorsdue.reference.Provenance;

/**
 * A word about pay, lost time or conduct on a paper, and what follows from it.
 *
 * @param id as in {@code mustering-out-pay-300}
 * @param asWritten how clerks typed it
 * @param meaning in plain words
 * @param supports what it supports; empty when nothing
 * @param doesNotSupport what it is wrongly taken for; empty when nothing is known
 */
public record PayMark(
        String id,
        List<String> asWritten,
        String meaning,
        String supports,
        String doesNotSupport,
        Provenance provenance) {
    public PayMark {
        asWritten = List.copyOf(asWritten);
    }
}
