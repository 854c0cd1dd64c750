package org.honorsdue.determination.dossier;

import java.util.Optional;
import java.util.Set;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.Place;
import org.honorsdue.service.fact.Basis;

/**
 * Time outside the continental United States.
 *
 * @param paper number of the paper; 0 when it is known from evidence
 * @param kind what shows it
 * @param there the days at the destination
 * @param portToPort the days from leaving to reaching the United States; the same as {@code there} where no crossing is
 *     given
 * @param theaters where the destination may lie; several when the word does not tell; empty when unknown
 * @param destination in the words of the source
 * @param place the place in the tables, when the word names one
 * @param inPhilippines whether it lies in the Philippines
 */
public record Abroad(
        int paper,
        Kind kind,
        Stretch there,
        Stretch portToPort,
        Set<Theater> theaters,
        String destination,
        Optional<Place> place,
        boolean inPhilippines,
        Basis basis) {
    /** What shows the time abroad. */
    public enum Kind {
        /** A destination of the entry on service outside the United States. */
        DESTINATION,
        /** Duty at a place, from evidence. */
        STATION,
        /** Captivity. */
        CAPTIVITY,
        /** A wound at a place outside the United States: he was there that day. */
        WOUND
    }

    /** Whether it surely was in that theatre. */
    public boolean surelyIn(Theater theater) {
        return theaters.size() == 1 && theaters.contains(theater);
    }

    /** Whether it may have been in that theatre. */
    public boolean mayBeIn(Theater theater) {
        return theaters.isEmpty() || theaters.contains(theater);
    }

    /** What duty there after the surrender counts for. */
    public Place.Occupation occupation() {
        return place.map(Place::occupation).orElse(Place.Occupation.DEPENDS);
    }

    /** {@code in ETO from 29 August 1944 to 1 November 1945}. */
    public String inWords() {
        return switch (kind) {
            case DESTINATION, STATION -> "in " + destination + " from " + there.inWords();
            case CAPTIVITY -> "a prisoner from " + there.inWords();
            case WOUND -> "wounded at " + destination;
        };
    }
}
