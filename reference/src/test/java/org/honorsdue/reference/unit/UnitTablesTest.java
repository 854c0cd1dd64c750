package org.honorsdue.reference.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Reference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("The tables of units, walked row by row")
@DisplayNameGeneration(ReplaceUnderscores.class)
class UnitTablesTest {
    private final UnitTables tables = UnitTables.published();

    @Test
    void every_unit_is_found_by_its_id_and_by_kind_and_number() {
        for (Unit unit : tables.units()) {
            assertThat(tables.unit(unit.id())).contains(unit);
            unit.number()
                    .ifPresent(number ->
                            assertThat(tables.units(unit.kind(), number)).contains(unit));
        }
    }

    @Test
    void every_campaign_named_is_a_campaign_of_the_campaign_table() {
        for (String campaign : tables.campaignIds()) {
            assertThat(Reference.published().campaign(campaign)).as(campaign).isPresent();
        }
    }

    @Test
    void every_assault_falls_within_its_campaign_or_says_that_it_is_disputed() {
        for (Unit unit : tables.units()) {
            for (UnitAssault assault : tables.assaultsOf(unit.id())) {
                var campaign =
                        Reference.published().campaign(assault.campaign()).orElseThrow();
                boolean within = assault.when().mayOverlap(campaign.ground());
                assertThat(within || assault.reach() == UnitAssault.Reach.DISPUTED)
                        .as(unit.id() + " " + assault.place())
                        .isTrue();
            }
        }
    }

    @Test
    void every_award_to_a_unit_that_the_law_knows_bears_the_id_of_the_law() {
        var known = new HashSet<String>();
        Reference.published().awards().forEach(award -> known.add(award.id()));
        for (UnitAward.Kind kind : UnitAward.Kind.values()) {
            boolean onlyOfUnits = kind == UnitAward.Kind.BELGIAN_ARMY_CITATION
                    || kind == UnitAward.Kind.NAVY_PRESIDENTIAL_UNIT_CITATION
                    || kind == UnitAward.Kind.NETHERLANDS_MILITARY_ORDER_OF_WILLIAM;
            assertThat(onlyOfUnits || known.contains(kind.id())).as(kind.id()).isTrue();
        }
    }

    @Test
    void every_division_has_campaigns_unless_it_saw_none() {
        var without = tables.units().stream()
                .filter(unit -> unit.kind().echelon() == Echelon.DIVISION)
                .filter(unit -> tables.campaignsOf(unit.id()).isEmpty())
                .map(Unit::name)
                .toList();
        // Army Almanac (1950), combat chronicles: no campaign; the Hawaiian Division was split up before 7 Dec 1941.
        assertThat(without)
                .containsExactlyInAnyOrder("98th Infantry Division", "2nd Cavalry Division", "Hawaiian Division");
    }

    @Test
    void a_row_of_memory_never_claims_a_publication() {
        for (Unit unit : tables.units()) {
            for (UnitAward award : tables.awardsOf(unit.id())) {
                assertThat(award.provenance().grade() == Grade.MEMORY)
                        .as(unit.id() + " " + award.action())
                        .isEqualTo(award.provenance().source().equals("memory"));
            }
        }
    }

    @Test
    void lettered_companies_cover_each_regiment_without_a_company_j() {
        var letters = new HashSet<String>();
        tables.letteredCompanies(UnitKind.INFANTRY_REGIMENT).forEach(battalion -> letters.addAll(battalion.letters()));
        assertThat(letters).hasSize(12).doesNotContain("J");
        assertThat(tables.battalionOf(UnitKind.INFANTRY_REGIMENT, "K")
                        .orElseThrow()
                        .battalion())
                .isEqualTo(3);
    }

    @Test
    void an_award_named_for_a_division_stands_with_a_division_and_bears_its_number() {
        for (Unit unit : tables.units()) {
            for (UnitAward award : tables.awardsOf(unit.id())) {
                if (award.asNamed().matches("[0-9]+(st|nd|rd|th) (Infantry|Airborne|Armored) Division")) {
                    assertThat(unit.kind().echelon()).as(award.asNamed()).isEqualTo(Echelon.DIVISION);
                }
                boolean severalUnits = award.asNamed().contains(" and ");
                unit.number()
                        .filter(number -> !severalUnits)
                        .ifPresent(number ->
                                assertThat(award.asNamed()).as(unit.id()).contains(Integer.toString(number)));
            }
        }
    }
}
