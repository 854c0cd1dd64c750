package org.honorsdue.determination.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.reference.Theater.EAME;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("All cross-checks together")
@DisplayNameGeneration(ReplaceUnderscores.class)
class CrosschecksTest {
    private final Reference reference = Reference.published();
    private final Crosschecks checks = Crosschecks.of(reference);

    private static Soldier oneStarTooMany() {
        return Soldier.enlisted("1943-02-03", "1945-11-11")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-09")
                .campaigns("EA-RHI")
                .ribbon("eame-campaign-medal", 2);
    }

    @Test
    void a_disagreement_that_touches_an_award_stands_in_its_grounds() {
        var results = checks.run(oneStarTooMany().facts());
        var ground = Crosschecks.touching(results, "eame-campaign-medal");
        assertThat(ground).singleElement().satisfies(one -> {
            assertThat(one.clause()).isEqualTo("star-count");
            assertThat(one.says()).contains("1 star too many");
            assertThat(one.verdict()).isEqualTo(Verdict.UNKNOWN);
            assertThat(one.evidence()).isNotEmpty();
            assertThat(one.authority().text()).contains("32 CFR 578.48(c)");
        });
        assertThat(Crosschecks.touching(results, "silver-star")).isEmpty();
    }

    @Test
    void the_finding_keeps_everything_else() {
        var finding = new Finding(
                "eame-campaign-medal",
                "EAME",
                Standing.AUTHORIZED,
                OnPaper.YES,
                1,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                "");
        var touched = Crosschecks.touching(checks.run(oneStarTooMany().facts()), finding);
        assertThat(touched.grounds()).hasSize(1);
        assertThat(touched.standing()).isEqualTo(Standing.AUTHORIZED);
    }

    @Test
    void the_examiner_puts_them_into_the_findings() {
        var findings = new LawExaminer(reference).examine(oneStarTooMany().facts(), LocalDate.of(2026, 1, 1), Set.of());
        assertThat(findings.crosschecks()).extracting(Crosscheck::check).contains("star-count", "campaign-dates");
        assertThat(LawExaminer.on(findings, "eame-campaign-medal").orElseThrow().grounds())
                .filteredOn(ground -> ground.clause().equals("star-count"))
                .singleElement()
                .satisfies(ground -> assertThat(ground.says()).contains("1 star too many"));
    }

    /** Facts come in the order in which they were read; nothing may hang on it. */
    @Test
    void the_order_of_facts_does_not_change_any_outcome() {
        for (long seed = 0; seed < 200; seed++) {
            var facts = new InventedSoldier(seed, reference).facts();
            var shuffled = new ArrayList<>(facts.all());
            Collections.shuffle(shuffled, new Random(seed));
            var supplied = new ArrayList<Set<Entry>>();
            for (int paper = 1; paper <= facts.papers(); paper++) {
                supplied.add(facts.suppliedEntries());
            }
            var again = new ServiceFacts(shuffled, facts.unread(), facts.conflicts(), supplied);
            assertThat(outcomes(checks.run(again))).isEqualTo(outcomes(checks.run(facts)));
        }
    }

    private static List<String> outcomes(List<Crosscheck> results) {
        return results.stream()
                .map(result -> result.check() + " " + result.outcome() + " " + result.entries())
                .sorted()
                .toList();
    }

    @Test
    void nobody_at_all_is_no_contradiction() {
        assertThat(checks.run(new ServiceFacts(List.of(), List.of(), List.of(), List.of())))
                .isEmpty();
    }

    @Test
    void each_check_has_an_id_of_its_own() {
        assertThat(checks.ids())
                .doesNotHaveDuplicates()
                .contains(
                        "points-score",
                        "overseas-bars",
                        "service-total",
                        "foreign-plus-continental",
                        "mustering-out-pay",
                        "star-count",
                        "campaign-dates",
                        "campaign-unit",
                        "arrowhead",
                        "order-reference",
                        "badge-specialty",
                        "good-conduct",
                        "age",
                        "wound-dates",
                        "prisoner-dates",
                        "qualifications-against-decorations",
                        "paper-against-paper",
                        "service-stripes",
                        "critical-score");
    }
}
