package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.assertj.core.api.Assertions;
import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Awards by order: what a paper's word is worth")
@DisplayNameGeneration(ReplaceUnderscores.class)
class OrderedAwardTest {
    private static Case soldier() {
        return enlisted("1943-02-03", "1945-11-11");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "distinguished-service-cross",
                "distinguished-service-medal",
                "silver-star",
                "legion-of-merit",
                "distinguished-flying-cross",
                "soldiers-medal",
                "air-medal"
            })
    void an_order_seen_or_cited_is_the_award_a_bare_entry_is_presumed_and_nothing_is_open(String award) {
        assertThat(soldier()
                        .order(award, "GO 40 HQ 999th Inf Div", "1944-12-03")
                        .on(award))
                .isAuthorized()
                .isNotOnPaper()
                .rests("order", Verdict.MET);
        assertThat(soldier().claimsWithOrder(award, "GO 40 HQ 999 Inf Div 44").on(award))
                .isAuthorized()
                .isOnPaper()
                .saying("The order itself was not seen");
        assertThat(soldier().claims(award).on(award))
                .isPresumed()
                .isOnPaper()
                .wants("award-order")
                .settledBy("unit-general-orders");
        assertThat(soldier().doubtfully().claims(award).on(award)).isUnsettled().isOnPaper();
        assertThat(soldier().on(award)).isUnsettled().isNotOnPaper().wants("award-order");
        Assertions.assertThat(soldier().find(award)).isEmpty();
    }

    @Test
    void the_Medal_of_Honor_is_never_presumed() {
        assertThat(soldier().claims("medal-of-honor").on("medal-of-honor")).isUnsettled();
        assertThat(soldier().order("medal-of-honor", "WD GO 16", "1945-02-08").on("medal-of-honor"))
                .isAuthorized()
                .saying("public roll");
    }

    @Test
    void further_awards_are_clusters_and_five_are_silver() {
        assertThat(soldier().claims("air-medal", 4).on("air-medal"))
                .counts(4)
                .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 3)
                .rests("no-numerals", Verdict.MET);
        assertThat(soldier().claims("air-medal", 13).on("air-medal"))
                .counts(13)
                .wears(Device.SILVER_OAK_LEAF_CLUSTER, 2)
                .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 2);
    }

    @Test
    void orders_for_more_than_the_paper_shows_make_it_short() {
        assertThat(soldier()
                        .claims("air-medal", 1)
                        .order("air-medal", "GO 10 HQ 99th AF", "1944-03-03")
                        .order("air-medal", "GO 20 HQ 99th AF", "1944-05-03")
                        .on("air-medal"))
                .isAuthorized()
                .counts(2)
                .isShortOnPaper();
    }

    @Test
    void a_paper_that_claims_more_than_the_orders_seen_is_told() {
        assertThat(soldier()
                        .claims("air-medal", 4)
                        .order("air-medal", "GO 10 HQ 99th AF", "1944-03-03")
                        .on("air-medal"))
                .counts(4)
                .saying("claims 4 awards, orders were seen for 1");
    }

    @Test
    void an_order_after_the_discharge_is_why_the_paper_lacks_it() {
        assertThat(soldier()
                        .order("silver-star", "GO 40 HQ 999th Inf Div", "1946-02-03")
                        .on("silver-star"))
                .saying("The order is dated 3 February 1946, after he left the service");
    }

    @ParameterizedTest
    @CsvSource({
        "legion-of-merit, no-v",
        "distinguished-flying-cross, no-v",
        "air-medal, v-after-1964",
        "army-commendation-medal, v-after-1964"
    })
    void a_V_that_the_war_did_not_know_is_refused(String award, String clause) {
        assertThat(soldier().claims(award, 1, with(Device.LETTER_V, 1)).on(award))
                .wears(Device.LETTER_V, 0)
                .rests(clause, Verdict.NOT_MET);
    }

    @Test
    void the_commendation_ribbon_was_created_in_December_1945() {
        assertThat(soldier()
                        .claimsWithOrder("army-commendation-medal", "GO 4 HQ 999 SvC 46")
                        .on("army-commendation-medal"))
                .isAuthorized();
        assertThat(soldier()
                        .order("army-commendation-medal", "GO 4", "1946-02-01")
                        .asOf("1945-12-17")
                        .on("army-commendation-medal"))
                .isNotAuthorized();
    }

    @Test
    void a_foreign_decoration_needs_an_order_that_names_him_and_the_units_gives_him_nothing() {
        assertThat(soldier()
                        .order("french-croix-de-guerre", "Decision 000", "1945-05-02")
                        .on("french-croix-de-guerre"))
                .isAuthorized();
        assertThat(soldier().claims("french-croix-de-guerre").on("french-croix-de-guerre"))
                .isUnsettled()
                .wants("foreign-award");
        for (var award : java.util.List.of("french-croix-de-guerre", "belgian-croix-de-guerre")) {
            assertThat(soldier()
                            .credited("999th Infantry", award, "1944-09-02", "1944-09-16")
                            .on(award))
                    .isNotAuthorized()
                    .rests("unit-award-gives-nothing", Verdict.NOT_MET);
        }
        assertThat(soldier()
                        .order("belgian-croix-de-guerre", "Decree 000", "1945-05-02")
                        .on("belgian-croix-de-guerre"))
                .isAuthorized()
                .rests("level-of-citation", Verdict.UNKNOWN);
        assertThat(soldier().claims("luxembourg-croix-de-guerre").on("luxembourg-croix-de-guerre"))
                .isUnsettled();
        assertThat(soldier().claims("other-foreign-individual").on("other-foreign-individual"))
                .isUnsettled()
                .rests("order", Verdict.UNKNOWN);
    }
}
