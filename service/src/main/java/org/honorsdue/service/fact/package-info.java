/**
 * What the papers and the evidence mean: one record per kind of fact, each with the characters it rests on.
 * Start at {@link org.honorsdue.service.fact.ServiceFacts}.
 */
@NullMarked
package org.honorsdue.service.fact;

import org.jspecify.annotations.NullMarked;
