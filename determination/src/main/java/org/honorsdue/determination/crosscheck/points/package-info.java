/**
 * The arithmetic of the Adjusted Service Rating score, run backwards: from the number on the paper to every life that
 * gives it. Start at {@link org.honorsdue.determination.crosscheck.points.PointsSolver}.
 */
@NullMarked
package org.honorsdue.determination.crosscheck.points;

import org.jspecify.annotations.NullMarked;
