/** The awards and the clauses of the law on them. Start at {@link org.honorsdue.reference.law.Award}. */
@NullMarked
package org.honorsdue.reference.law;

import org.jspecify.annotations.NullMarked;
