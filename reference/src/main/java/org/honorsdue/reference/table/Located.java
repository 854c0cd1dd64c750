package org.honorsdue.reference.table;

/** A value and the line of the table it came from, so that a later check can still say where. */
public record Located<T>(long line, T value) {}
