package org.honorsdue.reference.unit;

import java.util.Comparator;
import java.util.List;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;

/**
 * Something that a unit holds, in its own right or through a larger unit to which it belonged at the time.
 *
 * @param row what the table says
 * @param holder the unit that the row names
 * @param inherited whether the holder is a larger unit
 * @param reach how much of the unit asked about it covers
 * @param restsOn the rows behind it: its own, and for something inherited those of the ties
 */
public record Held<T>(T row, Unit holder, boolean inherited, Reach reach, List<Provenance> restsOn) {
    public Held {
        restsOn = List.copyOf(restsOn);
    }

    /** The weakest verification of anything it rests on. */
    public Grade grade() {
        return restsOn.stream()
                .map(Provenance::grade)
                .max(Comparator.naturalOrder())
                .orElse(Grade.MEMORY);
    }

    /** How much of the unit asked about is covered. */
    public enum Reach {
        /** All of it, or the very part asked about. */
        ALL,
        /** A part of it, and which one was asked about is not known, or the row does not name the part. */
        A_PART,
        /** Another part than the one asked about. */
        ANOTHER_PART
    }
}
