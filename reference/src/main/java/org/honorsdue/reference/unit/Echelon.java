package org.honorsdue.reference.unit;

/** How large a thing a unit is, the smallest first. */
public enum Echelon {
    COMPANY,
    BATTALION,
    REGIMENT,
    BRIGADE,
    DIVISION,
    CORPS,
    ARMY,
    COMMAND
}
