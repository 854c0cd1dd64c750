package org.honorsdue.documents.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.honorsdue.documents.findings.Ink;
import org.honorsdue.reading.unit.OrganizationReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.unit.UnitCards;
import org.honorsdue.reference.unit.UnitTables;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Dates of campaigns: 32 CFR 578 and the campaign list of the Center of Military History, as the campaign table has them. */
@DisplayName("A unit's card at the terminal")
@DisplayNameGeneration(ReplaceUnderscores.class)
class UnitCardTextTest {
    private static final UnitTables TABLES = UnitTables.published();
    private static final OrganizationReader READER = new OrganizationReader(TABLES);
    private static final UnitCards CARDS = new UnitCards(TABLES, Reference.published());

    private static String card(String typed) {
        var reading = READER.read(typed);
        return new UnitCardText(Ink.PLAIN, 200)
                .write(reading, reading.ids().stream().findFirst().flatMap(CARDS::card));
    }

    @Test
    void says_through_whom_and_when_a_campaign_is_held_and_where_that_was_read() {
        assertThat(card("Co B 331st Inf"))
                .contains("Company B, 331st Infantry Regiment, 83rd Infantry Division")
                .contains("Ardennes-Alsace, 16 December 1944 to 25 January 1945 [of the 83rd Infantry Division]")
                .contains("READ IN")
                .contains("Credit belongs to the unit");
    }

    @Test
    void of_a_unit_that_is_in_no_table_shows_the_nearest_with_what_differs_and_no_card() {
        assertThat(card("Co C 899th Inf"))
                .contains("not in our tables")
                .contains("near it: ")
                .doesNotContain("CAMPAIGNS");
    }

    /** DA GO 43, 1950, lists the battalion under its division; the tables hold a row for each. */
    @Test
    void tells_a_foreign_award_of_the_unit_and_of_its_division_once() {
        assertThat(card("Btry B 391st AFA Bn").split("Belgian fourragere 1940", -1))
                .hasSize(2);
    }

    @Test
    void names_no_publication_for_what_rests_on_memory_alone() {
        var unit = TABLES.units().stream()
                .map(one -> CARDS.card(one.id()).orElseThrow())
                .filter(card -> card.sources().isEmpty())
                .findFirst()
                .orElseThrow();
        assertThat(card(unit.unit().name())).doesNotContain("READ IN");
    }
}
