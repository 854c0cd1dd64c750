package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;
import static org.honorsdue.reference.Theater.ASIATIC_PACIFIC;
import static org.honorsdue.reference.Theater.EAME;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("The order of dates")
@DisplayNameGeneration(ReplaceUnderscores.class)
class DateOrderCheckTest {
    private final Check check = new DateOrderCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    @Test
    void dates_in_order_agree() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11")
                        .inducted("1943-01-20")
                        .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-09")))
                .extracting(Crosscheck::outcome)
                .containsExactly(AGREES);
    }

    @Test
    void a_return_the_day_after_the_separation_does_not_fit() {
        var soldier = enlisted("1943-02-03", "1945-11-11")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-12");
        var result = on(soldier).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("separation on 11 Nov 1945 lies 1 day before the return from ETO");
    }

    @Test
    void a_second_sailing_before_the_first_return_does_not_fit() {
        var soldier = enlisted("1943-02-03", "1945-11-11")
                .abroad("1943-08-22", "1943-08-29", "ETO", EAME, "1944-11-01", "1944-11-09")
                .abroad("1944-10-01", "1944-10-10", "Pacific", ASIATIC_PACIFIC, "1945-10-01", "1945-10-20");
        assertThat(on(soldier)).extracting(Crosscheck::outcome).containsExactly(DISAGREES);
    }

    @Test
    void induction_after_entry_does_not_fit() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").inducted("1943-02-04"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void a_month_and_a_day_inside_it_are_in_order() {
        assertThat(on(enlisted("1943-02-03", "1943-02")).get(0).outcome()).isEqualTo(AGREES);
    }
}
