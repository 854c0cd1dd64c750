package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.ofNoPaper;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.Case;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Army of Occupation Medal: 32 CFR 578.46(a), 2006 revision; Far East 578.48(a)(5), (6), 1999 edition")
@DisplayNameGeneration(ReplaceUnderscores.class)
class OccupationMedalTest {
    private static final String MEDAL = "army-of-occupation-medal";

    private static Case inEurope(String arrived) {
        return enlisted("1944-05-02", "1946-08-20").overseas("ETO", "", arrived, "1946-08-01", "1946-08-12");
    }

    private static Case inThePacific(String arrived) {
        return enlisted("1944-05-02", "1946-12-20").overseas("APTO", "", arrived, "1946-12-01", "1946-12-12");
    }

    @ParameterizedTest(name = "reached the theatre {0}, in Germany {1} to {2}: {3}")
    @CsvSource({
        "1945-05-08, 1945-05-09, 1945-06-06, NO", // 29 days
        "1945-05-08, 1945-05-09, 1945-06-07, YES", // 30 days
        "1945-05-08, 1945-05-01, 1945-06-06, NO", // days before 9 May do not count
        "1945-05-09, 1945-05-09, 1945-11-08, NO", // the gate: not in the theatre before 9 May
        "1945-05-09, 1945-05-09, 1945-12-07, NO", // 29 days from 9 November on
        "1945-05-09, 1945-05-09, 1945-12-08, YES", // 30 days from 9 November on
    })
    void thirty_days_running_and_the_gate_of_9_May_1945(String arrived, String from, String to, String due) {
        var finding = inEurope(arrived).stationed("Germany", from, to).on(MEDAL);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized().counts(1).wears(Device.GERMANY_CLASP, 1);
        } else {
            // the destination ETO leaves other days open, but the place that is shown does not do it
            assertThat(finding).isPresumedOrUnsettled();
        }
    }

    @Test
    void a_replacement_of_June_who_left_in_November_is_refused() {
        assertThat(enlisted("1944-11-10", "1945-12-04")
                        .overseas("ETO", "1945-05-28", "1945-06-08", "1945-11-14", "1945-11-26")
                        .stationed("Germany", "1945-06-14", "1945-11-05")
                        .on(MEDAL))
                .isNotAuthorized();
    }

    @ParameterizedTest(name = "reached the theatre {0}, in Japan {1} to {2}: {3}")
    @CsvSource({
        "1945-09-02, 1945-09-03, 1945-10-01, NO", // 29 days
        "1945-09-02, 1945-09-03, 1945-10-02, YES",
        "1945-09-03, 1945-09-03, 1946-03-02, NO", // the gate
        "1945-09-03, 1945-09-03, 1946-03-31, NO", // 29 days from 3 March on
        "1945-09-03, 1945-09-03, 1946-04-01, YES",
    })
    void thirty_days_running_and_the_gate_of_3_September_1945(String arrived, String from, String to, String due) {
        var finding = inThePacific(arrived).stationed("Japan", from, to).on(MEDAL);
        if (due.equals("YES")) {
            assertThat(finding).isAuthorized().wears(Device.JAPAN_CLASP, 1).wears(Device.GERMANY_CLASP, 0);
        } else {
            assertThat(finding).isPresumedOrUnsettled();
        }
    }

    @Test
    void stays_at_two_places_that_follow_at_once_are_one_run() {
        assertThat(inEurope("1945-01-05")
                        .stationed("Munich", "1945-05-09", "1945-05-23")
                        .stationed("Heidelberg", "1945-05-24", "1945-06-07")
                        .on(MEDAL))
                .isAuthorized();
    }

    @Test
    void thirty_days_in_two_runs_are_not_enough() {
        assertThat(enlisted("1944-05-02", "1945-08-20")
                        .overseas("France", "", "1945-01-05", "1945-08-01", "1945-08-12")
                        .stationed("Munich", "1945-05-09", "1945-05-23")
                        .stationed("Munich", "1945-06-10", "1945-06-24")
                        .on(MEDAL))
                .isNotAuthorized();
    }

    @Test
    void a_theatre_word_with_the_Central_Europe_campaign_is_presumed_and_the_place_asked_for() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .overseas("ETO", "1944-08-22", "1944-08-29", "1945-11-01", "1945-11-09")
                        .campaigns("EA-CEN")
                        .on(MEDAL))
                .isPresumed()
                .wants("station")
                .settledBy("morning-reports");
    }

    @Test
    void a_theatre_word_alone_is_open() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .overseas("ETO", "1944-08-22", "1944-08-29", "1945-11-01", "1945-11-09")
                        .on(MEDAL))
                .isUnsettled();
        assertThat(enlisted("1943-02-03", "1945-12-11")
                        .overseas("APTO", "1944-08-22", "1944-08-29", "1945-11-01", "1945-11-19")
                        .on(MEDAL))
                .isUnsettled();
    }

    @Test
    void a_theatre_word_that_ends_before_thirty_days_is_a_no() {
        assertThat(enlisted("1943-02-03", "1945-07-11")
                        .overseas("ETO", "1944-08-22", "1944-08-29", "1945-06-06", "1945-06-16")
                        .campaigns("EA-CEN")
                        .on(MEDAL))
                .isNotAuthorized();
    }

    @Test
    void France_and_Czechoslovakia_are_no_occupied_areas() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .overseas("France", "1944-08-22", "1944-08-29", "1945-11-01", "1945-11-09")
                        .campaigns("EA-CEN")
                        .on(MEDAL))
                .isNotAuthorized();
        assertThat(enlisted("1943-03-10", "1945-09-30")
                        .overseas("ETO", "1944-10-02", "1944-10-13", "1945-09-04", "1945-09-14")
                        .campaigns("EA-RHI", "EA-CEN")
                        .stationed("Czechoslovakia", "1945-05-07", "1945-08-20")
                        .on(MEDAL))
                .isNotAuthorized();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "Austria, germany-clasp",
        "Berlin, germany-clasp",
        "Vienna, germany-clasp",
        "Udine, germany-clasp",
        "Okinawa, japan-clasp",
        "Korea, japan-clasp",
        "Seoul, japan-clasp"
    })
    void the_area_names_the_clasp(String place, String clasp) {
        var theatre = clasp.startsWith("germany") ? inEurope("1945-01-05") : inThePacific("1945-01-05");
        assertThat(theatre.stationed(place, "1945-09-10", "1946-01-10").on(MEDAL))
                .isAuthorized()
                .wears(Device.ofId(clasp).orElseThrow(), 1);
    }

    @Test
    void Italy_alone_leaves_open_which_part() {
        assertThat(enlisted("1943-02-03", "1946-01-11")
                        .overseas("MTO", "1944-08-22", "1944-08-29", "1945-12-01", "1945-12-19")
                        .stationed("Italy", "1945-05-09", "1945-11-30")
                        .on(MEDAL))
                .isUnsettled()
                .saying("Venezia Giulia");
    }

    @Test
    void captivity_in_Germany_is_no_occupation_duty() {
        assertThat(ofNoPaper().captive("1944-12-19", "1945-07-01", "Germany").on(MEDAL))
                .isNotAuthorized();
    }

    @Test
    void both_sides_of_the_world_are_two_clasps_on_one_medal() {
        assertThat(enlisted("1944-05-02", "1947-12-20")
                        .overseas("Germany", "", "1945-01-05", "1945-12-01", "1945-12-12")
                        .overseas("Japan", "1946-05-01", "1946-05-20", "1947-11-01", "1947-11-20")
                        .on(MEDAL))
                .isAuthorized()
                .counts(1)
                .wears(Device.GERMANY_CLASP, 1)
                .wears(Device.JAPAN_CLASP, 1);
    }

    @Test
    void created_on_5_April_1946_so_no_paper_of_1945_shows_it() {
        var soldier = inEurope("1945-01-05").stationed("Germany", "1945-05-09", "1945-08-01");
        assertThat(soldier.asOf("1946-04-04").on(MEDAL)).isNotAuthorized().saying("created on 5 April 1946");
        assertThat(soldier.asOf("1946-04-05").on(MEDAL)).isAuthorized();
    }
}
