package org.honorsdue.reference.paper;

import java.util.List;
import org.honorsdue.reference.Provenance;

/**
 * A regulation or a phrase that stands on papers as reason for separation, and what follows from it.
 *
 * @param code the regulation, as in {@code AR 615-365}, or the phrase where there is none
 * @param asWritten how clerks typed it
 * @param meaning in plain words
 * @param supports what it supports; empty when nothing
 * @param doesNotSupport what it is wrongly taken for; empty when nothing is known
 * @param secondPaper whether it tells of a second paper of the same soldier
 */
public record SeparationCode(
        String code,
        List<String> asWritten,
        String meaning,
        String supports,
        String doesNotSupport,
        boolean secondPaper,
        Provenance provenance) {
    public SeparationCode {
        asWritten = List.copyOf(asWritten);
    }
}
