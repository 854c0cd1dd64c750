package org.honorsdue.service.fact;

import java.util.Optional;

/**
 * A weapons qualification.
 *
 * @param level marksman, sharpshooter or expert
 * @param weapon the bar it earns, as in {@code Rifle}; empty when no weapon is named
 */
public record Qualification(Level level, Optional<String> weapon, Optional<PartialDate> date, Basis basis)
        implements ServiceFact {
    /** The three classes of the marksmanship badge, lowest first. */
    public enum Level {
        MARKSMAN,
        SHARPSHOOTER,
        EXPERT
    }
}
