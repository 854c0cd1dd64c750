/**
 * What was published about ribbons, medals, devices, badges, sleeve insignia and their order of wear: widths, colours,
 * sizes.
 *
 * <p>Start at {@link org.honorsdue.reference.insignia.InsigniaTables#published()}. Lengths are exact fractions of an
 * inch, {@link org.honorsdue.reference.insignia.Inches}. Shades are our own estimates, as their table says.
 */
@NullMarked
package org.honorsdue.reference.insignia;

import org.jspecify.annotations.NullMarked;
