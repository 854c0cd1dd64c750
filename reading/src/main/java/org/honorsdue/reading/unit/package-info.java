/**
 * Organizations as typed: a line such as {@code CoB331stInf} to the unit it means.
 *
 * <p>Start at {@link org.honorsdue.reading.unit.OrganizationReader}. A line is cut into {@link
 * org.honorsdue.reading.unit.Token}s, the tokens into parts and numbered designations, and these are looked up in the
 * tables of units. What is not in the tables is said to be so, with the nearest units that are; nothing is matched in
 * silence.
 */
@NullMarked
package org.honorsdue.reading.unit;

import org.jspecify.annotations.NullMarked;
