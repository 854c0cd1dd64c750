package org.honorsdue.reference.score;

import org.honorsdue.reference.Provenance;

/**
 * Whether an award or a device brought points, each award of it anew.
 *
 * @param item award id, or {@code campaign-star}, {@code arrowhead}
 * @param counts whether it brought the points of the factor {@code combat}
 */
public record ScoreItem(String item, boolean counts, String note, Provenance provenance) {}
