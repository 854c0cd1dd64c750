package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Wounds against Purple Hearts")
@DisplayNameGeneration(ReplaceUnderscores.class)
class WoundsAgainstHeartsCheckTest {
    private final Check check = new WoundsAgainstHeartsCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier soldier() {
        return enlisted("1943-02-03", "1945-11-11");
    }

    @Test
    void a_Purple_Heart_for_each_wound() {
        assertThat(on(soldier()
                                .wounded("1944-12-20", "Belgium")
                                .wounded("1945-01-20", "Belgium")
                                .award("purple-heart", 2))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_wound_without_a_Purple_Heart_is_the_classic_omission() {
        var result = on(soldier().wounded("1944-12-20", "Belgium")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.entries()).containsExactly(Entry.DECORATIONS_AND_CITATIONS, Entry.WOUNDS);
    }

    @Test
    void a_Purple_Heart_too_many_is_told() {
        assertThat(on(soldier().wounded("1944-12-20", "Belgium").award("purple-heart", 2))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void two_wounds_of_one_day_may_be_one_Purple_Heart_or_two() {
        var twice = soldier().wounded("1944-12-20", "Belgium").wounded("1944-12-20", "Malmedy");
        assertThat(on(twice.award("purple-heart", 1)).get(0).outcome()).isEqualTo(AGREES);
    }

    @Test
    void the_same_heart_in_two_entries_is_counted_once() {
        var told = soldier()
                .wounded("1944-12-20", "Belgium")
                .award("purple-heart")
                .awardIn(Entry.REMARKS, "purple-heart", 1);
        assertThat(on(told).get(0).outcome()).isEqualTo(AGREES);
    }

    @Test
    void wounds_not_supplied_leave_it_open() {
        assertThat(on(soldier().without(Entry.WOUNDS).award("purple-heart"))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    @Test
    void a_second_paper_may_repeat_the_medal_without_the_wound() {
        var soldier = soldier()
                .wounded("1944-12-20", "Belgium")
                .award("purple-heart")
                .paper(Tour.Category.ENLISTED, "1945-11-12", "1946-11-11")
                .award("purple-heart");
        assertThat(on(soldier)).extracting(Crosscheck::outcome).containsOnly(AGREES);
    }
}
