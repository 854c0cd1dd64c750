package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Orders against the award and the service")
@DisplayNameGeneration(ReplaceUnderscores.class)
class OrderReferenceCheckTest {
    private final Check check = new OrderReferenceCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier soldier() {
        return enlisted("1942-06-01", "1945-11-10");
    }

    @Test
    void an_order_inside_his_service_agrees() {
        assertThat(on(soldier().ordered("silver-star", Entry.DECORATIONS_AND_CITATIONS, 40, "HQ 999th Inf Div", 1944))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void an_order_before_his_service_does_not_fit() {
        var result = on(soldier().ordered("silver-star", Entry.DECORATIONS_AND_CITATIONS, 40, "HQ 999th Inf Div", 1941))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("before he entered service in 1942");
    }

    @Test
    void an_order_after_the_paper_does_not_fit() {
        assertThat(on(soldier().ordered("silver-star", Entry.DECORATIONS_AND_CITATIONS, 40, "HQ 999th Inf Div", 1946))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    /** Executive Order 9419 created the Bronze Star Medal on 4 February 1944. */
    @Test
    void a_Bronze_Star_Medal_of_1943_is_older_than_the_medal() {
        var result = on(soldier()
                        .ordered("bronze-star-medal", Entry.DECORATIONS_AND_CITATIONS, 7, "HQ 999th Inf Div", 1943))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("1 year too early");
        assertThat(result.awards()).containsExactly("bronze-star-medal");
    }

    @Test
    void the_day_before_the_medal_was_created_is_too_early() {
        assertThat(on(soldier().award("bronze-star-medal", Entry.DECORATIONS_AND_CITATIONS, "1944-02-03"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
        assertThat(on(soldier().award("bronze-star-medal", Entry.DECORATIONS_AND_CITATIONS, "1944-02-04")))
                .isEmpty();
    }

    @Test
    void an_order_behind_the_campaigns_is_no_older_than_the_last_of_them() {
        var soldier = soldier().campaigns("EA-NOR", "EA-CEN");
        assertThat(on(soldier.campaignOrder(33, 1945)).get(0).outcome()).isEqualTo(AGREES);
        var early = on(soldier().campaigns("EA-NOR", "EA-CEN").campaignOrder(33, 1944))
                .get(0);
        assertThat(early.outcome()).isEqualTo(DISAGREES);
        assertThat(early.says()).contains("GO 33 WD 44 is of 1944", "began in 1945");
        assertThat(early.entries()).containsExactly(Entry.BATTLES_AND_CAMPAIGNS);
    }

    @Test
    void of_several_orders_each_need_only_credit_the_first_campaign() {
        var soldier =
                soldier().campaigns("EA-NOR", "EA-CEN").campaignOrder(102, 1944).campaignOrder(116, 1945);
        assertThat(on(soldier)).extracting(Crosscheck::outcome).containsOnly(AGREES);
    }

    @Test
    void a_Purple_Heart_is_not_ordered_the_year_before_the_wound() {
        var result = on(soldier()
                        .wounded("1944-07-12", "France")
                        .ordered("purple-heart", Entry.DECORATIONS_AND_CITATIONS, 31, "Hq 999 Gen Hosp", 1943))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.entries()).containsExactly(Entry.DECORATIONS_AND_CITATIONS, Entry.WOUNDS);
    }
}
