package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
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

@DisplayName("Unit awards: presence in the cited action; DA GO 43, 19 December 1950, for the foreign ones")
@DisplayNameGeneration(ReplaceUnderscores.class)
class UnitAwardsTest {
    private static final String CITATION = "distinguished-unit-citation";

    private static Case soldier() {
        return enlisted("1943-02-03", "1945-11-11")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1945-10-01", "1945-10-09");
    }

    @ParameterizedTest(name = "with the battalion from {0} to {1}: {2}")
    @CsvSource({
        "1944-09-01, 1944-12-17, NO", // left the day before
        "1944-09-01, 1944-12-18, YES", // there on the first day
        "1944-12-27, 1945-09-01, YES", // there on the last day
        "1944-12-28, 1945-09-01, NO" // joined the day after
    })
    void a_day_in_the_cited_action_is_for_good(String from, String to, String due) {
        var finding = soldier()
                .assigned("999th Infantry", from, to)
                .credited("999th Infantry", CITATION, "1944-12-18", "1944-12-27")
                .on(CITATION);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized().counts(1).rests("in-the-cited-action", Verdict.MET);
        } else {
            assertThat(finding).isNotAuthorized().saying("at another time");
        }
    }

    @Test
    void the_badge_on_the_paper_is_presumed_until_presence_is_shown() {
        assertThat(soldier().claims(CITATION).on(CITATION))
                .isPresumed()
                .isOnPaper()
                .wants("unit-presence")
                .settledBy("morning-reports");
    }

    @Test
    void the_badge_on_the_paper_of_one_who_joined_later_is_refused() {
        assertThat(soldier()
                        .claims(CITATION)
                        .assigned("999th Infantry", "1945-03-25", "1945-09-01")
                        .credited("999th Infantry", CITATION, "1944-11-16", "1944-11-20")
                        .on(CITATION))
                .isNotAuthorized()
                .isOnPaper();
    }

    @Test
    void the_unit_he_came_home_with_is_not_proof_that_he_was_there() {
        assertThat(soldier()
                        .organization("999th Infantry")
                        .credited("999th Infantry", CITATION, "1944-11-16", "1944-11-20")
                        .on(CITATION))
                .isUnsettled()
                .wants("unit-presence");
    }

    @Test
    void a_dated_record_goes_before_the_unit_on_the_paper() {
        assertThat(soldier()
                        .claims(CITATION)
                        .organization("999th Infantry")
                        .assigned("999th Infantry", "1945-03-25", "1945-09-01")
                        .credited("999th Infantry", CITATION, "1944-11-16", "1944-11-20")
                        .on(CITATION))
                .isNotAuthorized();
    }

    @Test
    void another_units_honor_is_not_his() {
        assertThat(soldier()
                        .assigned("998th Infantry", "1944-09-01", "1945-09-01")
                        .credited("999th Infantry", CITATION, "1944-11-16", "1944-11-20")
                        .on(CITATION))
                .isUnsettled();
        Assertions.assertThat(soldier()
                        .assigned("998th Infantry", "1944-09-01", "1945-09-01")
                        .find(CITATION))
                .isEmpty();
    }

    @Test
    void two_citations_in_both_of_which_he_was_are_a_cluster() {
        assertThat(soldier()
                        .claims(CITATION)
                        .assigned("999th Infantry", "1944-09-01", "1945-09-01")
                        .credited("999th Infantry", CITATION, "1944-11-16", "1944-11-20")
                        .credited("999th Infantry", CITATION, "1944-12-18", "1944-12-27")
                        .on(CITATION))
                .counts(2)
                .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 1)
                .isShortOnPaper();
    }

    @Test
    void the_company_and_its_regiment_cited_for_the_same_days_are_one() {
        assertThat(soldier()
                        .assigned("Co B 999th Infantry", "1944-09-01", "1945-09-01")
                        .credited("999th Infantry", CITATION, "1944-11-16", "1944-11-20")
                        .credited("Co B 999th Infantry", CITATION, "1944-11-16", "1944-11-20")
                        .on(CITATION))
                .counts(1);
    }

    @Test
    void the_wreath_needs_a_credit_from_1_January_1944_to_15_September_1946() {
        var award = "meritorious-unit-commendation";
        assertThat(soldier()
                        .assigned("999th QM Truck Co", "1944-09-01", "1945-09-01")
                        .credited("999th QM Truck Co", award, "1944-09-01", "1945-03-01")
                        .claims(award)
                        .on(award))
                .isAuthorized()
                .rests("window", Verdict.MET)
                .rests("sleeve-wreath", Verdict.MET);
        assertThat(soldier()
                        .assigned("999th QM Truck Co", "1943-03-01", "1945-09-01")
                        .credited("999th QM Truck Co", award, "1943-06-01", "1943-12-31")
                        .on(award))
                .isNotAuthorized()
                .rests("window", Verdict.NOT_MET);
    }

    @Test
    void two_wreaths_are_numbered() {
        var award = "meritorious-unit-commendation";
        assertThat(soldier().claims(award, 2).on(award)).counts(2).rests("numeral-in-wreath", Verdict.MET);
    }

    @Test
    void the_fourragere_needs_both_actions_and_the_lanyard_one() {
        var both = soldier()
                .assigned("999th FA Bn", "1944-09-01", "1945-09-01")
                .credited("999th FA Bn", "belgian-fourragere", "1944-09-02", "1944-09-16")
                .credited("999th FA Bn", "belgian-fourragere", "1944-12-18", "1945-01-15");
        assertThat(both.on("belgian-fourragere")).isAuthorized();
        assertThat(soldier()
                        .claims("belgian-fourragere")
                        .assigned("999th FA Bn", "1944-10-28", "1945-09-01")
                        .credited("999th FA Bn", "belgian-fourragere", "1944-09-02", "1944-09-16")
                        .on("belgian-fourragere"))
                .isNotAuthorized()
                .isOnPaper();
        assertThat(soldier()
                        .assigned("999th FA Bn", "1944-09-01", "1945-09-01")
                        .credited("999th FA Bn", "french-fourragere", "1944-09-02", "1944-09-16")
                        .on("french-fourragere"))
                .isUnsettled()
                .rests("in-both-actions", Verdict.UNKNOWN);
        assertThat(soldier()
                        .assigned("999th Prcht FA Bn", "1944-09-01", "1945-09-01")
                        .credited("999th Prcht FA Bn", "netherlands-orange-lanyard", "1944-09-17", "1944-10-01")
                        .on("netherlands-orange-lanyard"))
                .isAuthorized()
                .rests("in-the-cited-action", Verdict.MET);
        assertThat(soldier().claims("french-fourragere").on("french-fourragere"))
                .isPresumed();
    }

    @Test
    void the_Philippine_citation_needs_the_islands_in_its_dates_and_takes_no_cluster() {
        var award = "philippine-presidential-unit-citation";
        assertThat(enlisted("1943-02-03", "1945-12-11")
                        .overseas("Luzon", "1944-08-22", "1945-01-12", "1945-10-01", "1945-10-19")
                        .assigned("999th Infantry", "1944-09-01", "1945-09-01")
                        .credited("999th Infantry", award, "1944-10-17", "1945-07-04")
                        .claims(award, 2)
                        .on(award))
                .isAuthorized()
                .wearsNothing()
                .rests("second-period", Verdict.MET)
                .rests("no-cluster", Verdict.NOT_MET);
        assertThat(enlisted("1945-02-03", "1946-12-11")
                        .overseas("Luzon", "1945-06-22", "1945-07-05", "1946-10-01", "1946-10-19")
                        .claims(award)
                        .on(award))
                .isUnsettled();
    }
}
