/**
 * The display case: what the findings authorize, laid out in a frame by the rules of the trade. Start at {@link
 * org.honorsdue.insignia.display.CasePlan#of}. {@link org.honorsdue.insignia.display.CaseWish} is what the user chooses;
 * the plan never overlaps two things, and says where it cannot keep a rule.
 */
@NullMarked
package org.honorsdue.insignia.display;

import org.jspecify.annotations.NullMarked;
