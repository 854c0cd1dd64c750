/**
 * The Adjusted Service Rating of 1945, the points a soldier went home by. Start at
 * {@link org.honorsdue.reference.score.ScoreFactor}; {@link org.honorsdue.reference.score.ScoreItem} says which awards
 * counted, {@link org.honorsdue.reference.score.RatingDay} up to which day, and
 * {@link org.honorsdue.reference.score.CriticalScore} how many points let whom go.
 */
@NullMarked
package org.honorsdue.reference.score;

import org.jspecify.annotations.NullMarked;
