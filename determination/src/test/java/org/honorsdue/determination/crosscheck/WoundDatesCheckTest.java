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

@DisplayName("Wounds against dates, theatre and campaigns")
@DisplayNameGeneration(ReplaceUnderscores.class)
class WoundDatesCheckTest {
    private final Check check = new WoundDatesCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier soldier() {
        return enlisted("1943-02-03", "1945-11-11")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-10-01", "1945-10-09")
                .campaigns("EA-RHI", "EA-ARD");
    }

    @Test
    void a_wound_in_a_campaign_he_holds_agrees() {
        assertThat(on(soldier().wounded("1944-12-20", "Belgium")).get(0).outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_wound_the_day_before_the_arrival_does_not_fit() {
        var soldier = enlisted("1943-02-03", "1945-11-11")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-10-01", "1945-10-09")
                .campaigns("EA-NFR");
        assertThat(on(soldier.wounded("1944-08-29", "France")).get(0).outcome()).isEqualTo(AGREES);
        var early = enlisted("1943-02-03", "1945-11-11")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-10-01", "1945-10-09")
                .campaigns("EA-NFR")
                .wounded("1944-08-28", "France");
        var result = on(early).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("1 day outside the days he was abroad");
        assertThat(result.entries()).contains(Entry.WOUNDS, Entry.SERVICE_OUTSIDE_US);
    }

    /** Northern France ran until 14 September 1944 and is not named. */
    @Test
    void a_wound_in_a_campaign_not_named_points_to_a_missing_star() {
        var result = on(soldier().wounded("1944-09-10", "France")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("Northern France");
        assertThat(result.awards()).contains("eame-campaign-medal", "purple-heart");
    }

    @Test
    void a_wound_in_England_needs_no_campaign() {
        assertThat(on(soldier().wounded("1944-09-10", "London England")).get(0).outcome())
                .isEqualTo(AGREES);
    }

    /** Fighting in Europe ended on 11 May 1945, the last day of Central Europe. */
    @Test
    void a_wound_in_June_1945_in_Europe_does_not_fit() {
        assertThat(on(soldier().wounded("1945-06-20", "Germany")).get(0).outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void a_wound_on_Luzon_does_not_fit_a_man_in_Europe() {
        assertThat(on(soldier().wounded("1945-01-15", "Luzon")).get(0).outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void crossings_not_supplied_leave_it_open() {
        var soldier = enlisted("1943-02-03", "1945-11-11")
                .without(Entry.SERVICE_OUTSIDE_US)
                .wounded("1944-12-20", "Belgium");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }

    @Test
    void a_wound_outside_his_service_does_not_fit_even_without_crossings() {
        var soldier = enlisted("1943-02-03", "1944-11-11")
                .without(Entry.SERVICE_OUTSIDE_US)
                .wounded("1944-12-20", "Belgium");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(DISAGREES);
    }
}
