package org.honorsdue.service.fact;

/**
 * A campaign named on a paper.
 *
 * @param campaign campaign id of the reference table
 * @param asTyped the words on the paper
 */
public record CampaignClaim(String campaign, String asTyped, Basis basis) implements ServiceFact {}
