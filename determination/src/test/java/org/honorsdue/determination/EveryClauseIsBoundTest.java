package org.honorsdue.determination;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Settlement;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.law.LawClause;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("The law table and the rules, walked both ways")
@DisplayNameGeneration(ReplaceUnderscores.class)
class EveryClauseIsBoundTest {
    private final Reference reference = Reference.published();
    private final LawBook book = new LawBook(reference);

    @Test
    void every_award_has_one_rule_and_every_rule_an_award() {
        assertThat(book.rules())
                .extracting(rule -> rule.award().id())
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(
                        reference.awards().stream().map(award -> award.id()).toList());
    }

    @Test
    void every_condition_bar_and_device_of_the_table_is_held_by_its_rule_or_told_with_a_reason() {
        for (var rule : book.rules()) {
            var held = new TreeSet<String>();
            laws(rule).forEach(law -> held.add(law.id()));
            var decisive = reference.clausesOf(rule.award().id()).stream()
                    .filter(law -> law.role() != LawClause.Role.NOTE && law.role() != LawClause.Role.LATER_LAW)
                    .map(LawClause::id)
                    .toList();
            assertThat(held).as(rule.award().id()).containsAll(decisive);
        }
    }

    @Test
    void every_clause_that_a_rule_holds_is_the_tables_own_and_of_that_award() {
        for (var rule : book.rules()) {
            assertThat(laws(rule)).as(rule.award().id()).isNotEmpty().allSatisfy(law -> {
                assertThat(reference.clause(law.id())).contains(law);
                assertThat(law.award()).isEqualTo(rule.award().id());
            });
        }
    }

    @Test
    void what_is_told_without_a_test_says_why_and_is_tested_nowhere_else() {
        for (var rule : book.rules()) {
            var tested = new ArrayList<LawClause>();
            rule.routes().forEach(route -> route.clauses().forEach(clause -> tested.add(clause.law())));
            rule.bars().forEach(bar -> tested.add(bar.law()));
            for (var told : rule.told()) {
                assertThat(told.why()).as(told.law().id()).isNotBlank();
                assertThat(tested).as(told.law().id()).doesNotContain(told.law());
            }
        }
    }

    @Test
    void bars_are_exclusions_and_devices_are_devices() {
        for (var rule : book.rules()) {
            assertThat(rule.bars())
                    .as(rule.award().id())
                    .allSatisfy(bar -> assertThat(bar.law().role()).isEqualTo(LawClause.Role.EXCLUSION));
            assertThat(rule.routes().stream().flatMap(route -> route.clauses().stream()))
                    .as(rule.award().id())
                    .allSatisfy(clause -> assertThat(clause.law().role()).isNotEqualTo(LawClause.Role.EXCLUSION));
        }
    }

    @Test
    void every_award_that_can_be_due_has_a_route_and_every_other_a_bar_or_a_word() {
        for (var rule : book.rules()) {
            assertThat(rule.routes().size() + rule.bars().size() + rule.told().size())
                    .as(rule.award().id())
                    .isPositive();
        }
    }

    @Test
    void every_kind_of_missing_fact_can_be_proved_by_some_document_and_every_proof_is_of_a_known_kind() {
        var settlement = new Settlement(reference);
        for (var kind : FactKind.values()) {
            assertThat(settlement.proving(kind)).as(kind.id()).isNotEmpty();
        }
        Map<String, String> unknown = new HashMap<>();
        reference
                .documents()
                .forEach(document -> document.proves().stream()
                        .filter(kind -> FactKind.ofId(kind).isEmpty())
                        .forEach(kind -> unknown.put(kind, document.id())));
        assertThat(unknown).isEmpty();
    }

    private static List<LawClause> laws(Rule rule) {
        var laws = new ArrayList<LawClause>();
        rule.routes().forEach(route -> route.clauses().forEach(clause -> laws.add(clause.law())));
        rule.bars().forEach(bar -> laws.add(bar.law()));
        laws.addAll(rule.devices());
        rule.told().forEach(told -> laws.add(told.law()));
        return laws;
    }
}
