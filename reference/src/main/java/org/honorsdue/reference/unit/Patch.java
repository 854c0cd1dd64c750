package org.honorsdue.reference.unit;

import org.honorsdue.reference.Provenance;

/** A shoulder sleeve insigne in words. */
public record Patch(
        String unit, String shape, String description, String approved, String note, Provenance provenance) {}
