package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reference.unit.UnitPart;

/** Unnumbered parts of a unit: service company, medical detachment, headquarters battery. */
final class PartNames {
    private static final Set<Word> ENDS = EnumSet.of(
            Word.COMPANY,
            Word.BATTERY,
            Word.TROOP,
            Word.SQUADRON,
            Word.PLATOON,
            Word.SECTION,
            Word.DETACHMENT,
            Word.TEAM,
            Word.BAND,
            Word.FLIGHT,
            Word.ECHELON);
    private static final Set<Word> MAY_NAME = EnumSet.of(
            Word.HEADQUARTERS,
            Word.SERVICE,
            Word.MEDICAL,
            Word.ANTITANK,
            Word.CANNON,
            Word.WEAPONS,
            Word.HEAVY,
            Word.RECONNAISSANCE,
            Word.MAINTENANCE,
            Word.SUPPLY,
            Word.SIGNAL,
            Word.MILITARY_POLICE,
            Word.ORDNANCE,
            Word.QUARTERMASTER,
            Word.TRANSPORTATION,
            Word.INTELLIGENCE,
            Word.PERSONNEL,
            Word.AMMUNITION,
            Word.SPECIAL,
            Word.SPECIAL_TROOPS,
            Word.ARTILLERY,
            Word.DIVISION,
            Word.REGIMENT,
            Word.BATTALION,
            Word.ENGINEER,
            Word.CAVALRY,
            Word.TRAINS,
            Word.REAR,
            Word.FORWARD,
            Word.MEDIUM,
            Word.LIGHT,
            Word.DENTAL,
            Word.POSTAL,
            Word.TANK,
            Word.CASUAL,
            Word.STUDENT);

    private PartNames() {}

    /**
     * The part the words name. Headquarters alone and division artillery are parts; everything else must end in a size,
     * as in service company.
     */
    static Optional<UnitPart> of(List<Word> words) {
        var kept = new ArrayList<Word>();
        for (Word word : words) {
            if (word.role() != Word.Role.NOISE && !kept.contains(word)) {
                kept.add(word);
            }
        }
        if (kept.isEmpty()) {
            return Optional.empty();
        }
        Word last = kept.get(kept.size() - 1);
        boolean headquarters = kept.contains(Word.HEADQUARTERS);
        if (!headquarters && !ENDS.contains(last) && !isOffice(kept)) {
            return Optional.empty();
        }
        for (Word word : kept) {
            if (!ENDS.contains(word) && !MAY_NAME.contains(word)) {
                return Optional.empty();
            }
        }
        if (kept.size() == 1 && ENDS.contains(last) && last != Word.BAND) {
            return Optional.empty();
        }
        if (headquarters) {
            return Optional.of(new UnitPart(headquarters(kept)));
        }
        var id = new StringBuilder();
        for (Word word : kept) {
            id.append(id.isEmpty() ? "" : "-").append(slug(word));
        }
        return Optional.of(new UnitPart(id.toString()));
    }

    private static boolean isOffice(List<Word> kept) {
        return kept.equals(List.of(Word.ARTILLERY))
                || kept.equals(List.of(Word.DIVISION, Word.ARTILLERY))
                || kept.equals(List.of(Word.TRAINS))
                || kept.equals(List.of(Word.SPECIAL_TROOPS));
    }

    private static String headquarters(List<Word> kept) {
        var before = new StringBuilder();
        if (kept.contains(Word.ARTILLERY)) {
            before.append("division-artillery-");
        }
        if (kept.contains(Word.SPECIAL_TROOPS)) {
            before.append("special-troops-");
        }
        if (kept.contains(Word.TRAINS)) {
            before.append("trains-");
        }
        var service = kept.contains(Word.SERVICE) ? "headquarters-and-service" : "headquarters";
        for (Word word : kept) {
            if (ENDS.contains(word)) {
                return before + service + "-" + slug(word);
            }
        }
        return before + service;
    }

    private static String slug(Word word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
