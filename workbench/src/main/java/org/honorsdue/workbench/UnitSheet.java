package org.honorsdue.workbench;

import java.util.Optional;
import org.honorsdue.reading.unit.OrganizationReader;
import org.honorsdue.reading.unit.OrganizationReading;
import org.honorsdue.reference.unit.UnitCard;
import org.honorsdue.reference.unit.UnitCards;
import org.honorsdue.reference.unit.UnitTables;

/**
 * What is known of a unit that was asked for by what is typed for it.
 *
 * @param card empty when the unit is not in the tables, or what was typed fits several
 */
public record UnitSheet(OrganizationReading reading, Optional<UnitCard> card) {
    static UnitSheet of(OrganizationReader units, Desk desk, String words) {
        var reading = units.read(words);
        var cards = new UnitCards(UnitTables.published(), desk.reference());
        return new UnitSheet(reading, reading.ids().stream().findFirst().flatMap(cards::card));
    }
}
