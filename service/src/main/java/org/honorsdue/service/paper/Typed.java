package org.honorsdue.service.paper;

/** What stands in one entry. Three kinds of nothing are told apart: blank, illegible, and not supplied to us. */
public sealed interface Typed {
    /** Characters on the paper, letter by letter; never blank. */
    record Text(String text) implements Typed {
        public Text {
            if (text.isBlank()) {
                throw new IllegalArgumentException("An entry without characters is Blank, not Text.");
            }
        }
    }

    /** The clerk typed nothing there. */
    record Blank() implements Typed {}

    /** Something stands there and cannot be made out. */
    record Illegible() implements Typed {}

    /** That part of the paper was not given to us. */
    record NotSupplied() implements Typed {}
}
