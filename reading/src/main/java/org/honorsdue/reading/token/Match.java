package org.honorsdue.reading.token;

import org.jspecify.annotations.Nullable;

/**
 * A phrase found at some word.
 *
 * @param to one past its last word
 * @param correction how a word of it was put right; null when it is as known
 */
record Match(int to, Sense[] senses, @Nullable String correction) {}
