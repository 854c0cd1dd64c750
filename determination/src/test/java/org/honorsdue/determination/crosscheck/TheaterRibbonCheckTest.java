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

@DisplayName("Theatre ribbons against the crossings")
@DisplayNameGeneration(ReplaceUnderscores.class)
class TheaterRibbonCheckTest {
    private final Check check = new TheaterRibbonCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier abroad(String arrived, String left) {
        return enlisted("1943-02-03", "1946-03-11").abroad(arrived, arrived, "ETO", EAME, left, left);
    }

    @Test
    void the_ribbon_of_the_theater_he_was_in_agrees() {
        assertThat(on(abroad("1944-08-29", "1945-11-01").ribbon("eame-campaign-medal", 0))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void the_ribbon_of_the_other_theater_does_not_fit() {
        assertThat(on(abroad("1944-08-29", "1945-11-01").ribbon("asiatic-pacific-campaign-medal", 0))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    /** The theatre closed for the medal on 8 November 1945: 32 CFR 578.48(a). */
    @Test
    void the_last_day_counts_and_the_day_after_does_not() {
        assertThat(on(abroad("1945-11-08", "1946-03-01").ribbon("eame-campaign-medal", 0))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        var result = on(abroad("1945-11-09", "1946-03-01").ribbon("eame-campaign-medal", 0))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("1 day outside its dates");
    }

    @Test
    void the_American_ribbon_is_left_alone() {
        assertThat(on(enlisted("1943-02-03", "1946-03-11").ribbon("american-campaign-medal", 0)))
                .isEmpty();
    }

    @Test
    void crossings_not_supplied_leave_it_open() {
        assertThat(on(enlisted("1943-02-03", "1946-03-11")
                                .without(Entry.SERVICE_OUTSIDE_US)
                                .ribbon("eame-campaign-medal", 0))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }
}
