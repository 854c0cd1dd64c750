/**
 * Typed entries to facts. {@link org.honorsdue.reading.CasefileReader} reads a whole soldier,
 * {@link org.honorsdue.reading.EntryReader} one line, token by token; {@code casefile} turns a file into entries,
 * {@code token} characters into pieces of meaning, {@code entry} pieces into facts.
 *
 * <p>Nothing is guessed silently: a token is plain, corrected with a note, or doubtful with its alternatives; what
 * cannot be read is listed as unread.
 */
@NullMarked
package org.honorsdue.reading;

import org.jspecify.annotations.NullMarked;
