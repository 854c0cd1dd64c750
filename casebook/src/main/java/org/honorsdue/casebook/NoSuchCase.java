package org.honorsdue.casebook;

/** There is no case with that id. */
public final class NoSuchCase extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoSuchCase(String id) {
        super("There is no case \"" + id + "\" in this casebook. It may have been opened from an old link.");
    }
}
