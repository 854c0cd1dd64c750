package org.honorsdue.determination.nextsteps;

/**
 * A question a finding leaves open.
 *
 * @param award id of the award it is about
 * @param name the award by name
 * @param question in plain words, as the finding puts it
 */
public record OpenQuestion(String award, String name, String question) {}
