package org.honorsdue.reference.unit;

import org.honorsdue.reference.Provenance;

/** Where a unit stood after the surrender. A guide to occupation credit, which itself goes by unit and day. */
public record Whereabouts(String unit, LooseSpan when, String place, Area area, String note, Provenance provenance) {
    /** What duty there counts for. */
    public enum Area {
        GERMANY,
        AUSTRIA,
        /** Only the named parts of Italy were occupied. */
        ITALY,
        CZECHOSLOVAKIA,
        JAPAN,
        KOREA,
        /** In two occupied areas, the days in each not told. */
        MIXED_OCCUPIED,
        /** Partly in an occupied area, the days not told. */
        MIXED,
        /** No occupation duty. */
        ELSEWHERE
    }
}
