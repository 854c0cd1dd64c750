@NullMarked
package org.honorsdue.cli;

import org.jspecify.annotations.NullMarked;
