package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Qualifications against decorations")
@DisplayNameGeneration(ReplaceUnderscores.class)
class QualificationsAgainstDecorationsCheckTest {
    private final Check check = new QualificationsAgainstDecorationsCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier soldier() {
        return enlisted("1942-06-01", "1945-11-10");
    }

    @Test
    void the_same_badge_alike_in_both_entries_agrees() {
        assertThat(on(soldier()
                                .awardIn(Entry.QUALIFICATIONS, "combat-infantryman-badge", 1)
                                .award("combat-infantryman-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void the_same_badge_a_day_apart_does_not() {
        var result = on(soldier()
                        .award("combat-infantryman-badge", Entry.QUALIFICATIONS, "1944-12-20")
                        .award("combat-infantryman-badge", Entry.DECORATIONS_AND_CITATIONS, "1944-12-21"))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.entries()).containsExactly(Entry.QUALIFICATIONS, Entry.DECORATIONS_AND_CITATIONS);
    }

    @Test
    void a_month_and_a_day_inside_it_are_alike() {
        assertThat(on(soldier()
                                .award("combat-infantryman-badge", Entry.QUALIFICATIONS, "1944-12")
                                .award("combat-infantryman-badge", Entry.DECORATIONS_AND_CITATIONS, "1944-12-21"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void two_order_numbers_for_one_badge_do_not_fit() {
        assertThat(on(soldier()
                                .ordered("combat-infantryman-badge", Entry.QUALIFICATIONS, 12, "HQ 999th Inf", 1944)
                                .ordered(
                                        "combat-infantryman-badge",
                                        Entry.DECORATIONS_AND_CITATIONS,
                                        21,
                                        "HQ 999th Inf",
                                        1944))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void the_infantryman_s_badge_in_one_and_the_medical_badge_in_the_other_do_not_fit() {
        assertThat(on(soldier()
                                .awardIn(Entry.QUALIFICATIONS, "combat-infantryman-badge", 1)
                                .award("combat-medical-badge"))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void a_badge_in_only_one_entry_says_nothing() {
        assertThat(on(soldier().award("combat-infantryman-badge"))).isEmpty();
    }

    @Test
    void None_among_the_qualifications_contradicts_a_badge_among_the_decorations() {
        var result = on(soldier().none(Entry.QUALIFICATIONS).award("combat-infantryman-badge"))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.entries()).containsExactly(Entry.QUALIFICATIONS, Entry.DECORATIONS_AND_CITATIONS);
    }
}
