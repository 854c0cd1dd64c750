/**
 * Ink and paper. A {@link org.honorsdue.insignia.drawing.Drawing} is a sheet of marks in inches, y downwards; {@link
 * org.honorsdue.insignia.drawing.Svg} is the same as text. The same drawing gives the same bytes. Knows no award.
 */
@NullMarked
package org.honorsdue.insignia.drawing;

import org.jspecify.annotations.NullMarked;
