/**
 * What the credit of a unit means for one man. Start at {@link org.honorsdue.determination.unit.SoldierUnits}.
 *
 * <p>A soldier's unit history is a line of assignments. The unit on the separation paper is often only the one he came
 * home with, so its credit is his in the usual case at most, until dates, the campaigns typed or other evidence tie him
 * to it. A row of the tables that is from memory suggests and never decides.
 */
@NullMarked
package org.honorsdue.determination.unit;

import org.jspecify.annotations.NullMarked;
