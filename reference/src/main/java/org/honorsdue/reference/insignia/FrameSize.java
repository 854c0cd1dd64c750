package org.honorsdue.reference.insignia;

import org.honorsdue.reference.Provenance;

/** A common size of frame: what is seen through the glass. */
public record FrameSize(String id, Inches width, Inches height, Provenance provenance) {}
