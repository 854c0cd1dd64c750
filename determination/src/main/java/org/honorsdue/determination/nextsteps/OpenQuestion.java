package org.honorsdue.determination.nextsteps;

/**
 * A question left open by a finding or by a cross-check that disagrees.
 *
 * @param about id of the award or of the cross-check
 * @param name the award by name, or what was compared
 * @param question in plain words
 */
public record OpenQuestion(String about, String name, String question) {}
