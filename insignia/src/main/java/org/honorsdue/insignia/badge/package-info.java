/**
 * Badges and what is worn on the sleeve: sketches of our own in their published size. Start at {@link
 * org.honorsdue.insignia.badge.BadgeDrawing}.
 */
@NullMarked
package org.honorsdue.insignia.badge;

import org.jspecify.annotations.NullMarked;
