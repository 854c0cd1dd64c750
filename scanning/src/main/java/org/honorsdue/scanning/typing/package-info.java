/** Finding the typed lines within a box: away with the rules, the printed caption and the dirt. */
@NullMarked
package org.honorsdue.scanning.typing;

import org.jspecify.annotations.NullMarked;
