/**
 * Shoulder sleeve insignia: drawings of our own after the blazons, with the grounds and borders of the war. Start at
 * {@link org.honorsdue.insignia.sleeve.SleeveInsignia}. What simple geometry cannot draw faithfully is an outline of its
 * size with its name.
 */
@NullMarked
package org.honorsdue.insignia.sleeve;

import org.jspecify.annotations.NullMarked;
