package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;
import static org.honorsdue.reference.Theater.EAME;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Campaigns against the days abroad")
@DisplayNameGeneration(ReplaceUnderscores.class)
class CampaignDatesCheckTest {
    private final Check check = new CampaignDatesCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier abroad(String arrived, String left) {
        return enlisted("1942-06-01", "1946-01-10").abroad(arrived, arrived, "ETO", EAME, left, "1945-12-20");
    }

    /** Normandy ended on 24 July 1944. */
    @Test
    void arrived_on_the_last_day_of_Normandy_he_may_have_been_in_it() {
        assertThat(on(abroad("1944-07-24", "1945-12-01").campaigns("EA-NOR"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void arrived_the_day_after_he_was_not() {
        var result = on(abroad("1944-07-25", "1945-12-01").campaigns("EA-NOR")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("ended on 24 Jul 1944, 1 day before he reached ETO on 25 Jul 1944");
        assertThat(result.awards()).containsExactly("eame-campaign-medal");
        assertThat(result.entries()).containsExactly(Entry.BATTLES_AND_CAMPAIGNS, Entry.SERVICE_OUTSIDE_US);
    }

    /** Central Europe began on 22 March 1945. */
    @Test
    void left_the_day_before_it_began_he_was_not_in_Central_Europe() {
        assertThat(on(abroad("1944-07-25", "1945-03-22").campaigns("EA-CEN"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        assertThat(on(abroad("1944-07-25", "1945-03-21").campaigns("EA-CEN"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void a_campaign_of_the_other_ocean_does_not_fit() {
        var result = on(abroad("1944-07-25", "1945-12-01").campaigns("AP-LUZ")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("no crossing to the Asiatic-Pacific Theater");
    }

    /** Sicily: ground 9 July to 17 August 1943, air from 14 May 1943. */
    @Test
    void a_rifleman_needs_the_ground_dates_and_an_airman_the_air_dates() {
        assertThat(on(abroad("1943-01-10", "1943-06-30").arm("Infantry").campaigns("EA-SIC"))
                        .get(0)
                        .says())
                .contains("9 days after", "Only the dates for air units");
        assertThat(on(abroad("1943-01-10", "1943-06-30").arm("Air Corps").campaigns("EA-SIC"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        assertThat(on(abroad("1943-01-10", "1943-06-30")
                                .arm("Quartermaster Corps")
                                .campaigns("EA-SIC"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_part_date_is_read_in_his_favour() {
        assertThat(on(abroad("1944-07", "1945-12-01").campaigns("EA-NOR"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_station_in_evidence_counts_like_a_crossing() {
        var soldier = enlisted("1942-06-01", "1946-01-10")
                .stationed("France", EAME, "1944-06-20", "1944-08-01")
                .campaigns("EA-NOR");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(AGREES);
    }

    @Test
    void crossings_not_supplied_leave_it_open() {
        var soldier = enlisted("1942-06-01", "1946-01-10")
                .without(Entry.SERVICE_OUTSIDE_US)
                .campaigns("EA-NOR");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }

    @Test
    void even_without_crossings_a_campaign_before_his_service_does_not_fit() {
        var soldier = enlisted("1944-08-01", "1946-01-10")
                .without(Entry.SERVICE_OUTSIDE_US)
                .campaigns("EA-NOR");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(DISAGREES);
    }

    @Test
    void a_campaign_without_any_service_abroad_does_not_fit() {
        assertThat(on(enlisted("1942-06-01", "1946-01-10").campaigns("EA-NOR"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void no_foreign_service_in_the_totals_is_as_good_as_an_entry_without_crossings() {
        var soldier = enlisted("1942-06-01", "1946-01-10")
                .without(Entry.SERVICE_OUTSIDE_US)
                .foreign(0, 0, 0)
                .campaigns("EA-NOR");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(DISAGREES);
    }
}
