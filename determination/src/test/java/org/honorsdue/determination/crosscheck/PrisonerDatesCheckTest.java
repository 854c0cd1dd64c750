package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;
import static org.honorsdue.reference.Theater.EAME;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Prisoner dates")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PrisonerDatesCheckTest {
    private final Check check = new PrisonerDatesCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier soldier() {
        return enlisted("1943-02-03", "1945-11-11")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-05-20", "1945-06-09");
    }

    @Test
    void captivity_inside_the_days_abroad_agrees() {
        assertThat(on(soldier().captive("1944-12-19", "1945-04-29").campaigns("EA-RHI", "EA-ARD"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    /** Central Europe ran 22 March to 11 May 1945: freed on 29 April he can have been back; freed after it he cannot. */
    @Test
    void a_campaign_that_ran_wholly_in_captivity_is_not_his() {
        assertThat(on(soldier().captive("1944-12-19", "1945-05-11").campaigns("EA-CEN"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        var result = on(soldier().captive("1944-12-19", "1945-05-12").campaigns("EA-CEN"))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.awards()).containsExactly("eame-campaign-medal");
    }

    @Test
    void freed_the_day_after_the_return_does_not_fit() {
        assertThat(on(soldier().captive("1944-12-19", "1945-05-20")).get(0).outcome())
                .isEqualTo(AGREES);
        assertThat(on(soldier().captive("1944-12-19", "1945-06-10")).get(0).outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void captured_before_the_arrival_does_not_fit() {
        var result = on(soldier().captive("1944-08-20", "1945-04-29")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("captured on 20 Aug 1944");
    }

    @Test
    void freed_after_the_separation_does_not_fit() {
        var soldier = enlisted("1943-02-03", "1945-04-01").without(Entry.SERVICE_OUTSIDE_US);
        assertThat(on(soldier.captive("1944-12-19", "1945-04-29")).get(0).outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void a_man_of_whom_no_paper_is_known_is_not_accused_by_its_absence() {
        var held = enlisted("1941-04-22", "1942-11-02").captive("1942-05-06", "1942-11-02");
        var facts = held.facts().every(Captivity.class);
        assertThat(check.compare(new ServiceFacts(facts, List.of(), List.of(), List.of())))
                .extracting(Crosscheck::outcome)
                .containsExactly(AGREES);
    }
}
