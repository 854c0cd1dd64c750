package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/** The depth between board and glass that something needs. */
public record ClearDepth(String contents, Inches depth, String meaning, Provenance provenance) {}
