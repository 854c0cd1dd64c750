/**
 * What a soldier wore, drawn true and to scale from what was published and what was found.
 *
 * <p>{@code drawing} is the ink and paper: shapes in inches, written as SVG. {@code ribbon} draws ribbons with their
 * devices and lays out the rack: start at {@link org.honorsdue.insignia.ribbon.RibbonRack}. {@code print} turns a
 * drawing into a picture. Nothing here decides an award: drawings take findings and add nothing to them.
 */
@NullMarked
package org.honorsdue.insignia;

import org.jspecify.annotations.NullMarked;
