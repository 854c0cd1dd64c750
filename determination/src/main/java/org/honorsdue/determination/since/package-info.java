/**
 * Then and since: what he was due on the day he left, what later law added and when, what he is due today. Start at
 * {@link org.honorsdue.determination.since.ThenAndSince}.
 */
@NullMarked
package org.honorsdue.determination.since;

import org.jspecify.annotations.NullMarked;
