package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.officer;
import static org.honorsdue.determination.Case.with;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Tour;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Good Conduct Medal: 32 CFR 578.27, 2002 edition; EO 8809; EO 9323")
@DisplayNameGeneration(ReplaceUnderscores.class)
class GoodConductMedalTest {
    private static final String MEDAL = "army-good-conduct-medal";

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({
        "1943-01-01, 1943-12-30, NO", // 364 days
        "1943-01-01, 1943-12-31, YES", // a year
        "1941-12-07, 1942-12-06, YES",
        "1945-03-03, 1946-03-02, YES",
        "1945-03-04, 1946-07-30, NO", // drafted in 1945 with sixteen months, but 364 days inside the window
    })
    void the_war_year_lies_wholly_between_7_December_1941_and_2_March_1946(
            String entered, String separated, String due) {
        var finding = enlisted(entered, separated).conduct("excellent", 0).on(MEDAL);
        if (due.equals("YES")) {
            assertThat(finding)
                    .isPresumed()
                    .rests("war-year", Verdict.MET)
                    .wants("award-order")
                    .settledBy("personnel-file");
        } else {
            assertThat(finding).isNotAuthorized().rests("war-year", Verdict.NOT_MET);
        }
    }

    @Test
    void on_the_paper_it_is_confirmed_when_the_time_is_there() {
        assertThat(enlisted("1943-02-03", "1945-11-11").claims(MEDAL).on(MEDAL))
                .isAuthorized()
                .counts(1)
                .wearsNothing();
    }

    @Test
    void on_the_paper_without_the_time_it_is_not() {
        assertThat(enlisted("1945-06-03", "1945-11-11").claims(MEDAL).on(MEDAL))
                .isNotAuthorized()
                .isOnPaper();
    }

    @Test
    void without_ratings_it_stays_open() {
        assertThat(enlisted("1943-02-03", "1945-11-11").on(MEDAL)).isUnsettled().wants("award-order", "conduct");
    }

    @Test
    void a_low_rating_is_a_no() {
        assertThat(enlisted("1943-01-10", "1944-04-04").conduct("poor", 61).on(MEDAL))
                .isNotAuthorized();
    }

    @Test
    void lost_time_is_for_the_commander_to_weigh() {
        assertThat(enlisted("1943-02-03", "1945-11-11").conduct("excellent", 42).on(MEDAL))
                .isUnsettled()
                .rests("lost-time", Verdict.UNKNOWN)
                .wants("award-order", "lost-time");
    }

    @Test
    void a_conviction_is_looked_into() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .conduct("excellent", 0)
                        .convicted(1)
                        .on(MEDAL))
                .isUnsettled()
                .wants("award-order", "court-martial");
    }

    @Test
    void officers_and_warrant_officers_do_not_have_it() {
        assertThat(officer("1943-02-03", "1945-11-11").on(MEDAL))
                .isNotAuthorized()
                .rests("enlisted", Verdict.NOT_MET);
        assertThat(Case.warrantOfficer("1943-02-03", "1945-11-11").on(MEDAL)).isNotAuthorized();
    }

    @Test
    void enlisted_time_before_the_commission_counts_if_it_fills_the_year_by_itself() {
        assertThat(enlisted("1941-11-17", "1943-04-14")
                        .conduct("excellent", 0)
                        .paper(Tour.Category.OFFICER, "1943-04-15", "1946-01-10")
                        .on(MEDAL))
                .isPresumed();
        assertThat(enlisted("1942-03-24", "1943-01-13")
                        .conduct("excellent", 0)
                        .paper(Tour.Category.OFFICER, "1943-01-14", "1946-01-17")
                        .on(MEDAL))
                .isUnsettled()
                .wants("award-order", "service-dates");
    }

    @Test
    void earlier_enlisted_service_that_the_paper_mentions_is_service() {
        assertThat(enlisted("1945-07-01", "1945-12-31")
                        .conduct("excellent", 0)
                        .prior("AUS 1 Jan 45 to 30 Jun 45", "1945-01-01", "1945-06-30")
                        .on(MEDAL))
                .isPresumed();
        assertThat(enlisted("1945-07-01", "1945-12-31")
                        .prior("RA 1 Jan 36 to 31 Dec 38", "1936-01-01", "1938-12-31")
                        .on("service-stripes"))
                .isAuthorized()
                .counts(1);
    }

    @Test
    void service_told_again_on_the_next_paper_is_not_counted_twice() {
        assertThat(enlisted("1943-01-01", "1945-06-30")
                        .paper(Tour.Category.ENLISTED, "1945-07-01", "1945-12-31")
                        .prior("AUS 1 Jan 43 to 30 Jun 45", "1943-01-01", "1945-06-30")
                        .on("service-stripes"))
                .isAuthorized()
                .counts(1);
    }

    @Test
    void an_interval_between_enlistments_throws_away_what_went_before() {
        assertThat(enlisted("1945-01-01", "1945-06-30")
                        .conduct("excellent", 0)
                        .paper(Tour.Category.ENLISTED, "1945-07-01", "1945-12-31")
                        .on(MEDAL))
                .isPresumed();
        assertThat(enlisted("1945-01-01", "1945-06-29")
                        .conduct("excellent", 0)
                        .paper(Tour.Category.ENLISTED, "1945-07-01", "1945-12-31")
                        .on(MEDAL))
                .isNotAuthorized();
    }

    @Test
    void death_in_line_of_duty_needs_no_year() {
        assertThat(enlisted("1944-01-03", "")
                        .died(Evidence.Death.Manner.KILLED_IN_ACTION, "1944-09-25")
                        .on(MEDAL))
                .isPresumed()
                .rests("death-in-line-of-duty", Verdict.MET)
                .wants("award-order");
    }

    @Test
    void separation_for_disability_in_line_of_duty_needs_no_year() {
        assertThat(enlisted("1944-07-11", "1945-04-12")
                        .conduct("excellent", 0)
                        .reason("CDD disability Sec II AR 615-361")
                        .on(MEDAL))
                .isPresumedOrUnsettled()
                .wants("award-order", "service-dates");
    }

    @Test
    void three_years_of_a_regular_are_a_ground_of_their_own() {
        // 27 August 1940 is the first day on which three years can be completed
        assertThat(enlisted("1938-08-27", "1941-08-26").conduct("excellent", 0).on(MEDAL))
                .isPresumed()
                .rests("three-years", Verdict.MET);
    }

    @Test
    void a_second_award_is_a_clasp_with_two_loops_and_a_first_award_has_none() {
        assertThat(enlisted("1940-02-03", "1945-11-11").claims(MEDAL, 2).on(MEDAL))
                .counts(2)
                .wears(Device.GOOD_CONDUCT_CLASP, 2)
                .rests("clasp", Verdict.MET);
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .claims(MEDAL, 1, with(Device.GOOD_CONDUCT_CLASP, 1))
                        .on(MEDAL))
                .counts(1)
                .wearsNothing()
                .saying("a first award has no clasp");
    }

    @Test
    void a_second_award_without_three_further_years_is_doubted() {
        assertThat(enlisted("1943-02-03", "1945-11-11").claims(MEDAL, 2).on(MEDAL))
                .rests("second-award-three-years", Verdict.UNKNOWN);
    }
}
