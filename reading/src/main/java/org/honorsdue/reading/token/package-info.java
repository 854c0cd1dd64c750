/**
 * From characters to pieces of meaning: the words of a text, the lexicon of what clerks typed, dates and order citations.
 * Start at {@link org.honorsdue.reading.token.Lexicon}, then {@link org.honorsdue.reading.token.Pieces}. Knows no entry of the
 * paper beyond the kinds of meaning it prefers; what the pieces say together is for {@code reading.entry}.
 */
@NullMarked
package org.honorsdue.reading.token;

import org.jspecify.annotations.NullMarked;
