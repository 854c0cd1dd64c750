package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.Soldier.enlisted;
import static org.honorsdue.determination.crosscheck.Soldier.officer;
import static org.honorsdue.determination.crosscheck.Soldier.undated;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.AGREES;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.CANNOT_TELL;
import static org.honorsdue.determination.finding.Crosscheck.Outcome.DISAGREES;

import java.util.List;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Good Conduct Medal against conduct and dates")
@DisplayNameGeneration(ReplaceUnderscores.class)
class GoodConductCheckTest {
    private final Check check = new GoodConductCheck();

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static final String MEDAL = "army-good-conduct-medal";

    /** One year wholly inside 7 December 1941 to 2 March 1946, as the Army reads Executive Order 9323. */
    @Test
    void a_year_of_war_service_is_enough_and_a_day_less_is_not() {
        assertThat(on(enlisted("1944-11-12", "1945-11-11").award(MEDAL)).get(0).outcome())
                .isEqualTo(AGREES);
        var result = on(enlisted("1944-11-13", "1945-11-11").award(MEDAL)).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("364 days", "1 day short of a year");
    }

    @Test
    void only_the_days_until_2_March_1946_count() {
        assertThat(on(enlisted("1945-06-10", "1946-08-10").award(MEDAL)).get(0).outcome())
                .isEqualTo(DISAGREES);
    }

    @Test
    void lost_time_speaks_against_it() {
        var result = on(enlisted("1943-02-03", "1945-11-11").lostDays(12).award(MEDAL))
                .get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("12 days lost");
        assertThat(result.entries()).contains(Entry.DECORATIONS_AND_CITATIONS, Entry.REMARKS);
    }

    @Test
    void no_days_lost_speak_for_nothing_else() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").lostDays(0).award(MEDAL))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_character_below_excellent_speaks_against_it() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11")
                                .character("Very Good")
                                .award(MEDAL))
                        .get(0)
                        .outcome())
                .isEqualTo(DISAGREES);
        assertThat(on(enlisted("1943-02-03", "1945-11-11")
                                .character("Excellent")
                                .award(MEDAL))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void a_disability_makes_a_short_service_possible() {
        assertThat(on(enlisted("1945-01-10", "1945-07-11")
                                .reason("AR 615-361 CDD")
                                .award(MEDAL))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    @Test
    void on_an_officer_s_paper_without_a_word_of_enlisted_service_it_does_not_fit() {
        var result = on(officer("1943-02-03", "1945-11-11").award(MEDAL)).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.entries()).contains(Entry.DECORATIONS_AND_CITATIONS, Entry.GRADE);
    }

    @Test
    void without_the_dates_one_cannot_tell() {
        assertThat(on(undated().award(MEDAL)).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }

    @Test
    void an_officer_who_was_inducted_brought_it_from_the_ranks() {
        assertThat(on(officer("1943-02-03", "1945-11-11").inducted("1942-02-03").award(MEDAL)))
                .extracting(Crosscheck::outcome)
                .doesNotContain(DISAGREES);
    }

    @Test
    void remarks_not_supplied_may_tell_of_enlisted_service() {
        assertThat(on(officer("1943-02-03", "1945-11-11").without(Entry.REMARKS).award(MEDAL)))
                .extracting(Crosscheck::outcome)
                .contains(CANNOT_TELL)
                .doesNotContain(DISAGREES);
    }
}
