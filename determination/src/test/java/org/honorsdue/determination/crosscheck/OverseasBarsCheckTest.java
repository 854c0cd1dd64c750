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

@DisplayName("Overseas bars against months abroad")
@DisplayNameGeneration(ReplaceUnderscores.class)
class OverseasBarsCheckTest {
    private final Check check = new OverseasBarsCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier away(String departed, String returned) {
        return enlisted("1943-01-10", "1946-01-20").abroad(departed, departed, "ETO", EAME, returned, returned);
    }

    /** 22 Aug 1944 to 9 Nov 1945: 14 months 18 days, so two bars. */
    @Test
    void two_bars_for_fourteen_months() {
        assertThat(on(away("1944-08-22", "1945-11-09").award("overseas-service-bars", 2)))
                .singleElement()
                .extracting(Crosscheck::outcome)
                .isEqualTo(AGREES);
    }

    @Test
    void three_bars_for_fourteen_months_are_one_too_many() {
        var result = on(away("1944-08-22", "1945-11-09").award("overseas-service-bars", 3))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        // 3 x 182.625 days = 548; 444 days abroad, both ends counted as 445: 548 - 445 = 103. Hand arithmetic.
        assertThat(result.says()).contains("3 overseas bars are typed", "103 days more");
        assertThat(result.entries()).contains(Entry.DECORATIONS_AND_CITATIONS, Entry.SERVICE_OUTSIDE_US);
    }

    @Test
    void one_bar_for_fourteen_months_is_one_too_few() {
        assertThat(on(away("1944-08-22", "1945-11-09").award("overseas-service-bars", 1))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    /** 1 Jan to 29 Jun 1945 is a day or so short of six months, and clerks did not count days. */
    @Test
    void a_day_short_of_six_months_may_have_a_bar_or_none() {
        assertThat(on(away("1945-01-01", "1945-06-29").award("overseas-service-bars", 1))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_month_short_of_six_has_none() {
        assertThat(on(away("1945-01-01", "1945-06-01").award("overseas-service-bars", 1))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void short_absences_add_up() {
        var soldier = away("1943-06-01", "1943-10-01")
                .abroad("1944-06-01", "1944-06-10", "ETO", EAME, "1944-09-01", "1944-09-10")
                .award("overseas-service-bars", 1);
        assertThat(on(soldier).get(0).outcome()).isEqualTo(AGREES);
    }

    @Test
    void without_the_crossings_the_total_of_foreign_service_stands_in() {
        var soldier = enlisted("1943-01-10", "1946-01-20")
                .without(Entry.SERVICE_OUTSIDE_US)
                .foreign(1, 2, 18)
                .award("overseas-service-bars", 4);
        assertThat(on(soldier).get(0).outcome()).isEqualTo(DISAGREES);
    }

    @Test
    void without_either_one_cannot_tell() {
        var soldier = enlisted("1943-01-10", "1946-01-20")
                .without(Entry.SERVICE_OUTSIDE_US)
                .award("overseas-service-bars", 4);
        assertThat(on(soldier).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }

    @Test
    void a_paper_without_bars_says_nothing() {
        assertThat(on(away("1944-08-22", "1945-11-09"))).isEmpty();
    }
}
