package org.honorsdue.insignia.badge;

import java.util.Locale;
import java.util.Optional;

/** The three classes of the marksmanship badge. */
public enum MarksmanshipClass {
    MARKSMAN,
    SHARPSHOOTER,
    EXPERT;

    /** The class that words begin with, as in {@code Expert, Rifle}. */
    public static Optional<MarksmanshipClass> named(String words) {
        String plain = words.strip().toUpperCase(Locale.ROOT);
        for (MarksmanshipClass level : values()) {
            if (plain.startsWith(level.name())) {
                return Optional.of(level);
            }
        }
        return Optional.empty();
    }

    /** {@code Expert}. */
    public String words() {
        return name().charAt(0) + name().substring(1).toLowerCase(Locale.ROOT);
    }
}
