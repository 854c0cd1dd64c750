@NullMarked
package org.honorsdue.reading;

import org.jspecify.annotations.NullMarked;
