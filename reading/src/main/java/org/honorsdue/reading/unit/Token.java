package org.honorsdue.reading.unit;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A piece of a typed line.
 *
 * @param word the word it is; only for {@link Type#WORD}
 * @param number its value; only for {@link Type#NUMBER}
 * @param ordinal whether the number was typed with an ending, as in {@code 331st}
 * @param corrected whether a slip of the typewriter was put right to read it
 * @param start first character in the line, from 0
 * @param end one past the last character
 */
record Token(
        Type type,
        @Nullable Word word,
        int number,
        boolean ordinal,
        boolean corrected,
        int start,
        int end,
        String typed) {
    enum Type {
        WORD,
        NUMBER,
        LETTER,
        UNKNOWN,
        SLASH,
        AMPERSAND,
        OPEN,
        CLOSE
    }

    boolean is(Word wanted) {
        return word == wanted;
    }

    boolean isNumber() {
        return type == Type.NUMBER;
    }

    boolean isWord() {
        return type == Type.WORD;
    }

    boolean isLetter() {
        return type == Type.LETTER;
    }

    /**
     * The word of a word token.
     *
     * @throws NullPointerException for any other token
     */
    Word meant() {
        return Objects.requireNonNull(word, "not a word");
    }

    /** The single capital letter of a letter token. */
    String letter() {
        return typed.toUpperCase(java.util.Locale.ROOT);
    }

    Token as(Word other) {
        return new Token(Type.WORD, other, 0, false, corrected, start, end, typed);
    }
}
