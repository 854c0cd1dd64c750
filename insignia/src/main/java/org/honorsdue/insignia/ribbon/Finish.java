package org.honorsdue.insignia.ribbon;

/** How much a drawing looks like cloth. */
public enum Finish {
    /** Plain colour, as in a chart. */
    FLAT,
    /** The ribs of the silk and a little light from above. */
    SILK
}
