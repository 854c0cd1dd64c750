/**
 * Units: what each was, to whom it belonged and when, where it fought, what it was cited for, what it wore.
 *
 * <p>Start at {@link org.honorsdue.reference.unit.UnitTables#published()}; a whole card on one unit comes from
 * {@link org.honorsdue.reference.unit.UnitCards}. Ids are made of the kind and the number, as in
 * {@code infantry-regiment-331}; a part of a unit follows a slash, as in {@code infantry-regiment-331/company-b}.
 */
@NullMarked
package org.honorsdue.reference.unit;

import org.jspecify.annotations.NullMarked;
