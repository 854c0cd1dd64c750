package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * The Adjusted Service Rating score typed on a paper.
 *
 * @param asOf the date of computation typed with it
 */
public record PointsScore(int paper, int points, Optional<PartialDate> asOf, Basis basis) implements ServiceFact {}
