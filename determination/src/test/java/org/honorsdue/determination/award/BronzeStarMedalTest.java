package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Bronze Star Medal: 32 CFR 578.16(a), 2008 edition; the badge rule in effect from 10 September 1947")
@DisplayNameGeneration(ReplaceUnderscores.class)
class BronzeStarMedalTest {
    private static final String MEDAL = "bronze-star-medal";
    private static final String BADGE = "combat-infantryman-badge";

    private static Case infantryman() {
        return enlisted("1943-02-03", "1945-11-11")
                .arm("Infantry")
                .specialty("745")
                .campaigns("EA-RHI")
                .overseas("ETO", "1944-08-22", "1944-08-29", "1945-10-01", "1945-10-09");
    }

    @Test
    void follows_from_the_Combat_Infantryman_Badge_and_from_the_Medical_Badge() {
        assertThat(infantryman().badge(BADGE, "GO 12 HQ 999 Inf 44").on(MEDAL))
                .isAuthorized()
                .isNotOnPaper()
                .counts(1)
                .wearsNothing()
                .saying("The rule that gives it dates from 10 September 1947");
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .arm("Medical Department")
                        .overseas("ETO", "1944-08-22", "1944-08-29", "1945-10-01", "1945-10-09")
                        .badge("combat-medical-badge", "")
                        .on(MEDAL))
                .isAuthorized();
    }

    @Test
    void not_before_10_September_1947() {
        var soldier = infantryman().badge(BADGE, "GO 12 HQ 999 Inf 44");
        assertThat(soldier.asOf("1947-09-09").on(MEDAL)).isNotAuthorized();
        assertThat(soldier.asOf("1947-09-10").on(MEDAL)).isAuthorized();
    }

    @Test
    void not_from_a_badge_of_another_war() {
        assertThat(enlisted("1951-03-26", "1954-03-11").claims(BADGE).on(MEDAL)).isNotAuthorized();
    }

    @Test
    void not_from_a_badge_of_a_man_who_came_after_the_fight() {
        assertThat(enlisted("1945-02-03", "1946-11-11")
                        .arm("Infantry")
                        .overseas("Germany", "1945-06-01", "1945-06-12", "1946-10-01", "1946-10-12")
                        .badge(BADGE, "")
                        .on(MEDAL))
                .isNotAuthorized();
    }

    @Test
    void an_infantryman_without_the_badge_is_open_and_the_order_of_the_badge_would_settle_it() {
        assertThat(infantryman().on(MEDAL)).isUnsettled().settledBy("unit-general-orders");
    }

    @Test
    void a_Bronze_Star_on_the_paper_without_an_order_may_be_a_campaign_star() {
        assertThat(infantryman().claims(MEDAL).on(MEDAL)).isPresumed().saying("can be a campaign star");
    }

    @Test
    void the_order_for_heroism_and_the_badge_are_two_awards() {
        assertThat(infantryman()
                        .badge(BADGE, "GO 12 HQ 999 Inf 44")
                        .order(MEDAL, "GO 55 HQ 999th Inf Div", "1945-02-10", true)
                        .on(MEDAL))
                .isAuthorized()
                .counts(2)
                .wears(Device.LETTER_V, 1)
                .wears(Device.BRONZE_OAK_LEAF_CLUSTER, 1)
                .rests("badge-award-is-separate", Verdict.MET)
                .rests("v-for-heroism", Verdict.MET);
    }

    @Test
    void an_order_for_merit_and_the_badge_leave_the_second_award_open() {
        assertThat(infantryman()
                        .badge(BADGE, "GO 12 HQ 999 Inf 44")
                        .claimsWithOrder(MEDAL, "GO 55 HQ 999 Inf Div 45")
                        .on(MEDAL))
                .counts(1)
                .wants("award-order");
    }

    @Test
    void a_V_needs_an_order_for_heroism() {
        assertThat(infantryman()
                        .claimsWithOrder(MEDAL, "GO 55 HQ 999 Inf Div 45", with(Device.LETTER_V, 1))
                        .order(MEDAL, "GO 55 HQ 999th Inf Div", "1945-02-10", false)
                        .on(MEDAL))
                .wears(Device.LETTER_V, 0)
                .rests("v-for-heroism", Verdict.NOT_MET);
        assertThat(infantryman()
                        .badge(BADGE, "")
                        .claims(MEDAL, 1, with(Device.LETTER_V, 1))
                        .on(MEDAL))
                .wears(Device.LETTER_V, 0)
                .rests("no-v-from-badge", Verdict.UNKNOWN);
        assertThat(infantryman()
                        .claimsWithOrder(MEDAL, "GO 55 HQ 999 Inf Div 45", with(Device.LETTER_V, 1))
                        .on(MEDAL))
                .wears(Device.LETTER_V, 1);
    }

    @Test
    void a_defender_of_Luzon_has_it_through_the_unit_citation() {
        var defender = enlisted("1940-06-12", "1946-04-10")
                .overseas("Philippine Islands", "1941-11-01", "1941-11-20", "1945-09-20", "1945-10-08")
                .campaigns("AP-PHI")
                .assigned("999th Air Base Sq", "1941-11-20", "1942-04-09");
        assertThat(defender.credited("999th Air Base Sq", "distinguished-unit-citation", "1941-12-08", "1942-04-09")
                        .on(MEDAL))
                .isAuthorized()
                .rests("philippine-unit-citation", Verdict.MET);
    }

    @Test
    void a_defender_whose_unit_citation_is_not_shown_is_open() {
        assertThat(enlisted("1940-06-12", "1946-04-10")
                        .overseas("Philippine Islands", "1941-11-01", "1941-11-20", "1945-09-20", "1945-10-08")
                        .campaigns("AP-PHI")
                        .on(MEDAL))
                .isUnsettled()
                .settledBy("unit-register");
    }
}
