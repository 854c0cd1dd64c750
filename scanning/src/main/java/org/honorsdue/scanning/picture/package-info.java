/** Pictures as they come in: files, their limits, and gray pixels. */
@NullMarked
package org.honorsdue.scanning.picture;

import org.jspecify.annotations.NullMarked;
