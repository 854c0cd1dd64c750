/**
 * Full-size medals: the drape with its devices in full detail, and below it a pendant that is a sketch of our own after
 * the official description, right in size, silhouette and suspension. Start at {@link
 * org.honorsdue.insignia.medal.MedalDrawing}.
 */
@NullMarked
package org.honorsdue.insignia.medal;

import org.jspecify.annotations.NullMarked;
