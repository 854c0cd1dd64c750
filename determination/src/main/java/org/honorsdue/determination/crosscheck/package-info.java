/**
 * One box of the paper held against another: each check is a small class with the rule it applies, an outcome and a
 * sentence that says what does not fit and by how much.
 *
 * <p>Start at {@link org.honorsdue.determination.crosscheck.Crosschecks}. A check never decides an award; it says where
 * the paper argues with itself. Where a rule is not fixed by any text seen (rounding of months, counting of sea time)
 * every reading that was in use is accepted, and where something needed was not supplied the answer is that one cannot
 * tell.
 */
@NullMarked
package org.honorsdue.determination.crosscheck;

import org.jspecify.annotations.NullMarked;
