package org.honorsdue.reference;

/** The areas by which the campaign medals divide the world (Executive Order 9265 and the regulations under it). */
public enum Theater {
    /** Inside the continental limits of the United States; Alaska and Hawaii are outside them for this purpose. */
    CONTINENTAL_US,
    /** American Theater outside the continental United States. */
    AMERICAN,
    /** European-African-Middle Eastern Theater. */
    EAME,
    /** Asiatic-Pacific Theater. */
    ASIATIC_PACIFIC
}
