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
}
