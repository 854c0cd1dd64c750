/** Drawings on the way to the eye: pictures of dots. Start at {@link org.honorsdue.insignia.print.Png}. */
@NullMarked
package org.honorsdue.insignia.print;

import org.jspecify.annotations.NullMarked;
