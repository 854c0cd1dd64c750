package org.honorsdue.determination.award;

import static org.honorsdue.determination.Case.enlisted;
import static org.honorsdue.determination.Case.officer;
import static org.honorsdue.determination.FindingAssert.assertThat;

import org.honorsdue.determination.Case;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Overseas bars (WD Circular 268, 30 June 1944), service stripes, lapel button")
@DisplayNameGeneration(ReplaceUnderscores.class)
class SleeveInsigniaTest {
    private static final String BARS = "overseas-service-bars";

    private static Case overseas(String departed, String returned) {
        return enlisted("1942-02-03", "1946-10-11").overseas("ETO", departed, departed, returned, returned);
    }

    @ParameterizedTest(name = "from {0} to {1}: {2}")
    @CsvSource({
        "1944-01-10, 1944-07-08, 0", // a day short of six months, both days counted
        "1944-01-10, 1944-07-09, 1", // six months, hand arithmetic
        "1944-01-10, 1945-01-08, 1", // a fraction earns nothing
        "1944-01-10, 1945-01-09, 2",
        "1941-06-07, 1942-06-05, 0", // days before 7 December 1941 do not count
        "1941-06-07, 1942-06-06, 1",
        "1946-03-03, 1946-10-01, 1", // 3 March to 2 September 1946 is six months
        "1946-03-04, 1946-10-01, 0",
    })
    void one_for_each_six_months_from_port_to_port(String departed, String returned, int bars) {
        var soldier = enlisted("1941-02-03", "1946-10-11").overseas("ETO", departed, departed, returned, returned);
        if (bars == 0) {
            assertThat(soldier.on(BARS)).isNotAuthorized().rests("six-months", Verdict.NOT_MET);
        } else {
            assertThat(soldier.on(BARS)).isAuthorized().counts(bars).rests("fraction-earns-nothing", Verdict.MET);
        }
    }

    @Test
    void stays_are_added_before_they_are_divided() {
        assertThat(enlisted("1942-02-03", "1945-10-11")
                        .overseas("Iceland", "1942-05-01", "1942-05-09", "1942-09-20", "1942-09-30") // five months
                        .overseas("ETO", "1944-01-01", "1944-01-09", "1944-02-20", "1944-02-29") // two months
                        .on(BARS))
                .isAuthorized()
                .counts(1);
    }

    @Test
    void the_typed_total_serves_where_the_crossings_are_not_shown() {
        assertThat(enlisted("1942-02-03", "1945-10-11")
                        .without(Entry.SERVICE_OUTSIDE_US)
                        .total(ServiceTotal.Kind.FOREIGN, 1, 6, 0)
                        .on(BARS))
                .isAuthorized()
                .counts(3);
        assertThat(enlisted("1942-02-03", "1945-10-11")
                        .without(Entry.SERVICE_OUTSIDE_US)
                        .total(ServiceTotal.Kind.FOREIGN, 1, 5, 29)
                        .on(BARS))
                .counts(2);
    }

    @Test
    void the_paper_with_fewer_bars_is_short_and_with_more_is_told() {
        assertThat(overseas("1944-01-10", "1945-01-09").claims(BARS, 1).on(BARS))
                .isShortOnPaper()
                .counts(2);
        assertThat(overseas("1944-01-10", "1945-01-09").claims(BARS, 4).on(BARS))
                .counts(2)
                .saying("types 4 bars");
    }

    @Test
    void stripes_are_for_three_enlisted_years_without_the_days_lost() {
        assertThat(enlisted("1942-01-01", "1944-12-31").on("service-stripes"))
                .isAuthorized()
                .counts(1)
                .rests("enlisted", Verdict.MET);
        assertThat(enlisted("1942-01-01", "1944-12-29").on("service-stripes"))
                .isNotAuthorized()
                .rests("three-years", Verdict.NOT_MET);
        assertThat(enlisted("1942-01-01", "1944-12-31").conduct("excellent", 5).on("service-stripes"))
                .isNotAuthorized();
        assertThat(officer("1940-01-01", "1946-12-31").on("service-stripes")).isNotAuthorized();
        assertThat(enlisted("1938-01-01", "1940-12-31")
                        .paper(Tour.Category.ENLISTED, "1942-01-01", "1945-12-31")
                        .on("service-stripes"))
                .counts(2);
    }

    @Test
    void the_lapel_button_is_for_honorable_service_between_8_September_1939_and_31_December_1946() {
        var button = "honorable-service-lapel-button";
        assertThat(enlisted("1943-02-03", "1945-11-11").lapelButton().on(button))
                .isAuthorized()
                .isOnPaper();
        assertThat(enlisted("1943-02-03", "1945-11-11").on(button))
                .isAuthorized()
                .isNotOnPaper()
                .rests("honorable-service", Verdict.MET);
        assertThat(enlisted("1947-01-01", "1948-11-11").on(button))
                .isNotAuthorized()
                .rests("window", Verdict.NOT_MET);
        assertThat(enlisted("1943-02-03", "")
                        .died(Evidence.Death.Manner.KILLED_IN_ACTION, "1944-11-25")
                        .on(button))
                .isNotAuthorized();
    }

    @Test
    void a_separation_for_misconduct_leaves_the_button_open() {
        assertThat(enlisted("1943-01-10", "1944-04-04")
                        .reason("AR 615-368 undesirable habits or traits of character")
                        .on("honorable-service-lapel-button"))
                .isUnsettled();
    }

    @Test
    void a_patch_needs_a_unit_whose_command_had_one() {
        assertThat(enlisted("1943-02-03", "1945-11-11")
                        .organization("Co B 999th Infantry")
                        .on("shoulder-sleeve-insignia"))
                .isUnsettled()
                .rests("unit-authorized", Verdict.UNKNOWN);
    }
}
