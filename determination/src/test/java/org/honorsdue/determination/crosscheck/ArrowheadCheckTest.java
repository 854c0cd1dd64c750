package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;
import static org.honorsdue.reference.Theater.ASIATIC_PACIFIC;
import static org.honorsdue.reference.Theater.EAME;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Arrowhead against assaults")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ArrowheadCheckTest {
    private final Check check = new ArrowheadCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier abroad(String arrived) {
        return enlisted("1942-06-01", "1946-01-10").abroad(arrived, arrived, "ETO", EAME, "1945-12-01", "1945-12-20");
    }

    @Test
    void an_arrowhead_goes_with_Normandy_for_a_man_who_was_there_on_6_June() {
        assertThat(on(abroad("1944-01-10").campaigns("EA-NOR").ribbon("eame-campaign-medal", 1, 1))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void two_days_after_the_last_glider_landing_he_came_too_late() {
        var result = on(abroad("1944-06-10").campaigns("EA-NOR").ribbon("eame-campaign-medal", 1, 1))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        // The last landings in the table are the gliders of 6 to 8 June 1944.
        assertThat(result.says()).contains("2 days away");
    }

    @Test
    void Northern_France_had_no_assault() {
        var result = on(abroad("1944-01-10").campaigns("EA-NFR").ribbon("eame-campaign-medal", 1, 1))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.entries()).contains(Entry.BATTLES_AND_CAMPAIGNS, Entry.DECORATIONS_AND_CITATIONS);
    }

    @Test
    void one_ribbon_has_one_arrowhead() {
        assertThat(on(abroad("1942-10-10").campaigns("EA-SIC", "EA-NOR").ribbon("eame-campaign-medal", 2, 2)))
                .extracting(Crosscheck::outcome)
                .contains(DISAGREES);
    }

    @Test
    void an_assault_in_evidence_settles_it() {
        var soldier = abroad("1944-01-10")
                .campaigns("EA-NFR")
                .ribbon("eame-campaign-medal", 1, 1)
                .assault("EA-NOR", "1944-06-06");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(AGREES);
    }

    @Test
    void campaigns_not_supplied_leave_it_open() {
        var soldier = abroad("1944-01-10").without(Entry.BATTLES_AND_CAMPAIGNS).ribbon("eame-campaign-medal", 1, 1);
        assertThat(on(soldier).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }

    /** Kiska, 15 August 1943, unopposed: the credit is disputed in the table. */
    @Test
    void a_landing_of_disputed_credit_leaves_it_open() {
        var soldier = enlisted("1942-06-01", "1946-01-10")
                .abroad("1943-07-10", "1943-08-01", "Alaska", ASIATIC_PACIFIC, "1945-12-01", "1945-12-20")
                .campaigns("AP-ALE")
                .ribbon("asiatic-pacific-campaign-medal", 1, 1);
        assertThat(on(soldier).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }

    /** The gliders that flew into Bastogne carried supplies; a gunner of the line was not in them. */
    @Test
    void a_disputed_glider_landing_counts_only_for_an_airborne_man() {
        assertThat(on(abroad("1944-07-13").campaigns("EA-NFR", "EA-ARD").ribbon("eame-campaign-medal", 2, 1))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
        assertThat(on(abroad("1944-07-13")
                                .award("glider-badge")
                                .campaigns("EA-NFR", "EA-ARD")
                                .ribbon("eame-campaign-medal", 2, 1))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }
}
