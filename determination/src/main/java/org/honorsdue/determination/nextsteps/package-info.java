/**
 * What to do next: the fewest and easiest documents that would settle all open questions together, where each is kept,
 * what it can and cannot prove. Start at {@link org.honorsdue.determination.nextsteps.NextSteps}.
 */
@NullMarked
package org.honorsdue.determination.nextsteps;

import org.jspecify.annotations.NullMarked;
