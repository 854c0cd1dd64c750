package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;
import static org.honorsdue.reference.Theater.EAME;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Totals of service against the dates")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ServiceTotalCheckTest {
    private final Check check = new ServiceTotalCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    /** Entered 3 Feb 1943, out 11 Nov 1945; abroad 22 Aug 1944 to 9 Nov 1945, which is 1 year 2 months 18 days. */
    private static Soldier soldier() {
        return enlisted("1943-02-03", "1945-11-11")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-09");
    }

    @Test
    void totals_that_follow_from_the_dates_agree() {
        // Whole: 2 years 9 months 9 days with both ends; less 1-2-18 leaves 1-6-21. Typed 1-6-17, four days less.
        assertThat(on(soldier().foreign(1, 2, 18).continental(1, 6, 17)))
                .extracting(Crosscheck::outcome)
                .containsExactly(AGREES);
    }

    @Test
    void ten_days_off_pass_and_the_eleventh_does_not() {
        // 444 days from the sailing to the return, 445 with both ends. 1-2-29 is 365.25 + 60.875 + 29 = 455.
        assertThat(on(soldier().foreign(1, 2, 29)).get(0).outcome()).isEqualTo(AGREES);
        var beyond = on(soldier().foreign(1, 2, 30)).get(0);
        assertThat(beyond.outcome()).isEqualTo(DISAGREES);
        assertThat(beyond.says()).contains("11 days too long");
    }

    @Test
    void foreign_service_a_month_too_short_is_told_with_its_days() {
        var result = on(soldier().foreign(1, 1, 18)).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        // 365.25 + 30.4375 + 18 = 414 days against 444.
        assertThat(result.says()).contains("30 days too short");
        assertThat(result.entries()).containsExactly(Entry.SERVICE_OUTSIDE_US, Entry.FOREIGN_SERVICE);
    }

    @Test
    void continental_service_a_month_too_long_touches_the_American_Campaign_Medal() {
        var result = on(soldier().continental(1, 7, 21)).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.awards()).contains("american-campaign-medal");
    }

    @Test
    void lost_time_may_be_taken_off_or_not() {
        assertThat(on(soldier().lostDays(25).continental(1, 5, 26)).get(0).outcome())
                .isEqualTo(AGREES);
        assertThat(on(soldier().lostDays(25).continental(1, 6, 21)).get(0).outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void service_counted_from_the_induction_passes() {
        assertThat(on(soldier().inducted("1943-01-20").continental(1, 7, 5))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void part_dates_widen_what_passes() {
        assertThat(on(sometimeInAugust().foreign(1, 3, 5)).get(0).outcome()).isEqualTo(AGREES);
        assertThat(on(sometimeInAugust().foreign(1, 5, 5)).get(0).outcome()).isEqualTo(DISAGREES);
    }

    private static Soldier sometimeInAugust() {
        return enlisted("1943-02", "1945-11-11")
                .abroad("1944-08", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-09");
    }

    @Test
    void crossings_not_supplied_leave_it_open() {
        var soldier = enlisted("1943-02-03", "1945-11-11").without(Entry.SERVICE_OUTSIDE_US);
        assertThat(on(soldier.foreign(1, 2, 18).continental(1, 6, 17)))
                .extracting(Crosscheck::outcome)
                .containsExactly(CANNOT_TELL);
    }

    @Test
    void a_crossing_without_a_return_leaves_it_open() {
        var soldier = enlisted("1943-02-03", "1945-11-11")
                .onwards("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01")
                .foreign(1, 2, 18);
        assertThat(on(soldier).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }
}
