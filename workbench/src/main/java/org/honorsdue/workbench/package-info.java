@NullMarked
package org.honorsdue.workbench;

import org.jspecify.annotations.NullMarked;
