package org.honorsdue.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.history.OccupationArea;
import org.honorsdue.reference.history.Place;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds dates of the tables against lists outside the project, named beside each. */
@DisplayName("Against the published lists")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PublishedListsTest {
    private final Reference reference = Reference.published();

    /** Source: AR 600-8-22 (11 December 2006), appendix B, extract with the Italian campaigns. */
    @ParameterizedTest(name = "{0}: {1} to {2}")
    @CsvSource({
        "EA-SIC, 1943-07-09, 1943-08-17",
        "EA-NAF, 1943-09-09, 1944-01-21",
        "EA-ANZ, 1944-01-22, 1944-05-24",
        "EA-ROM, 1944-01-22, 1944-09-09",
        "EA-NAP, 1944-09-10, 1945-04-04"
    })
    void the_italian_campaigns_have_the_dates_of_appendix_B(String id, LocalDate first, LocalDate last) {
        assertThat(campaign(id).ground()).isEqualTo(new DateSpan(first, last));
    }

    /** The extract of appendix B prints 6 April; the Army's brochure on the campaign says 5 April, which leaves no gap. */
    @Test
    void the_Po_Valley_campaign_opens_the_day_after_the_North_Apennines_close() {
        assertThat(campaign("EA-POV").ground())
                .isEqualTo(new DateSpan(LocalDate.of(1945, 4, 5), LocalDate.of(1945, 5, 8)));
        assertThat(campaign("EA-POV").note()).contains("6 April");
    }

    /**
     * Source: Army Center of Military History brochure "Philippine Islands" for the first; list of the campaigns of the
     * Asiatic-Pacific Campaign Medal in a family history of medals for the others.
     */
    @ParameterizedTest(name = "{0}: {1} to {2}")
    @CsvSource({
        "AP-PHI, 1941-12-07, 1942-05-10",
        "AP-BUR, 1941-12-07, 1942-05-26",
        "AP-CPA, 1941-12-07, 1943-12-06",
        "AP-EIN, 1942-01-01, 1942-07-22",
        "AP-INB, 1942-04-02, 1945-01-28",
        "AP-AOJ, 1942-04-17, 1945-09-02",
        "AP-ALE, 1942-06-03, 1943-08-24",
        "AP-CHD, 1942-07-04, 1945-05-04",
        "AP-PAP, 1942-07-23, 1943-01-23"
    })
    void the_early_Pacific_campaigns_have_the_dates_of_the_list(String id, LocalDate first, LocalDate last) {
        assertThat(campaign(id).ground()).isEqualTo(new DateSpan(first, last));
    }

    /** Source: the Army's campaign list as remembered, written down apart from the table. */
    @ParameterizedTest(name = "{0}: {1} to {2}")
    @CsvSource({
        "EA-EGL, 1942-06-11, 1943-02-12",
        "EA-AOE, 1942-07-04, 1944-06-05",
        "EA-ALG, 1942-11-08, 1942-11-11",
        "EA-TUN, 1942-11-17, 1943-05-13",
        "EA-NOR, 1944-06-06, 1944-07-24",
        "EA-NFR, 1944-07-25, 1944-09-14",
        "EA-SFR, 1944-08-15, 1944-09-14",
        "EA-RHI, 1944-09-15, 1945-03-21",
        "EA-ARD, 1944-12-16, 1945-01-25",
        "EA-CEN, 1945-03-22, 1945-05-11",
        "AP-GUA, 1942-08-07, 1943-02-21",
        "AP-NGU, 1943-01-24, 1944-12-31",
        "AP-NSO, 1943-02-22, 1944-11-21",
        "AP-BIS, 1943-12-15, 1944-11-27",
        "AP-EMA, 1944-01-31, 1944-06-14",
        "AP-WPA, 1944-06-15, 1945-09-02",
        "AP-LEY, 1944-10-17, 1945-07-01",
        "AP-LUZ, 1944-12-15, 1945-07-04",
        "AP-CBU, 1945-01-29, 1945-07-15",
        "AP-SPH, 1945-02-27, 1945-07-04",
        "AP-RYU, 1945-03-26, 1945-07-02",
        "AP-CHO, 1945-05-05, 1945-09-02"
    })
    void the_other_campaigns_have_the_dates_of_the_list(String id, LocalDate first, LocalDate last) {
        assertThat(campaign(id).ground()).isEqualTo(new DateSpan(first, last));
    }

    /** Source: encyclopedia article on the campaigns of the US Army: 24 credits in the Pacific, 19 in Europe. */
    @Test
    void there_are_as_many_credits_in_each_theatre_as_the_Army_designated() {
        assertThat(reference.campaigns())
                .filteredOn(campaign -> campaign.theater() == Theater.ASIATIC_PACIFIC)
                .hasSize(24);
        assertThat(reference.campaigns())
                .filteredOn(campaign -> campaign.theater() == Theater.EAME)
                .hasSize(19);
    }

    /** Source: 32 CFR 578.48(a), 2006 revision, and 578.46(b), 1999 edition. */
    @Test
    void the_European_theatre_closes_on_8_November_1945() {
        var dates = reference.theater(Theater.EAME).orElseThrow().dates();
        assertThat(dates.contains(LocalDate.of(1941, 12, 6))).isFalse();
        assertThat(dates.contains(LocalDate.of(1941, 12, 7))).isTrue();
        assertThat(dates.contains(LocalDate.of(1945, 11, 8))).isTrue();
        assertThat(dates.contains(LocalDate.of(1945, 11, 9))).isFalse();
    }

    /** Source: Institute of Heraldry sheet and US Air Force summary of the two medals. */
    @Test
    void the_other_theatres_close_on_2_March_1946() {
        for (Theater theater : new Theater[] {Theater.AMERICAN, Theater.ASIATIC_PACIFIC}) {
            assertThat(reference.theater(theater).orElseThrow().dates())
                    .isEqualTo(new DateSpan(LocalDate.of(1941, 12, 7), LocalDate.of(1946, 3, 2)));
        }
    }

    /**
     * Sources: 32 CFR 578.48(a)(1), (5), (6), 1999 edition, for Germany, Japan and Korea; Institute of Heraldry sheet for
     * Austria and Berlin; 32 CFR 578.46(a)(6), 2006 revision, as read for the first tables, for Italy.
     */
    @ParameterizedTest(name = "{0}: {1} to {2}, gate from {3} to {4}")
    @CsvSource({
        "germany, 1945-05-09, 1955-05-05, 1945-05-09, 1945-11-08, GERMANY",
        "austria, 1945-05-09, 1955-07-27, 1945-05-09, 1945-11-08, GERMANY",
        "berlin,  1945-05-09, 1990-10-02, 1945-05-09, 1945-11-08, GERMANY",
        "italy,   1945-05-09, 1947-09-15, 1945-05-09, 1945-11-08, GERMANY",
        "japan,   1945-09-03, 1952-04-27, 1945-09-03, 1946-03-02, JAPAN",
        "korea,   1945-09-03, 1949-06-29, 1945-09-03, 1946-03-02, JAPAN"
    })
    void the_occupied_areas_have_the_dates_of_the_regulation(
            String id,
            LocalDate first,
            LocalDate last,
            LocalDate gateFirst,
            LocalDate gateLast,
            Place.Occupation clasp) {
        OccupationArea area = reference.occupationAreas().stream()
                .filter(candidate -> candidate.id().equals(id))
                .findFirst()
                .orElseThrow();
        assertThat(area.dates()).isEqualTo(new DateSpan(first, last));
        assertThat(area.gated()).isEqualTo(new DateSpan(gateFirst, gateLast));
        assertThat(area.clasp()).isEqualTo(clasp);
    }

    /**
     * Sources: the orders and acts themselves (EO 8808, EO 9265, EO 9419, EO 9396), 32 CFR 578.47 for the Act of 6 July
     * 1945, 10 USC 1129(c) for 30 November 1993, Department of Defense release 845-08; EO 9323 from an Air Force fact
     * sheet; 10 September 1947 from ABCMR AR20060011036; 15 March 1946 from 32 CFR 578.48(a), which prints the year 1947.
     */
    @ParameterizedTest(name = "{0} was established on {1}")
    @CsvSource({
        "american-defense-service-medal, 1941-06-28",
        "american-campaign-medal, 1942-11-06",
        "asiatic-pacific-campaign-medal, 1942-11-06",
        "eame-campaign-medal, 1942-11-06",
        "bronze-star-medal, 1944-02-04",
        "ww2-victory-medal, 1945-07-06",
        "army-of-occupation-medal, 1946-04-05",
        "prisoner-of-war-medal, 1985-11-08"
    })
    void awards_begin_on_the_day_of_their_order_or_act(String award, LocalDate day) {
        assertThat(reference.award(award).orElseThrow().established()).contains(day);
    }

    /** Sources: as above. */
    @ParameterizedTest(name = "{0} is law since {1}")
    @CsvSource({
        "army-good-conduct-medal/war-year, 1943-03-31",
        "american-campaign-medal/year-at-home, 1946-03-15",
        "bronze-star-medal/badge-counts-as-citation, 1947-09-10",
        "purple-heart/friendly-fire, 1993-11-30",
        "purple-heart/died-in-captivity, 2008-10-06"
    })
    void later_law_begins_on_its_day_and_not_before(String clause, LocalDate day) {
        var law = reference.clause(clause).orElseThrow();
        assertThat(law.inForceOn(day.minusDays(1))).isFalse();
        assertThat(law.inForceOn(day)).isTrue();
    }

    /** Source: EO 9265 (Alaska is outside the continental limits); limits of the theatres in DoD 1348.33-M for the others. */
    @ParameterizedTest(name = "{0} lies in {1}")
    @CsvSource({
        "Alaska, ASIATIC_PACIFIC",
        "Hawaii, ASIATIC_PACIFIC",
        "India, ASIATIC_PACIFIC",
        "Iran, EAME",
        "Iceland, EAME",
        "Greenland, EAME",
        "Azores, EAME",
        "Newfoundland, AMERICAN",
        "Bermuda, AMERICAN",
        "Panama, AMERICAN",
        "Brazil, AMERICAN",
        "ZI, CONTINENTAL_US"
    })
    void places_at_the_edges_lie_on_the_right_side(String place, Theater theater) {
        assertThat(reference.place(place).orElseThrow().theaters()).containsExactly(theater);
    }

    private Campaign campaign(String id) {
        return reference.campaign(id).orElseThrow();
    }
}
