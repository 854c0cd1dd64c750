/** What was decided, as values. Start at {@link org.honorsdue.determination.finding.Findings}. */
@NullMarked
package org.honorsdue.determination.finding;

import org.jspecify.annotations.NullMarked;
