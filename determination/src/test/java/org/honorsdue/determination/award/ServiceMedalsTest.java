package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.officer;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("American Defense (EO 8808), Women's Army Corps (EO 9365), Prisoner of War (10 USC 1128)")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ServiceMedalsTest {
    private static final String DEFENSE = "american-defense-service-medal";
    private static final String WOMEN = "wac-service-medal";
    private static final String PRISONER = "prisoner-of-war-medal";

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({
        "1938-09-07, 1939-09-07, NO", // left the day before the limited emergency
        "1938-09-08, 1939-09-08, YES", // there on its first day
        "1941-12-07, 1945-11-15, YES", // entered on the last day
        "1941-12-08, 1945-11-15, NO", // and the day after
    })
    void American_Defense_counts_from_8_September_1939_to_7_December_1941(
            String entered, String separated, String due) {
        var finding = enlisted(entered, separated).on(DEFENSE);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized();
        } else {
            assertThat(finding).isNotAuthorized().rests("window", Verdict.NOT_MET);
        }
    }

    @Test
    void a_man_called_in_October_1941_has_it_with_a_caution_on_the_other_reading() {
        assertThat(enlisted("1941-10-10", "1945-11-15").on(DEFENSE))
                .isAuthorized()
                .saying("read as twelve months served");
    }

    @Test
    void a_short_tour_leaves_open_for_how_long_the_orders_ran() {
        assertThat(enlisted("1941-10-10", "1942-02-15").on(DEFENSE))
                .isPresumed()
                .wants("orders-length");
    }

    @Test
    void service_abroad_before_the_war_is_the_clasp() {
        assertThat(enlisted("1940-06-12", "1945-11-15")
                        .overseas("Hawaii", "1941-11-20", "1941-12-02", "1945-03-01", "1945-03-09")
                        .claims(DEFENSE)
                        .on(DEFENSE))
                .isAuthorized()
                .isShortOnPaper()
                .wears(Device.FOREIGN_SERVICE_CLASP, 1)
                .rests("foreign-service-clasp", Verdict.MET)
                .rests("star-on-the-bar", Verdict.MET);
        assertThat(enlisted("1940-06-12", "1945-11-15")
                        .overseas("Hawaii", "1941-12-08", "1941-12-16", "1945-03-01", "1945-03-09")
                        .on(DEFENSE))
                .wearsNothing();
    }

    @Test
    void a_star_typed_on_the_ribbon_stands_for_the_clasp() {
        assertThat(enlisted("1940-06-12", "1945-11-15")
                        .overseas("Panama", "1941-02-20", "1941-03-02", "1943-03-01", "1943-03-09")
                        .claims(DEFENSE, 1, with(Device.BRONZE_SERVICE_STAR, 1))
                        .on(DEFENSE))
                .isOnPaper()
                .wears(Device.FOREIGN_SERVICE_CLASP, 1);
    }

    @Test
    void the_womens_medal_takes_both_corps() {
        assertThat(enlisted("1942-11-03", "1945-12-02")
                        .woman()
                        .arm("Women's Army Corps")
                        .on(WOMEN))
                .isAuthorized();
        assertThat(enlisted("1943-10-12", "1945-12-03")
                        .woman()
                        .arm("Women's Army Corps")
                        .claims(WOMEN)
                        .on(WOMEN))
                .isNotAuthorized()
                .rests("waac-service", Verdict.NOT_MET);
        assertThat(enlisted("1943-09-01", "1945-12-03")
                        .woman()
                        .arm("Women's Army Corps")
                        .on(WOMEN))
                .isUnsettled()
                .wants("component");
        assertThat(enlisted("1942-11-03", "1943-08-31")
                        .woman()
                        .arm("Women's Army Auxiliary Corps")
                        .on(WOMEN))
                .isNotAuthorized()
                .rests("wac-service", Verdict.NOT_MET);
    }

    @Test
    void service_in_the_auxiliary_corps_may_stand_among_prior_service() {
        assertThat(enlisted("1943-09-01", "1945-12-03")
                        .woman()
                        .arm("Women's Army Corps")
                        .prior("Service in WAAC 15 Feb 43 to 31 Aug 43", "1943-02-15", "1943-08-31")
                        .on(WOMEN))
                .isAuthorized();
    }

    @Test
    void a_woman_is_spoken_of_as_one() {
        assertThat(enlisted("1943-09-01", "1945-12-03")
                        .woman()
                        .arm("Women's Army Corps")
                        .on(WOMEN))
                .saying("Can it be shown that she belonged to");
        assertThat(enlisted("1943-02-01", "1943-04-09").woman().on("ww2-victory-medal"))
                .saying("after she left the service");
    }

    @Test
    void nurses_do_not_have_it_and_nothing_is_worn_on_it() {
        assertThat(officer("1942-11-03", "1945-12-02")
                        .woman()
                        .arm("Army Nurse Corps")
                        .on(WOMEN))
                .isNotAuthorized()
                .rests("other-women", Verdict.NOT_MET);
        assertThat(enlisted("1942-11-03", "1945-12-02")
                        .woman()
                        .arm("Women's Army Corps")
                        .claims(WOMEN, 1, with(Device.BRONZE_SERVICE_STAR, 1))
                        .on(WOMEN))
                .wearsNothing()
                .rests("no-device", Verdict.NOT_MET);
        assertThat(enlisted("1942-11-03", "1945-12-02").on(WOMEN)).isNotAuthorized();
    }

    @Test
    void one_day_in_enemy_hands_is_enough() {
        assertThat(enlisted("1943-02-03", "1945-10-20")
                        .captive("1945-05-04", "1945-05-05", "Germany")
                        .on(PRISONER))
                .isAuthorized()
                .counts(1)
                .rests("held-captive", Verdict.MET)
                .saying("Created on 8 November 1985");
    }

    @Test
    void not_law_before_8_November_1985() {
        var prisoner = enlisted("1943-02-03", "1945-10-20").captive("1944-12-19", "1945-04-29", "Germany");
        assertThat(prisoner.asOf("1985-11-07").on(PRISONER)).isNotAuthorized();
        assertThat(prisoner.asOf("1985-11-08").on(PRISONER)).isAuthorized();
    }

    @Test
    void a_neutrals_internee_is_open_only_by_the_law_of_2013() {
        var internee = enlisted("1943-02-03", "1945-10-20").interned("1944-06-13", "1944-10-05", "Switzerland");
        assertThat(internee.on(PRISONER)).isUnsettled().rests("comparable-captivity", Verdict.UNKNOWN);
        assertThat(internee.asOf("2013-01-01").on(PRISONER)).isNotAuthorized();
    }

    @Test
    void a_statement_does_not_settle_it_and_silence_of_the_remarks_is_a_no() {
        assertThat(enlisted("1943-02-03", "1945-10-20")
                        .says("he was captured on 4 May 1945")
                        .on(PRISONER))
                .isUnsettled()
                .wants("captivity")
                .settledBy("prisoner-data-file");
        assertThat(enlisted("1943-02-03", "1945-10-20").on(PRISONER)).isNotAuthorized();
        assertThat(enlisted("1943-02-03", "1945-10-20").without(Entry.REMARKS).on(PRISONER))
                .isUnsettled();
    }

    @Test
    void a_second_captivity_is_a_device() {
        assertThat(enlisted("1943-02-03", "1945-10-20")
                        .captive("1943-02-19", "1943-09-10", "Italy")
                        .captive("1944-12-19", "1945-04-29", "Germany")
                        .on(PRISONER))
                .counts(1)
                .wears(Device.BRONZE_SERVICE_STAR, 1)
                .rests("second-captivity", Verdict.MET);
    }

    @Test
    void what_service_of_this_war_never_earns_is_refused_with_its_reason() {
        var soldier = enlisted("1943-02-03", "1945-10-20");
        assertThat(soldier.on("national-defense-service-medal"))
                .isNotAuthorized()
                .rests("first-period", Verdict.NOT_MET);
        assertThat(soldier.on("post-1981-ribbons")).isNotAuthorized().rests("not-retroactive", Verdict.NOT_MET);
        assertThat(soldier.on("commemorative-medals")).isNotAuthorized().rests("not-authorized", Verdict.NOT_MET);
        assertThat(soldier.on("medal-for-humane-action")).isNotAuthorized().rests("airlift", Verdict.NOT_MET);
        assertThat(enlisted("1947-02-03", "1949-10-20").on("medal-for-humane-action"))
                .isUnsettled();
        assertThat(enlisted("1946-02-03", "1950-06-26").on("national-defense-service-medal"))
                .isNotAuthorized();
        assertThat(enlisted("1946-02-03", "1950-06-27").on("national-defense-service-medal"))
                .isUnsettled();
    }
}
