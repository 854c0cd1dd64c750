package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;
import static org.honorsdue.reference.Theater.EAME;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Mustering-out pay against service abroad")
@DisplayNameGeneration(ReplaceUnderscores.class)
class MusteringOutPayCheckTest {
    private final Check check = new MusteringOutPayCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier home() {
        return enlisted("1943-02-03", "1945-11-11");
    }

    private static Soldier away() {
        return home().abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-09");
    }

    @Test
    void three_hundred_dollars_go_with_service_abroad() {
        assertThat(on(away().musteringOutPay(300)).get(0).outcome()).isEqualTo(AGREES);
        assertThat(on(home().musteringOutPay(300)).get(0).outcome()).isEqualTo(DISAGREES);
    }

    @Test
    void two_hundred_dollars_go_with_service_at_home() {
        assertThat(on(home().musteringOutPay(200)).get(0).outcome()).isEqualTo(AGREES);
        var result = on(away().musteringOutPay(200)).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("$100 too little");
        assertThat(result.entries()).contains(Entry.MUSTERING_OUT_PAY, Entry.SERVICE_OUTSIDE_US);
    }

    @Test
    void one_hundred_dollars_go_with_less_than_sixty_days() {
        assertThat(on(enlisted("1945-09-01", "1945-10-29").musteringOutPay(100))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        assertThat(on(home().musteringOutPay(100)).get(0).outcome()).isEqualTo(DISAGREES);
    }

    @Test
    void an_amount_the_law_did_not_know_is_a_slip() {
        assertThat(on(away().musteringOutPay(250)).get(0).outcome()).isEqualTo(DISAGREES);
    }

    @Test
    void without_crossings_and_totals_one_cannot_tell() {
        assertThat(on(home().without(Entry.SERVICE_OUTSIDE_US).musteringOutPay(300))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    @Test
    void a_total_of_foreign_service_is_enough() {
        assertThat(on(home().without(Entry.SERVICE_OUTSIDE_US).foreign(1, 2, 18).musteringOutPay(300))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void service_abroad_on_the_first_paper_counts_for_the_second() {
        var soldier =
                away().paper(Tour.Category.ENLISTED, "1945-11-12", "1946-11-11").musteringOutPay(300);
        assertThat(on(soldier).get(0).outcome()).isEqualTo(AGREES);
    }
}
