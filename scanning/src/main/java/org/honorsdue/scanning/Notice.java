package org.honorsdue.scanning;

/** Something to be told about a file or a page: what it is, and what to do. */
public record Notice(Kind kind, String says) {
    /** What kind of thing happened. */
    public enum Kind {
        /** The file could not be used at all. */
        REFUSED,
        /** The page is no form this tool knows. */
        NOT_THIS_FORM,
        /** Part of the form lies outside the picture. */
        INCOMPLETE,
        /** More than one paper is on the picture. */
        SEVERAL_PAPERS,
        /** The certificate side, or another page that carries no boxes. */
        NO_BOXES,
        /** Something that looks written by hand and was left alone. */
        HANDWRITING,
        /** The time for the page ran out. */
        OUT_OF_TIME,
        /** For information: turned, photostat, only the first picture of an animation. */
        DONE_TO_IT
    }
}
