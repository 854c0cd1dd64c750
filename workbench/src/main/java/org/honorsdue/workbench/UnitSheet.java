package org.honorsdue.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.honorsdue.reading.unit.OrganizationReading;
import org.honorsdue.reference.unit.Held;
import org.honorsdue.reference.unit.LooseDate;
import org.honorsdue.reference.unit.Membership;
import org.honorsdue.reference.unit.OverseasHistory;
import org.honorsdue.reference.unit.UnitCard;
import org.honorsdue.reference.unit.UnitCards;

/**
 * What is known of a unit that was asked for by what is typed for it.
 *
 * @param card empty when the unit is not in the tables, or what was typed fits several
 */
public record UnitSheet(OrganizationReading reading, Optional<UnitCard> card) {
    static UnitSheet of(OrganizationReading reading, UnitCards cards) {
        return new UnitSheet(reading, reading.ids().stream().findFirst().flatMap(cards::card));
    }

    /** Through which larger unit something is held, how much of the unit it covers, and how far it was read. */
    public static String aside(Held<?> held) {
        var words = new ArrayList<String>();
        if (held.inherited()) {
            words.add("through the " + held.holder().name());
        }
        switch (held.reach()) {
            case ALL -> {}
            case A_PART -> words.add("a part of it");
            case ANOTHER_PART -> words.add("another part of it");
        }
        held.grade().reservation().ifPresent(words::add);
        return String.join(", ", words);
    }

    /** A tie to a larger unit: what kind, when, and how far it was read. */
    public static String aside(Membership tie) {
        var words = new ArrayList<String>();
        words.add(tie.relation().name().toLowerCase(Locale.ROOT));
        if (!tie.when().text().isBlank()) {
            words.add(tie.when().words());
        }
        tie.provenance().grade().reservation().ifPresent(words::add);
        return String.join(", ", words);
    }

    /** The way overseas and back, in words. */
    public static String words(OverseasHistory history) {
        var words = new ArrayList<String>();
        history.arrived().ifPresent(day -> words.add((day.words() + " " + history.arrivedAt()).strip()));
        add(words, "in combat", history.enteredCombat());
        add(words, "returned", history.returned());
        add(words, "inactivated", history.inactivated());
        history.provenance().grade().reservation().ifPresent(words::add);
        return String.join("; ", words);
    }

    private static void add(List<String> words, String what, Optional<LooseDate> date) {
        date.ifPresent(day -> words.add(what + " " + day.words()));
    }

    /** What the lines of the card were read in, each publication once with how far it was read. */
    public List<String> sources() {
        return card.stream()
                .flatMap(one -> one.sources().stream())
                .map(source -> source.source()
                        + source.grade()
                                .reservation()
                                .map(words -> " (" + words + ")")
                                .orElse(""))
                .distinct()
                .toList();
    }
}
