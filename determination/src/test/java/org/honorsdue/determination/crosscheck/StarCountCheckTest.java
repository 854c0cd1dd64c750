package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Stars on the ribbon against campaigns named")
@DisplayNameGeneration(ReplaceUnderscores.class)
class StarCountCheckTest {
    private final Check check = new StarCountCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier soldier() {
        return enlisted("1943-02-03", "1945-11-11");
    }

    @Test
    void three_stars_for_three_campaigns() {
        assertThat(on(soldier().campaigns("EA-RHI", "EA-ARD", "EA-CEN").ribbon("eame-campaign-medal", 3))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_silver_star_stands_for_five() {
        assertThat(on(soldier()
                                .campaigns("EA-NOR", "EA-NFR", "EA-RHI", "EA-ARD", "EA-CEN")
                                .silverRibbon("eame-campaign-medal", 1, 0))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void one_star_too_many_is_told_with_the_names() {
        var result = on(soldier().campaigns("EA-RHI", "EA-CEN").ribbon("eame-campaign-medal", 3))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("1 star too many", "Rhineland and Central Europe");
        assertThat(result.entries()).containsExactly(Entry.BATTLES_AND_CAMPAIGNS, Entry.DECORATIONS_AND_CITATIONS);
        assertThat(result.awards()).containsExactly("eame-campaign-medal");
    }

    @Test
    void one_star_too_few_is_told() {
        var result = on(soldier().campaigns("EA-RHI", "EA-ARD", "EA-CEN").ribbon("eame-campaign-medal", 2))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("1 star too few");
    }

    @Test
    void a_ribbon_without_any_star_is_left_open() {
        assertThat(on(soldier().campaigns("EA-RHI").ribbon("eame-campaign-medal", 0))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    @Test
    void each_theater_is_counted_by_itself() {
        assertThat(on(soldier()
                        .campaigns("EA-RHI", "AP-LUZ")
                        .ribbon("eame-campaign-medal", 1)
                        .ribbon("asiatic-pacific-campaign-medal", 1)))
                .extracting(Crosscheck::outcome)
                .containsExactly(AGREES);
    }

    /** One list gives a star for a credit of a whole theatre, another denies it: both counts pass. */
    @Test
    void a_credit_of_the_whole_theater_may_carry_a_star_or_not() {
        assertThat(on(soldier().campaigns("EA-RHI", "EA-AIR").ribbon("eame-campaign-medal", 1))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        assertThat(on(soldier().campaigns("EA-RHI", "EA-AIR").ribbon("eame-campaign-medal", 2))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void campaigns_not_supplied_leave_it_open() {
        assertThat(on(soldier().without(Entry.BATTLES_AND_CAMPAIGNS).ribbon("eame-campaign-medal", 3))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    @Test
    void an_unread_word_may_be_the_missing_campaign() {
        assertThat(on(soldier()
                                .campaigns("EA-RHI")
                                .unreadIn(Entry.BATTLES_AND_CAMPAIGNS)
                                .ribbon("eame-campaign-medal", 2))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }
}
