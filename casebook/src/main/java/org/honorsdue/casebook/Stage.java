package org.honorsdue.casebook;

import java.util.Arrays;
import java.util.Optional;

/** Where a case stands. */
public enum Stage {
    READING("reading"),
    EXAMINED("examined"),
    LETTERS_OUT("letters out"),
    ANSWERED("answered"),
    FRAMED("framed");

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The stage in the words of a file or a form; empty when there is no such stage. */
    public static Optional<Stage> ofWords(String words) {
        return Arrays.stream(values())
                .filter(stage -> stage.words.equals(words))
                .findFirst();
    }
}
