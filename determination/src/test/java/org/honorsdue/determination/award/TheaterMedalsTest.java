package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.officer;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Campaign medals: 32 CFR 578.48(a) to (b), 2006 revision; DoD 1348.33-M; Institute of Heraldry sheets")
@DisplayNameGeneration(ReplaceUnderscores.class)
class TheaterMedalsTest {
    private static final String AMERICAN = "american-campaign-medal";
    private static final String EUROPEAN = "eame-campaign-medal";
    private static final String PACIFIC = "asiatic-pacific-campaign-medal";

    @ParameterizedTest(name = "in England from {0} to {1}: {2}")
    @CsvSource({
        "1941-11-20, 1941-12-06, NO", // the day before
        "1941-11-20, 1941-12-07, YES", // the first day
        "1945-11-08, 1946-01-20, YES", // the last day
        "1945-11-09, 1946-01-20, NO", // the day after
    })
    void the_European_medal_counts_from_7_December_1941_to_8_November_1945(String arrived, String left, String due) {
        var finding = enlisted("1941-06-01", "1946-02-20")
                .overseas("England", "", arrived, left, "")
                .on(EUROPEAN);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized().rests("assigned-in-theater", Verdict.MET);
        } else {
            assertThat(finding).isNotAuthorized();
        }
    }

    @Test
    void arrival_after_the_last_day_is_said_to_be_too_late() {
        assertThat(enlisted("1945-02-01", "1946-07-20")
                        .overseas("Germany", "1945-11-10", "1945-11-20", "1946-06-20", "1946-07-01")
                        .claims(EUROPEAN)
                        .on(EUROPEAN))
                .isNotAuthorized()
                .isOnPaper()
                .rests("late-arrival", Verdict.NOT_MET);
    }

    @ParameterizedTest(name = "in Australia from {0} to {1}: {2}")
    @CsvSource({
        "1941-11-20, 1941-12-06, NO",
        "1941-11-20, 1941-12-07, YES",
        "1946-03-02, 1946-05-20, YES",
        "1946-03-03, 1946-05-20, NO",
    })
    void the_Pacific_medal_counts_from_7_December_1941_to_2_March_1946(String arrived, String left, String due) {
        var finding = enlisted("1941-06-01", "1946-06-20")
                .overseas("Australia", "", arrived, left, "")
                .on(PACIFIC);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized();
        } else {
            assertThat(finding).isNotAuthorized();
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "Iran, eame-campaign-medal", // 60 E and the eastern border of Iran
        "Iceland, eame-campaign-medal",
        "Greenland, eame-campaign-medal",
        "India, asiatic-pacific-campaign-medal",
        "Alaska, asiatic-pacific-campaign-medal", // EO 9265: outside the continental limits
        "Hawaii, asiatic-pacific-campaign-medal",
        "Panama, american-campaign-medal",
        "Bermuda, american-campaign-medal",
        "Trinidad, american-campaign-medal",
    })
    void the_place_decides_the_medal(String place, String medal) {
        var soldier = enlisted("1943-01-02", "1945-06-01")
                .overseas(place, "1943-05-01", "1943-05-09", "1945-05-01", "1945-05-09");
        assertThat(soldier.on(medal)).isAuthorized();
        for (var other : java.util.List.of(AMERICAN, EUROPEAN, PACIFIC)) {
            if (!other.equals(medal)) {
                assertThat(soldier.on(other)).isNotAuthorized();
            }
        }
    }

    @Test
    void one_week_on_assignment_is_enough_and_death_costs_nothing() {
        assertThat(enlisted("1944-01-03", "")
                        .overseas("ETO", "1944-10-20", "1944-11-01", "", "")
                        .died(Evidence.Death.Manner.KILLED_IN_ACTION, "1944-11-08")
                        .on(EUROPEAN))
                .isAuthorized();
    }

    @Test
    void a_station_of_a_week_may_have_been_temporary_duty() {
        assertThat(officer("1944-01-03", "1945-12-01")
                        .stationed("England", "1944-05-01", "1944-05-07")
                        .on(EUROPEAN))
                .isPresumed()
                .wants("station");
    }

    @Test
    void thirty_days_at_a_station_are_enough_either_way_and_twenty_nine_are_not() {
        assertThat(officer("1944-01-03", "1945-12-01")
                        .stationed("England", "1944-05-01", "1944-05-30")
                        .on(EUROPEAN))
                .isAuthorized();
        assertThat(officer("1944-01-03", "1945-12-01")
                        .stationed("England", "1944-05-01", "1944-05-29")
                        .on(EUROPEAN))
                .isPresumed();
    }

    @Test
    void sixty_days_in_two_stays_are_enough() {
        assertThat(officer("1944-01-03", "1945-12-01")
                        .stationed("England", "1944-03-01", "1944-03-29")
                        .stationed("England", "1944-08-01", "1944-08-29")
                        .stationed("England", "1944-10-01", "1944-10-02")
                        .on(EUROPEAN))
                .isAuthorized()
                .rests("passenger-or-temporary-duty", Verdict.MET);
    }

    @Test
    void a_campaign_on_the_paper_shows_its_theatre_where_no_dates_are_shown() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .without(Entry.SERVICE_OUTSIDE_US)
                        .campaigns("EA-RHI")
                        .on(EUROPEAN))
                .isAuthorized();
    }

    @Test
    void a_ribbon_alone_is_presumed_and_the_dates_are_asked_for() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .without(Entry.SERVICE_OUTSIDE_US)
                        .claims(EUROPEAN)
                        .on(EUROPEAN))
                .isPresumed()
                .isOnPaper()
                .wants("overseas-dates")
                .settledBy("separation-paper");
    }

    @Test
    void a_ribbon_against_the_papers_own_dates_is_not_confirmed() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .overseas("Australia", "1944-02-01", "1944-02-20", "1945-09-20", "1945-10-09")
                        .claims(EUROPEAN)
                        .on(EUROPEAN))
                .isNotAuthorized()
                .isOnPaper()
                .saying("by its own dates he was never there");
    }

    @Test
    void a_word_that_names_no_theatre_leaves_each_open() {
        var soldier = enlisted("1943-02-03", "1945-11-11")
                .overseas("North Atlantic", "1944-02-01", "1944-02-20", "1945-09-20", "1945-10-09");
        assertThat(soldier.on(EUROPEAN)).isUnsettled().wants("station");
    }

    @Test
    void foreign_service_without_a_place_leaves_all_three_open() {
        var soldier = enlisted("1943-02-03", "1945-11-11")
                .without(Entry.SERVICE_OUTSIDE_US)
                .total(ServiceTotal.Kind.FOREIGN, 1, 2, 0);
        for (var medal : java.util.List.of(EUROPEAN, PACIFIC)) {
            assertThat(soldier.on(medal)).isUnsettled();
        }
    }

    @ParameterizedTest(name = "home from {0} to {1}: {2}")
    @CsvSource({
        "1943-01-01, 1943-12-30, 364, NO",
        "1943-01-01, 1943-12-31, 365, YES",
        "1941-12-07, 1942-12-06, 365, YES",
        "1941-12-06, 1942-12-05, 364, NO", // the day before the window does not count
        "1945-03-03, 1946-03-02, 365, YES",
        "1945-03-04, 1946-03-31, 364, NO", // nor do days after 2 March 1946
    })
    void a_year_at_home_is_365_days_inside_the_window(String entered, String separated, int days, String due) {
        var finding = enlisted(entered, separated).neverAbroad().on(AMERICAN);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized().saying(days + " days inside the United States");
        } else {
            assertThat(finding).isNotAuthorized().saying(days + " days inside the United States at most");
        }
    }

    @Test
    void stays_at_home_are_added_up() {
        assertThat(enlisted("1942-12-21", "1945-11-16")
                        // 21 December 1942 to 20 June 1943 is 182 days, 18 May to 16 November 1945 is 183
                        .overseas("ETO", "1943-06-21", "1943-07-01", "1945-05-05", "1945-05-17")
                        .on(AMERICAN))
                .isAuthorized()
                .saying("365 days");
    }

    @Test
    void the_year_at_home_is_law_from_15_March_1946_and_no_earlier_paper_shows_it() {
        var soldier = enlisted("1943-02-03", "1945-11-11").neverAbroad();
        assertThat(soldier.asOf("1946-03-14").on(AMERICAN))
                .isNotAuthorized()
                .saying("Not law on 14 March 1946: it dates from 15 March 1946");
        assertThat(soldier.asOf("1946-03-15").on(AMERICAN))
                .isAuthorized()
                .saying(
                        "The rule that gives it dates from 15 March 1946, after he left the service on 11 November 1945");
    }

    @Test
    void the_typed_total_is_used_where_the_crossings_are_not_shown() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .without(Entry.SERVICE_OUTSIDE_US)
                        .total(ServiceTotal.Kind.CONTINENTAL, 1, 0, 0)
                        .total(ServiceTotal.Kind.FOREIGN, 1, 9, 8)
                        .on(AMERICAN))
                .isAuthorized();
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .without(Entry.SERVICE_OUTSIDE_US)
                        .total(ServiceTotal.Kind.CONTINENTAL, 0, 11, 29)
                        .total(ServiceTotal.Kind.FOREIGN, 1, 9, 9)
                        .claims(EUROPEAN)
                        .on(AMERICAN))
                .isNotAuthorized();
    }

    @Test
    void nothing_known_of_overseas_service_leaves_the_year_open() {
        assertThat(enlisted("1943-04-06", "1945-10-08")
                        .without(Entry.SERVICE_OUTSIDE_US)
                        .on(AMERICAN))
                .isUnsettled()
                .wants("continental-time", "overseas-dates")
                .settledBy("separation-paper");
    }

    @Test
    void a_day_in_Panama_on_assignment_is_enough_without_any_year_at_home() {
        assertThat(enlisted("1943-01-02", "1943-09-01")
                        .overseas("Panama", "1943-05-01", "1943-05-09", "1943-08-01", "1943-08-09")
                        .on(AMERICAN))
                .isAuthorized()
                .rests("assigned-outside-us", Verdict.MET);
    }

    @Test
    void an_arrowhead_on_the_American_ribbon_is_refused_and_the_antisubmarine_star_is_worn() {
        assertThat(enlisted("1942-01-10", "1945-11-02")
                        .arm("Air Corps")
                        .overseas("Trinidad", "1942-11-04", "1942-11-08", "1943-08-20", "1943-08-24")
                        .campaigns("AM-ASW")
                        .claims(AMERICAN, 1, with(Device.BRONZE_SERVICE_STAR, 1), with(Device.ARROWHEAD, 1))
                        .on(AMERICAN))
                .isAuthorized()
                .wears(Device.BRONZE_SERVICE_STAR, 1)
                .wears(Device.ARROWHEAD, 0)
                .rests("no-arrowhead", Verdict.NOT_MET);
    }
}
