package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.ofNoPaper;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Philippine ribbons: DoD 1348.33-M; 32 CFR part 578 as reported; DA Circular 59, 8 March 1948")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PhilippineAwardsTest {
    private static final String DEFENSE = "philippine-defense-ribbon";
    private static final String LIBERATION = "philippine-liberation-ribbon";
    private static final String INDEPENDENCE = "philippine-independence-ribbon";

    @ParameterizedTest(name = "on Luzon from {0} to {1}: {2}")
    @CsvSource({
        "1941-11-20, 1942-01-05, NO", // 29 days from 8 December 1941
        "1941-11-20, 1942-01-06, YES", // 30 days
        "1942-05-17, 1942-07-15, YES", // 17 May to 15 June 1942 is 30 days
        "1942-05-18, 1942-07-15, NO",
    })
    void thirty_days_of_the_defense_lie_between_8_December_1941_and_15_June_1942(String from, String to, String due) {
        var finding = enlisted("1940-02-03", "1945-11-11")
                .stationed("Luzon", from, to)
                .on(DEFENSE);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized().wearsNothing().rests("thirty-days", Verdict.MET);
        } else {
            assertThat(finding).isNotAuthorized();
        }
    }

    @Test
    void a_man_of_Corregidor_meets_both_conditions_and_has_the_star() {
        assertThat(ofNoPaper()
                        .stationed("Corregidor", "1941-05-20", "1942-05-06")
                        .captive("1942-05-06", "1942-11-02", "Philippine Islands")
                        .on(DEFENSE))
                .isAuthorized()
                .wears(Device.BRONZE_SERVICE_STAR, 1)
                .rests("star-for-both", Verdict.MET);
    }

    @ParameterizedTest(name = "on Leyte from {0} to {1}: {2}")
    @CsvSource({
        "1944-10-17, 1944-11-14, NO", // 29 days
        "1944-10-17, 1944-11-15, YES",
        "1945-08-05, 1945-12-01, YES", // 5 August to 3 September 1945 is 30 days
        "1945-08-06, 1945-12-01, NO",
    })
    void thirty_days_of_the_liberation_lie_between_17_October_1944_and_3_September_1945(
            String from, String to, String due) {
        var finding = enlisted("1943-02-03", "1946-01-11")
                .stationed("Leyte", from, to)
                .on(LIBERATION);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized().rests("thirty-days", Verdict.MET);
        } else {
            assertThat(finding).isNotAuthorized();
        }
    }

    @Test
    void a_prisoner_whose_paper_keeps_the_Philippines_may_have_been_shipped_to_Japan() {
        var prisoner = enlisted("1940-06-12", "1946-04-10")
                .overseas("Philippine Islands", "1941-11-01", "1941-11-20", "1945-09-20", "1945-10-08");
        assertThat(prisoner.captive("1942-04-09", "1945-09-04", "Japan").on(LIBERATION))
                .isUnsettled()
                .wants("station");
        assertThat(enlisted("1940-06-12", "1946-04-10")
                        .overseas("Philippine Islands", "1941-11-01", "1941-11-20", "1945-03-20", "1945-04-08")
                        .captive("1942-04-09", "1945-01-30", "Philippine Islands")
                        .on(LIBERATION))
                .isAuthorized();
    }

    @Test
    void a_campaign_of_the_islands_is_an_engagement() {
        assertThat(enlisted("1943-02-03", "1945-12-11")
                        .overseas("SWPA", "1944-08-22", "1944-09-12", "1945-10-01", "1945-10-19")
                        .campaigns("AP-LUZ")
                        .on(LIBERATION))
                .isAuthorized()
                .wearsNothing()
                .rests("other-engagement", Verdict.MET);
        assertThat(enlisted("1943-02-03", "1945-12-11").campaigns("AP-LEY").on(LIBERATION))
                .isAuthorized()
                .rests("leyte-engagement", Verdict.MET);
    }

    @Test
    void landing_engagement_and_thirty_days_are_two_stars() {
        assertThat(enlisted("1943-02-03", "1945-12-11")
                        .overseas("SWPA", "1944-08-22", "1944-09-12", "1945-10-01", "1945-10-19")
                        .campaigns("AP-LEY")
                        .landed("AP-LEY", "amphibious", "1944-10-20")
                        .stationed("Leyte", "1944-10-20", "1945-04-10")
                        .on(LIBERATION))
                .isAuthorized()
                .wears(Device.BRONZE_SERVICE_STAR, 2)
                .rests("star-for-further-condition", Verdict.MET);
    }

    @Test
    void Leyte_and_Luzon_count_as_one_condition_by_the_manual_that_was_read() {
        assertThat(enlisted("1943-02-03", "1945-12-11")
                        .campaigns("AP-LEY", "AP-LUZ")
                        .on(LIBERATION))
                .wearsNothing()
                .saying("one star more");
    }

    @Test
    void a_landing_after_the_20th_is_not_one_of_the_first() {
        assertThat(enlisted("1943-02-03", "1945-12-11")
                        .landed("AP-LEY", "amphibious", "1944-10-21")
                        .on(LIBERATION))
                .isNotAuthorized();
        assertThat(enlisted("1943-02-03", "1945-12-11")
                        .landed("AP-LEY", "amphibious", "1944-10-20")
                        .on(LIBERATION))
                .isAuthorized()
                .rests("first-landings", Verdict.MET);
    }

    @Test
    void on_the_paper_alone_it_is_presumed() {
        assertThat(enlisted("1943-02-03", "1945-12-11").claims(LIBERATION).on(LIBERATION))
                .isPresumed()
                .isOnPaper()
                .wants("station");
    }

    @Test
    void independence_on_4_July_1946_or_with_both_other_ribbons_since_1954() {
        assertThat(enlisted("1945-02-03", "1946-12-11")
                        .stationed("Manila", "1946-07-04", "1946-07-04")
                        .asOf("1950-01-01")
                        .on(INDEPENDENCE))
                .isAuthorized();
        assertThat(enlisted("1945-02-03", "1946-12-11")
                        .stationed("Manila", "1946-07-05", "1946-08-04")
                        .asOf("1950-01-01")
                        .on(INDEPENDENCE))
                .isNotAuthorized();
        var both = enlisted("1940-02-03", "1945-11-11").campaigns("AP-PHI", "AP-LUZ");
        assertThat(both.on(INDEPENDENCE)).isAuthorized().rests("both-other-ribbons", Verdict.MET);
        assertThat(both.asOf("1954-11-23").on(INDEPENDENCE)).isNotAuthorized().saying("it dates from 24 November 1954");
    }
}
