/**
 * Drawings on the way to the eye and the bench: {@link org.honorsdue.insignia.print.Png} for dots, {@link
 * org.honorsdue.insignia.print.CasePrint} and {@link org.honorsdue.insignia.print.DrawingPrint} for sheets at true size.
 */
@NullMarked
package org.honorsdue.insignia.print;

import org.jspecify.annotations.NullMarked;
