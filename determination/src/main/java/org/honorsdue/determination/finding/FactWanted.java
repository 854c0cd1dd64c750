package org.honorsdue.determination.finding;

/**
 * A fact that is not known and would help to decide.
 *
 * @param kind id of the kind of fact, the same that the table of proof documents uses, as in {@code wound-by-enemy}
 * @param about what exactly, in words a letter can use: unit, place, dates
 */
public record FactWanted(String kind, String about) {}
