package org.honorsdue.insignia.badge;

import java.util.Locale;
import java.util.Optional;

/** What the device between the wings of an aviation badge stands for. */
public enum AviationRating {
    PILOT,
    SENIOR_PILOT,
    COMMAND_PILOT,
    SERVICE_PILOT,
    LIAISON_PILOT,
    GLIDER_PILOT,
    NAVIGATOR,
    BOMBARDIER,
    AIR_CREW,
    AERIAL_GUNNER,
    FLIGHT_ENGINEER,
    OBSERVER,
    FLIGHT_SURGEON,
    FLIGHT_NURSE;

    /** The rating that words name, as in {@code Aviation badge: Senior Pilot}; the longest name counts. */
    public static Optional<AviationRating> named(String words) {
        String plain = words.toLowerCase(Locale.ROOT).replace('-', ' ').replace("aircrew", "air crew");
        AviationRating best = null;
        for (AviationRating rating : values()) {
            String name = rating.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            boolean longer = best == null || name.length() > best.name().length();
            if (plain.contains(name) && longer || plain.contains("gunner") && rating == AERIAL_GUNNER && best == null) {
                best = rating;
            }
        }
        return Optional.ofNullable(best);
    }

    /** {@code Senior Pilot}. */
    public String words() {
        var words = new StringBuilder();
        for (String part : name().split("_")) {
            words.append(words.length() == 0 ? "" : " ").append(part.charAt(0));
            words.append(part.substring(1).toLowerCase(Locale.ROOT));
        }
        return words.toString();
    }
}
