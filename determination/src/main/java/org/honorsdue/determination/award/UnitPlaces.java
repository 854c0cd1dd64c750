package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.unit.SoldierUnits;
import org.honorsdue.determination.unit.UnitClaim;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.unit.Whereabouts;
import org.honorsdue.reference.unit.Whereabouts.Area;

/** Where his unit stood after the surrender, by the tables of units: a guide to occupation credit and not the credit. */
final class UnitPlaces {
    private static final Set<Area> OCCUPIED =
            EnumSet.of(Area.GERMANY, Area.AUSTRIA, Area.JAPAN, Area.KOREA, Area.MIXED_OCCUPIED);

    private UnitPlaces() {}

    private static List<UnitClaim<Whereabouts>> after(Dossier soldier, long first, long last) {
        return SoldierUnits.of(soldier)
                .whereabouts(new DateSpan(LocalDate.ofEpochDay(first), LocalDate.ofEpochDay(last)))
                .stream()
                .filter(claim -> !claim.present().isNotMet())
                .toList();
    }

    /** Whether the tables know where it stood, and no part of it was occupied. */
    static boolean outsideOnly(Dossier soldier, long first, long last) {
        var known = after(soldier, first, last);
        return !known.isEmpty()
                && known.stream()
                        .allMatch(claim -> claim.held().row().area() == Area.ELSEWHERE
                                || claim.held().row().area() == Area.CZECHOSLOVAKIA);
    }

    /** Whether a text that was read puts it in an occupied area for thirty days. */
    static boolean readInOccupiedArea(Dossier soldier, long first, long last) {
        return after(soldier, first, last).stream()
                .anyMatch(claim -> !claim.fromMemory()
                        && OCCUPIED.contains(claim.held().row().area())
                        && claim.held()
                                .row()
                                .when()
                                .widest()
                                .map(days -> days.days() >= 30)
                                .orElse(false));
    }

    /** As an aside in a sentence; empty when the tables do not say. */
    static String inWords(Dossier soldier, long first, long last) {
        var words = new StringBuilder();
        for (var claim : after(soldier, first, last)) {
            words.append(words.isEmpty() ? " (" : "; ")
                    .append(claim.held().holder().name())
                    .append(", ")
                    .append(claim.held().row().when().words())
                    .append(": ")
                    .append(claim.held().row().place())
                    .append(claim.fromMemory() ? ", from memory" : "");
        }
        return words.isEmpty() ? "" : words.append(')').toString();
    }
}
