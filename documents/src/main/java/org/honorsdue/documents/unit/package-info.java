/** A unit's card as text and as JSON. Start at {@link org.honorsdue.documents.unit.UnitCardText}. */
@NullMarked
package org.honorsdue.documents.unit;

import org.jspecify.annotations.NullMarked;
