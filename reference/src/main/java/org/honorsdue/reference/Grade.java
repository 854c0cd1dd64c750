package org.honorsdue.reference;

/** How far the text behind a row or a clause was verified. */
public enum Grade {
    /** Read in the publication itself or a faithful reproduction of it. */
    TEXT,
    /** Read in another work that reports the publication. */
    SECONDARY,
    /** Not read: from memory of the trade. May suggest, never decide. */
    MEMORY
}
