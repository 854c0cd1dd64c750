package org.honorsdue.reference.paper;

import org.honorsdue.reference.Provenance;

/**
 * A token as clerks typed it and one meaning of it. The same token may stand in several rows.
 *
 * @param token as typed on papers
 * @param expansion in full
 * @param kind what it names: award, badge, device, unit, arm, grade, place, order, weapon ...
 * @param ambiguous whether another meaning of the same token is possible
 */
public record Abbreviation(
        String token, String expansion, String kind, boolean ambiguous, String note, Provenance provenance) {}
