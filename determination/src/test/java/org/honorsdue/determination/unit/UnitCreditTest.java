package org.honorsdue.determination.unit;

import static org.honorsdue.determination.FindingAssert.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/**
 * Real units, since unit history is the subject; the soldiers are invented. The 30th Division's campaigns: Army Almanac
 * (1950), combat chronicle. Company E, 117th Infantry, 16 Oct 1944: Army Ground Forces division fact sheet (1945). The
 * battalions of the 415th Infantry at Lucherberg: fact sheet of the 104th Division (1945).
 */
@DisplayName("The credit of a man's unit")
@DisplayNameGeneration(ReplaceUnderscores.class)
class UnitCreditTest {
    private static final String EAME = "eame-campaign-medal";
    private static final String CITATION = "distinguished-unit-citation";

    private static Case rifleman() {
        return Case.enlisted("1943-06-01", "1945-11-20")
                .overseas("ETO", "1944-02-12", "1944-02-22", "1945-08-12", "1945-08-19");
    }

    private static Assignment unit(String typed, String... ids) {
        return new Assignment(
                typed,
                List.of(ids),
                Optional.empty(),
                Optional.empty(),
                true,
                Basis.plain(new Origin.OnPaper(1, Entry.ORGANIZATION, 0, typed.length(), typed)));
    }

    private static Assignment served(String given, String from, String to, String... ids) {
        return new Assignment(
                given,
                List.of(ids),
                Optional.of(PartialDate.day(LocalDate.parse(from))),
                Optional.of(PartialDate.day(LocalDate.parse(to))),
                false,
                Basis.plain(new Origin.InEvidence(1, "unit-assignment", given, Optional.empty())));
    }

    @Test
    void only_a_unit_dates_and_crossings_give_the_stars_of_the_units_list_and_ask_for_his_presence() {
        var finding = rifleman()
                .without(Entry.BATTLES_AND_CAMPAIGNS)
                .and(unit("Co E 117th Inf", "infantry-regiment-117/company-e", "infantry-regiment-117"))
                .on(EAME);
        assertThat(finding)
                .isAuthorized()
                .wears(Device.SILVER_SERVICE_STAR, 1)
                .wears(Device.BRONZE_SERVICE_STAR, 0)
                .rests("campaign-star", Verdict.UNKNOWN)
                .saying("only the one he came home with")
                .wants("unit-presence");
    }

    @Test
    void a_replacement_who_arrived_in_december_is_not_asked_about_the_landing_in_june() {
        var finding = Case.enlisted("1944-05-01", "1945-11-20")
                .overseas("ETO", "1944-12-02", "1944-12-14", "1945-08-12", "1945-08-20")
                .without(Entry.BATTLES_AND_CAMPAIGNS)
                .and(unit(
                        "Co K 16th Inf",
                        "infantry-regiment-16/company-k",
                        "infantry-regiment-16",
                        "infantry-division-1"))
                .on(EAME);
        org.assertj.core.api.Assertions.assertThat(finding.needs())
                .isNotEmpty()
                .noneMatch(need -> need.question().contains("Omaha Beach"));
    }

    @Test
    void a_replacement_who_arrived_in_december_is_given_no_star_for_normandy() {
        var finding = Case.enlisted("1944-05-01", "1945-11-20")
                .overseas("ETO", "1944-12-02", "1944-12-14", "1945-08-12", "1945-08-19")
                .without(Entry.BATTLES_AND_CAMPAIGNS)
                .and(unit("Co E 117th Inf", "infantry-regiment-117/company-e", "infantry-regiment-117"))
                .on(EAME);
        assertThat(finding).wearsFor(Device.BRONZE_SERVICE_STAR, "Rhineland", "Ardennes-Alsace", "Central Europe");
    }

    @Test
    void campaigns_typed_on_the_paper_go_before_the_units_list_and_the_rest_is_asked_for() {
        var finding = rifleman()
                .campaigns("EA-RHI", "EA-CEN")
                .and(unit("Co E 117th Inf", "infantry-regiment-117/company-e", "infantry-regiment-117"))
                .on(EAME);
        assertThat(finding)
                .wears(Device.BRONZE_SERVICE_STAR, 2)
                .saying("30th Infantry Division in Normandy, Northern France, Ardennes-Alsace")
                .wants("unit-presence");
    }

    @Test
    void a_campaign_the_unit_does_not_have_brings_up_the_divisions_that_do() {
        var finding = rifleman()
                .campaigns("EA-NAF", "EA-ANZ", "EA-ROM")
                .and(unit("Co E 117th Inf", "infantry-regiment-117/company-e", "infantry-regiment-117"))
                .on(EAME);
        assertThat(finding).saying("he may have earned it with another unit").saying("34th Infantry Division");
    }

    @Test
    void dates_with_the_company_in_the_cited_action_make_the_citation_due() {
        var finding = rifleman()
                .and(served(
                        "Co E 117th Inf",
                        "1944-03-01",
                        "1945-08-01",
                        "infantry-regiment-117/company-e",
                        "infantry-regiment-117"))
                .on(CITATION);
        assertThat(finding).isAuthorized().rests("in-the-cited-action", Verdict.MET);
    }

    @Test
    void the_unit_he_came_home_with_makes_it_presumed_where_the_paper_names_the_campaign_of_the_action() {
        var finding = rifleman()
                .campaigns("EA-RHI")
                .and(unit("Co E 117th Inf", "infantry-regiment-117/company-e", "infantry-regiment-117"))
                .on(CITATION);
        assertThat(finding).isPresumed().wants("unit-presence");
    }

    @Test
    void a_division_cited_long_after_the_war_brings_the_citation_to_companies_never_cited_before() {
        // Presidential Unit Citation to the 30th Division for Mortain, directed 17 March 2020: National Guard Bureau.
        var finding = rifleman()
                .without(Entry.BATTLES_AND_CAMPAIGNS)
                .and(unit("Co F 117th Inf", "infantry-regiment-117/company-f", "infantry-regiment-117"))
                .find(CITATION)
                .orElseThrow();
        assertThat(finding).isPresumed().saying("Mortain");
    }

    @Test
    void who_was_not_overseas_on_the_day_has_no_share_in_it() {
        var finding = Case.enlisted("1944-05-01", "1945-11-20")
                .overseas("ETO", "1945-01-02", "1945-01-14", "1945-08-12", "1945-08-19")
                .and(unit("Co E 117th Inf", "infantry-regiment-117/company-e", "infantry-regiment-117"))
                .on(CITATION);
        assertThat(finding).isUnsettled();
    }

    @Test
    void a_battalion_cited_is_shared_by_its_own_companies_only() {
        var second = Case.enlisted("1943-06-01", "1945-11-20")
                .overseas("ETO", "1944-08-27", "1944-09-07", "1945-06-26", "1945-07-03")
                .and(served(
                        "Co F 415th Inf",
                        "1944-08-01",
                        "1945-07-01",
                        "infantry-regiment-415/company-f",
                        "infantry-regiment-415"))
                .on(CITATION);
        assertThat(second).isAuthorized();
        var first = Case.enlisted("1943-06-01", "1945-11-20")
                .overseas("ETO", "1944-08-27", "1944-09-07", "1945-06-26", "1945-07-03")
                .and(served(
                        "Co B 415th Inf",
                        "1944-08-01",
                        "1945-07-01",
                        "infantry-regiment-415/company-b",
                        "infantry-regiment-415"))
                .on(CITATION);
        assertThat(first).isUnsettled();
    }

    @Test
    void the_insigne_of_the_division_is_told_in_words() {
        var finding = rifleman()
                .and(unit("Co E 117th Inf", "infantry-regiment-117/company-e", "infantry-regiment-117"))
                .on("shoulder-sleeve-insignia");
        assertThat(finding).saying("30th Infantry Division").saying("only the one he came home with");
    }

    @Test
    void a_division_in_france_after_the_surrender_is_no_ground_for_the_occupation_medal() {
        var typed = Case.enlisted("1943-06-01", "1945-11-20")
                .overseas("ETO", "1945-01-20", "1945-02-06", "1945-08-15", "1945-08-23")
                .campaigns("EA-CEN");
        assertThat(typed.on("army-of-occupation-medal")).isPresumed();
        assertThat(typed.and(unit("Hq 13th Abn Div", "airborne-division-13")).on("army-of-occupation-medal"))
                .isUnsettled()
                .saying("France");
    }
}
