/**
 * One reader for each kind of entry: pieces of meaning to facts. Start at {@link org.honorsdue.reading.entry.EntryReaders}.
 * The readers for lists of awards, campaigns and badges are one, since clerks put every item into every box.
 */
@NullMarked
package org.honorsdue.reading.entry;

import org.jspecify.annotations.NullMarked;
