package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
            Word.BATTALION,
            Word.ECHELON);
    private static final Set<Word> MAY_FOLLOW = EnumSet.of(
            Word.HEADQUARTERS,
            Word.SERVICE,
            Word.MEDICAL,
            Word.ANTITANK,
            Word.CANNON,
            Word.RECONNAISSANCE,
            Word.MILITARY_POLICE,
            Word.SPECIAL_TROOPS,
            Word.ARTILLERY,
            Word.TRAINS);

    private static final Set<Word> AT_HEADQUARTERS = EnumSet.of(
            Word.HEADQUARTERS,
            Word.SERVICE,
            Word.ARTILLERY,
            Word.TRAINS,
            Word.SPECIAL_TROOPS,
            Word.DIVISION,
            Word.REGIMENT,
            Word.BATTALION,
            Word.CORPS,
            Word.ARMY,
            Word.BASE,
            Word.REAR,
            Word.FORWARD);

    /** Names of two things, typed with or without the "and". */
    private static final Map<String, String> PAIRED = Map.of(
            "division-trains", "trains",
            "ammunition-pioneer-platoon", "ammunition-and-pioneer-platoon",
            "intelligence-reconnaissance-platoon", "intelligence-and-reconnaissance-platoon");

    private PartNames() {}

    /**
     * The part that words name which follow the kind of a numbered unit, as in {@code 331st Inf Sv Co}: only parts
     * that stood in many tables of organization, or a numbered unit of its own would be taken apart. After a battalion
     * or a regiment typed as such, whatever follows is a part.
     */
    static Optional<UnitPart> ofRest(List<Word> words, boolean sized) {
        boolean usual = sized
                || words.stream()
                        .allMatch(word ->
                                word.role() == Word.Role.NOISE || ENDS.contains(word) || MAY_FOLLOW.contains(word));
        return usual ? of(words) : Optional.empty();
    }

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
        if (kept.contains(Word.PATIENTS) && !kept.equals(List.of(Word.DETACHMENT, Word.PATIENTS))) {
            return Optional.empty();
        }
        if (!headquarters && !ENDS.contains(last) && !isOffice(kept) && !kept.contains(Word.PATIENTS)) {
            return Optional.empty();
        }
        if (kept.equals(List.of(Word.DETACHMENT, Word.PATIENTS))) {
            return Optional.of(new UnitPart("detachment-of-patients"));
        }
        if (kept.size() == 1 && ENDS.contains(last) && last != Word.BAND) {
            return Optional.empty();
        }
        if (headquarters && !kept.stream().allMatch(word -> ENDS.contains(word) || AT_HEADQUARTERS.contains(word))) {
            return Optional.empty();
        }
        if (headquarters) {
            return Optional.of(new UnitPart(headquarters(kept)));
        }
        String id = id(kept);
        return Optional.of(new UnitPart(PAIRED.getOrDefault(id, id)));
    }

    /** The words as the id of a part. */
    static String id(List<Word> words) {
        return String.join(
                "-",
                words.stream()
                        .filter(word -> word.role() != Word.Role.NOISE)
                        .map(PartNames::slug)
                        .toList());
    }

    private static boolean isOffice(List<Word> kept) {
        return kept.equals(List.of(Word.ARTILLERY))
                || kept.equals(List.of(Word.DIVISION, Word.ARTILLERY))
                || kept.equals(List.of(Word.TRAINS))
                || kept.equals(List.of(Word.DIVISION, Word.TRAINS))
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
            if (ENDS.contains(word) && word != Word.BATTALION) {
                return before + service + "-" + slug(word);
            }
        }
        return before + service;
    }

    private static String slug(Word word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
