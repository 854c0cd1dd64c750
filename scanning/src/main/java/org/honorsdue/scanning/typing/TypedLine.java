package org.honorsdue.scanning.typing;

import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.picture.Gray;

/**
 * One line of typing, cut out with a margin of clean paper.
 *
 * @param picture the line alone; caption, rules and dirt painted over
 * @param place where it stands on the straightened page, in its pixels
 * @param baseline the row, on the straightened page, that the letters stand on
 * @param grain ink fainter than this may be the grain of the picture
 */
public record TypedLine(Gray picture, Area place, double baseline, int grain) {}
