package org.honorsdue.reference.history;

import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Provenance;

/**
 * An occupied area, where thirty days running while assigned earn the Army of Occupation Medal.
 *
 * @param id as in {@code germany}
 * @param dates duty there counts from the first to the last day, both inclusive
 * @param clasp what duty there puts on the medal
 * @param gateMedal id of the campaign medal that opens the gated days
 * @param gated days in this span, both ends inclusive, count only for a soldier who had earned the gate medal by
 *     service before its first day
 */
public record OccupationArea(
        String id,
        String name,
        DateSpan dates,
        Place.Occupation clasp,
        String gateMedal,
        DateSpan gated,
        String note,
        Provenance provenance) {}
