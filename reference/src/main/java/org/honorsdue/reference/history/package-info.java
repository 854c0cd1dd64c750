/** Where and when the war was fought: campaigns, places, assaults. Start at {@link org.honorsdue.reference.history.Campaign}. */
@NullMarked
package org.honorsdue.reference.history;

import org.jspecify.annotations.NullMarked;
