package org.honorsdue.reference.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.unit.Held.Reach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Dates and ties of real units: sources as in the tables; the rules on attached units: opening of DA GO 43, 1950. */
@DisplayName("What a unit holds, and what through its parents")
@DisplayNameGeneration(ReplaceUnderscores.class)
class UnitHistoryTest {
    private final UnitHistory history = new UnitHistory(UnitTables.published(), Reference.published());

    private List<String> campaigns(String id) {
        return history.campaigns(id).stream()
                .map(held -> held.row().campaign().name())
                .toList();
    }

    @Test
    void a_regiment_takes_the_campaigns_of_its_division() {
        assertThat(campaigns("infantry-regiment-331"))
                .containsExactly("Normandy", "Northern France", "Rhineland", "Ardennes-Alsace", "Central Europe");
        assertThat(history.campaigns("infantry-regiment-331"))
                .allMatch(Held::inherited)
                .allSatisfy(held -> assertThat(held.holder().id()).isEqualTo("infantry-division-83"));
    }

    @Test
    void a_regiment_that_left_a_division_in_1942_takes_none_of_its_later_campaigns() {
        // The 161st Infantry left the 41st Division on 14 Feb 1942 and fought with the 25th.
        assertThat(campaigns("infantry-regiment-161")).contains("Guadalcanal").doesNotContain("Papua");
    }

    @Test
    void a_list_of_its_own_goes_before_the_parents() {
        assertThat(campaigns("infantry-regiment-422")).doesNotContain("Central Europe");
        assertThat(campaigns("infantry-regiment-424")).contains("Central Europe");
    }

    @Test
    void what_is_inherited_is_no_surer_than_the_tie() {
        for (var held : history.campaigns("infantry-regiment-331")) {
            assertThat(held.restsOn()).hasSize(2);
            assertThat(held.grade()).isEqualTo(Grade.SECONDARY);
        }
    }

    @Test
    void a_citation_of_the_division_reaches_its_own_regiments_and_not_those_attached() {
        assertThat(cited("glider-infantry-regiment-327")).anyMatch(action -> action.contains("Bastogne"));
        // 401st Glider Infantry, 2nd Battalion, was with the 82nd: excluded by the text of the citation.
        assertThat(history.awards("glider-infantry-regiment-401/battalion-2").stream()
                        .filter(held -> held.row().action().contains("Bastogne")))
                .isEmpty();
    }

    private List<String> cited(String id) {
        return history.awards(id).stream()
                .filter(held -> held.row().award() == UnitAward.Kind.DISTINGUISHED_UNIT_CITATION)
                .map(held -> held.row().action())
                .toList();
    }

    @Test
    void a_company_shares_in_the_citation_of_its_battalion_and_not_in_that_of_another() {
        assertThat(cited("infantry-regiment-415/company-f")).anyMatch(action -> action.contains("Lucherberg"));
        assertThat(cited("infantry-regiment-415/company-b")).isEmpty();
        assertThat(history.awards("infantry-regiment-415").stream()
                        .filter(held -> held.row().action().contains("Lucherberg")))
                .isNotEmpty()
                .allMatch(held -> held.reach() == Reach.A_PART);
    }

    @Test
    void a_platoon_cited_leaves_its_company_open() {
        assertThat(UnitHistory.reach(List.of(new UnitPart("company-f/platoon-3")), List.of(new UnitPart("company-f"))))
                .isEqualTo(Reach.A_PART);
        assertThat(UnitHistory.reach(List.of(new UnitPart("company-f/platoon-3")), List.of(new UnitPart("company-g"))))
                .isEqualTo(Reach.ANOTHER_PART);
    }

    @Test
    void the_patch_is_that_of_the_division() {
        assertThat(history.patch("infantry-regiment-331/company-b")
                        .orElseThrow()
                        .holder()
                        .id())
                .isEqualTo("infantry-division-83");
    }

    @Test
    void the_card_gathers_it_all() {
        var card = new UnitCards(UnitTables.published(), Reference.published())
                .card("infantry-regiment-331/company-b")
                .orElseThrow();
        assertThat(card.part()).isEqualTo("Company B");
        assertThat(card.battalion().orElseThrow().battalion()).isEqualTo(1);
        assertThat(card.largerUnits()).extracting(Unit::id).containsExactly("infantry-division-83");
        assertThat(card.campaigns()).hasSize(5);
        assertThat(card.whereabouts()).isNotEmpty();
        assertThat(card.overseas().orElseThrow().unit()).isEqualTo("infantry-division-83");
        assertThat(card.sameNumber())
                .extracting(Unit::name)
                .contains("331st Bombardment Group")
                .doesNotContain("331st Infantry Regiment");
    }

    @Test
    void nobody_has_a_card_who_is_not_in_the_tables() {
        assertThat(new UnitCards(UnitTables.published(), Reference.published()).card("infantry-regiment-999"))
                .isEmpty();
    }
}
