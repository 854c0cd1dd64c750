package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/** A distance that framers keep. */
public record DisplayRule(String id, Inches length, String meaning, Provenance provenance) {}
