package org.honorsdue.service;

/** As the records of the time distinguish it; it decides the women's corps award. */
public enum Sex {
    MALE,
    FEMALE
}
