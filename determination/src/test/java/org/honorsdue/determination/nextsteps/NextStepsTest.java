package org.honorsdue.determination.nextsteps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.reference.Theater.ASIATIC_PACIFIC;
import static org.honorsdue.reference.Theater.EAME;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.determination.crosscheck.Soldier;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reference.Reference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** What a researcher would ask for is common practice; no published source. */
@DisplayName("Next steps")
@DisplayNameGeneration(ReplaceUnderscores.class)
class NextStepsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final Reference reference = Reference.published();
    private final LawExaminer examiner = new LawExaminer(reference);

    private static Soldier rifleman() {
        return Soldier.enlisted("1943-02-03", "1945-11-11")
                .arm("Infantry")
                .specialty("745", "Rifleman")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-09")
                .campaigns("EA-RHI", "EA-ARD", "EA-CEN")
                .ribbon("eame-campaign-medal", 3)
                .organization("Co B 999th Inf", List.of());
    }

    private NextSteps of(Soldier soldier) {
        var facts = soldier.facts();
        return NextSteps.of(examiner.examine(facts, TODAY, Set.of()), facts, reference);
    }

    private NextSteps of(Soldier soldier, Need... needs) {
        var finding = new Finding(
                "purple-heart",
                "Purple Heart",
                Standing.UNSETTLED,
                OnPaper.NO,
                0,
                List.of(),
                List.of(),
                List.of(needs),
                List.of(),
                "");
        return NextSteps.of(
                new Findings(TODAY, List.of(finding), List.of(), List.of(), List.of()), soldier.facts(), reference);
    }

    private static Need need(String kind, String about, List<Set<String>> ways) {
        return new Need("Can it be shown: " + about + "?", Set.of(new FactWanted(kind, about)), ways);
    }

    @Test
    void one_company_and_one_month_answer_the_wound_and_the_combat_badge_together() {
        var steps = of(rifleman().wounded("1944-12-20", "Belgium"));
        assertThat(steps.proven()).isTrue();
        assertThat(steps.beyond()).isEmpty();
        var first = steps.steps().get(0);
        assertThat(first.document().id()).isEqualTo("morning-reports");
        assertThat(first.subject()).isEqualTo("Co B 999th Inf, December 1944");
        assertThat(first.month()).contains(YearMonth.of(1944, 12));
        assertThat(first.settles()).extracting(OpenQuestion::about).contains("purple-heart");
        assertThat(first.bearsOn()).extracting(OpenQuestion::about).contains("combat-infantryman-badge");
        assertThat(first.cautions())
                .anyMatch(caution -> caution.contains("Not touched by the fire"))
                .anyMatch(caution -> caution.contains("Does not prove: awards"))
                .anyMatch(caution -> caution.contains("the one he came home with"));
        assertThat(first.document().keptBy()).contains("National Archives at St. Louis");
    }

    @Test
    void occupation_is_asked_for_in_a_month_after_the_surrender() {
        var steps = of(rifleman());
        assertThat(steps.steps())
                .filteredOn(step -> step.settles().stream()
                        .anyMatch(question -> question.about().equals("army-of-occupation-medal")))
                .singleElement()
                .satisfies(step -> assertThat(step.month().orElseThrow()).isAfter(YearMonth.of(1945, 4)));
        var pacific = of(Soldier.enlisted("1943-02-03", "1946-02-11")
                .abroad("1944-08-22", "1944-09-29", "Pacific Theater", ASIATIC_PACIFIC, "1946-01-01", "1946-01-20")
                .campaigns("AP-LUZ")
                .ribbon("asiatic-pacific-campaign-medal", 1));
        assertThat(pacific.steps())
                .filteredOn(step -> step.settles().stream()
                        .anyMatch(question -> question.about().equals("army-of-occupation-medal")))
                .allSatisfy(step -> assertThat(step.month().orElseThrow()).isAfter(YearMonth.of(1945, 8)));
    }

    @Test
    void the_burned_file_comes_last_and_says_what_no_file_means() {
        var steps = of(rifleman().wounded("1944-12-20", "Belgium")).steps();
        assertThat(steps.get(steps.size() - 1).document().id()).isEqualTo("personnel-file");
        assertThat(steps.get(steps.size() - 1).cautions())
                .anyMatch(caution -> caution.contains("says nothing about the award"));
    }

    @Test
    void two_months_are_asked_for_only_when_no_month_will_do_for_both() {
        List<Set<String>> reports = List.of(Set.of("morning-reports"));
        var apart = of(
                rifleman(),
                need("unit-presence", "with the company on 20 December 1944", reports),
                need("unit-presence", "with the company in April 1945", reports));
        assertThat(apart.steps())
                .extracting(step -> step.month().orElseThrow())
                .containsExactlyInAnyOrder(YearMonth.of(1944, 12), YearMonth.of(1945, 4));
        var together = of(
                rifleman(),
                need("unit-presence", "with the company in the Rhineland campaign", reports),
                need("unit-presence", "with the company in Ardennes-Alsace", reports));
        assertThat(together.steps())
                .singleElement()
                .satisfies(step -> assertThat(step.month().orElseThrow()).isEqualTo(YearMonth.of(1944, 12)));
    }

    @Test
    void the_company_of_that_time_is_named_when_evidence_gives_it() {
        List<Set<String>> reports = List.of(Set.of("morning-reports"));
        var steps = of(
                rifleman().assigned("Co F 998th Inf", List.of(), "1944-09-01", "1945-01-31"),
                need("unit-presence", "with the company on 20 December 1944", reports));
        assertThat(steps.steps().get(0).subject()).isEqualTo("Co F 998th Inf, December 1944");
    }

    @Test
    void without_any_unit_the_step_says_what_is_lacking() {
        var soldier = Soldier.enlisted("1943-02-03", "1945-11-11");
        var steps = of(
                soldier,
                need("unit-presence", "with the company on 20 December 1944", List.of(Set.of("morning-reports"))));
        assertThat(steps.steps().get(0).cautions())
                .anyMatch(caution -> caution.contains("does not search without the company"));
    }

    @Test
    void a_paper_in_hand_and_a_paper_that_never_was_are_not_asked_for() {
        var steps = of(
                rifleman(),
                need(
                        "conduct",
                        "rated excellent",
                        List.of(Set.of("separation-paper"), Set.of("second-paper"), Set.of("personnel-file"))));
        assertThat(steps.steps()).extracting(step -> step.document().id()).containsExactly("personnel-file");
        var officer = of(
                Soldier.officer("1943-02-03", "1945-11-11"),
                need("conduct", "rated excellent", List.of(Set.of("second-paper"), Set.of("personnel-file"))));
        assertThat(officer.steps()).extracting(step -> step.document().id()).containsExactly("second-paper");
    }

    @Test
    void a_question_no_document_settles_is_told_apart() {
        var steps = of(rifleman(), need("unit-credit", "something nobody kept", List.of()));
        assertThat(steps.steps()).isEmpty();
        assertThat(steps.beyond())
                .singleElement()
                .satisfies(question -> assertThat(question.question()).contains("something nobody kept"));
    }

    @Test
    void each_step_says_what_to_turn_to_when_it_is_not_to_be_had() {
        var steps = of(
                rifleman(),
                need("award-order", "the Silver Star", List.of(Set.of("own-orders"), Set.of("unit-general-orders"))));
        var step = steps.steps().get(0);
        assertThat(step.document().id()).isEqualTo("own-orders");
        assertThat(step.otherwise()).singleElement().asString().contains("General orders of the division");
    }

    @Test
    void a_score_five_points_too_high_asks_for_the_order() {
        // 31 + 13 + 15 = 59 with part-months whole; 64 is five too many. Hand arithmetic, see PointsScoreCheckTest.
        var steps = of(rifleman().dependents(0).score(64, "1945-09-02"));
        assertThat(steps.steps())
                .anyMatch(step -> step.settles().stream()
                        .anyMatch(question -> question.question().contains("did the clerk count")));
    }

    @Test
    void the_same_case_gives_the_same_steps() {
        assertThat(of(rifleman().wounded("1944-12-20", "Belgium")))
                .isEqualTo(of(rifleman().wounded("1944-12-20", "Belgium")));
    }
}
