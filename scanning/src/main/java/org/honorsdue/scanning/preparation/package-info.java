/** Straightening and cleaning a page before anything is read from it. */
@NullMarked
package org.honorsdue.scanning.preparation;

import org.jspecify.annotations.NullMarked;
