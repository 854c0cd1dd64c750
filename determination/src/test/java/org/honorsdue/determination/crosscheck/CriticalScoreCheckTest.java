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

@DisplayName("Score against the critical score")
@DisplayNameGeneration(ReplaceUnderscores.class)
class CriticalScoreCheckTest {
    private final Check check = new CriticalScoreCheck(Reference.published());

    private List<Crosscheck> on(Soldier soldier) {
        return check.compare(soldier.facts());
    }

    private static Soldier out(String day) {
        return enlisted("1943-02-03", day)
                .born("1922-05-01")
                .dependents(0)
                .reason("Conv of Govt RR 1-1 Demobilization");
    }

    /** 60 held from 1 November 1945 (read in one family history page, the day from memory); 55 came within the month. */
    @Test
    void a_score_at_the_figure_agrees_and_one_far_below_does_not() {
        assertThat(on(out("1945-11-11").score(60, "1945-09-02")).get(0).outcome())
                .isEqualTo(AGREES);
        assertThat(on(out("1945-11-11").score(55, "1945-09-02")).get(0).outcome())
                .isEqualTo(AGREES);
        var result = on(out("1945-11-11").score(54, "1945-09-02")).get(0);
        assertThat(result.outcome()).isEqualTo(DISAGREES);
        assertThat(result.says()).contains("1 point below", "(55)");
        assertThat(result.entries()).contains(Entry.REMARKS, Entry.SEPARATED, Entry.REASON);
    }

    @Test
    void dependency_disability_and_re_enlistment_need_no_points() {
        for (var reason : List.of("AR 615-362 Dependency", "AR 615-361 CDD", "Conv of Govt to enlist in the RA")) {
            var soldier = enlisted("1943-02-03", "1945-11-11").reason(reason).score(30, "1945-09-02");
            assertThat(on(soldier).get(0).outcome()).as(reason).isEqualTo(AGREES);
        }
    }

    @Test
    void age_and_children_explain_an_early_release() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11")
                                .born("1909-05-01")
                                .dependents(0)
                                .reason("Demobilization")
                                .score(30, "1945-09-02"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
        assertThat(on(enlisted("1943-02-03", "1945-11-11")
                                .born("1922-05-01")
                                .dependents(4)
                                .reason("Demobilization")
                                .score(30, "1945-09-02"))
                        .get(0)
                        .outcome())
                .isEqualTo(AGREES);
    }

    @Test
    void the_reason_not_supplied_leaves_it_open() {
        assertThat(on(enlisted("1943-02-03", "1945-11-11").score(30, "1945-09-02"))
                        .get(0)
                        .outcome())
                .isEqualTo(CANNOT_TELL);
    }

    @Test
    void from_1946_length_of_service_counted_and_nothing_is_said() {
        assertThat(on(out("1946-01-01").score(30, "1945-09-02"))).isEmpty();
    }

    @Test
    void before_12_May_1945_there_was_no_figure() {
        assertThat(on(out("1945-05-11").score(30, "1945-05-12"))).isEmpty();
    }

    /** TIME, 17 September 1945: 41 for enlisted women. */
    @Test
    void women_had_a_figure_of_their_own() {
        assertThat(on(out("1945-09-20").woman().score(41, "1945-09-02")).get(0).outcome())
                .isEqualTo(AGREES);
        assertThat(on(out("1945-09-20").woman().score(40, "1945-09-02")).get(0).outcome())
                .isEqualTo(DISAGREES);
    }

    /** Three children were a ground of their own only late in 1945 (memory); before, they counted through the score. */
    @Test
    void in_September_1945_children_counted_only_through_the_score() {
        var soldier = enlisted("1943-02-03", "1945-09-18")
                .without(Entry.DEPENDENTS)
                .born("1922-05-01")
                .reason("AR 615-365 RR 1-1 Conv of Govt")
                .score(48, "1945-09-02");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(DISAGREES);
    }

    @Test
    void in_November_1945_the_entry_on_dependents_is_needed() {
        var soldier = enlisted("1943-02-03", "1945-11-18")
                .without(Entry.DEPENDENTS)
                .born("1922-05-01")
                .reason("AR 615-365 RR 1-1 Conv of Govt")
                .score(38, "1945-09-02");
        assertThat(on(soldier).get(0).outcome()).isEqualTo(CANNOT_TELL);
    }
}
