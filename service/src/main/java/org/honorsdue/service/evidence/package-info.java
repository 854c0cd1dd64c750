/** What is known of the soldier from anything but the separation papers. Start at {@link org.honorsdue.service.evidence.Evidence}. */
@NullMarked
package org.honorsdue.service.evidence;

import org.jspecify.annotations.NullMarked;
