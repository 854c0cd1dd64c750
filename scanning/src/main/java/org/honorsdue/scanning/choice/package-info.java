/** Which of several readings to offer, by what can stand in that entry; nothing is corrected in silence. */
@NullMarked
package org.honorsdue.scanning.choice;

import org.jspecify.annotations.NullMarked;
