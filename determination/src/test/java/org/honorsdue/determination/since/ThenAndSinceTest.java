package org.honorsdue.determination.since;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.reference.Theater.EAME;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.determination.crosscheck.Soldier;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Then and since")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ThenAndSinceTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final Reference reference = Reference.published();
    private final LawExaminer examiner = new LawExaminer(reference);

    private static Soldier rifleman() {
        return Soldier.enlisted("1943-02-03", "1945-11-11")
                .arm("Infantry")
                .specialty("745", "Rifleman")
                .abroad("1944-08-22", "1944-08-29", "ETO", EAME, "1945-11-01", "1945-11-09")
                .continental(1, 6, 17)
                .foreign(1, 2, 18)
                .campaigns("EA-RHI", "EA-ARD", "EA-CEN")
                .ribbon("eame-campaign-medal", 3)
                .ordered("combat-infantryman-badge", Entry.QUALIFICATIONS, 7, "Hq 999th Inf", 1944);
    }

    private ThenAndSince of(Soldier soldier) {
        return ThenAndSince.of(examiner, soldier.facts(), reference, TODAY);
    }

    @Test
    void the_first_clock_is_the_day_of_separation_and_the_last_is_today() {
        var then = of(rifleman());
        assertThat(then.clocks().get(0).day()).isEqualTo(LocalDate.of(1945, 11, 11));
        assertThat(then.clocks().get(0).kind()).isEqualTo(Clock.Kind.SEPARATION);
        assertThat(then.today().day()).isEqualTo(TODAY);
        assertThat(then.today().kind()).isEqualTo(Clock.Kind.TODAY);
        assertThat(then.clocks()).extracting(Clock::day).isSorted();
    }

    /**
     * Executive Order 9706 of 15 March 1946 opened the American Campaign Medal to a year at home; he had 565 days there
     * (3 Feb 1943 to 21 Aug 1944). Hand count.
     */
    @Test
    void the_year_at_home_counts_since_March_1946() {
        var then = of(rifleman());
        assertThat(then.milestones())
                .filteredOn(clock -> clock.day().equals(LocalDate.of(1946, 3, 15)))
                .singleElement()
                .satisfies(clock -> assertThat(clock.changes())
                        .filteredOn(change -> change.award().equals("american-campaign-medal"))
                        .singleElement()
                        .satisfies(change -> {
                            assertThat(change.added()).isTrue();
                            assertThat(change.after()).contains(Standing.AUTHORIZED);
                            assertThat(change.why()).contains("Law since that day");
                            assertThat(change.authorities()).isNotEmpty();
                        }));
    }

    /** The Army of Occupation Medal: War Department General Orders 32, 5 April 1946. */
    @Test
    void the_Occupation_Medal_begins_in_April_1946() {
        assertThat(of(rifleman()).milestones())
                .filteredOn(clock -> clock.day().equals(LocalDate.of(1946, 4, 5)))
                .singleElement()
                .satisfies(clock ->
                        assertThat(clock.changes()).extracting(Change::award).contains("army-of-occupation-medal"));
    }

    /** Badge holders have the Bronze Star Medal by the policy of September 1947. */
    @Test
    void the_badge_brings_the_Bronze_Star_Medal_in_1947() {
        assertThat(of(rifleman()).milestones())
                .filteredOn(clock -> clock.day().getYear() == 1947)
                .anySatisfy(clock -> assertThat(clock.changes())
                        .filteredOn(Change::added)
                        .extracting(Change::award)
                        .contains("bronze-star-medal"));
    }

    /** Public Law 99-145 of 8 November 1985. */
    @Test
    void a_prisoner_gains_his_medal_in_1985_and_nobody_else_does() {
        var held = of(rifleman().captive("1944-12-19", "1945-04-29"));
        assertThat(held.milestones())
                .filteredOn(clock -> clock.day().equals(LocalDate.of(1985, 11, 8)))
                .singleElement()
                .satisfies(clock ->
                        assertThat(clock.changes()).extracting(Change::award).contains("prisoner-of-war-medal"));
        assertThat(of(rifleman()).milestones()).noneMatch(clock -> clock.day().getYear() == 1985);
    }

    @Test
    void nothing_is_a_milestone_that_changes_nothing_for_him() {
        assertThat(of(rifleman()).milestones())
                .allSatisfy(clock -> assertThat(clock.changes()).isNotEmpty());
    }

    /** Between two clocks no day can be found on which the findings differ from the earlier one. */
    @Test
    void between_the_clocks_nothing_changes() {
        var facts = rifleman().facts();
        var then = ThenAndSince.of(examiner, facts, reference, TODAY);
        var clocks = then.clocks();
        for (int i = 0; i + 1 < clocks.size(); i++) {
            var dayBefore = clocks.get(i + 1).day().minusDays(1);
            if (!dayBefore.isBefore(clocks.get(i).day())) {
                assertThat(due(examiner.examine(facts, dayBefore, Set.of())))
                        .as("the day before %s", clocks.get(i + 1).day())
                        .isEqualTo(due(clocks.get(i).findings()));
            }
        }
    }

    private static List<String> due(Findings findings) {
        return findings.findings().stream()
                .filter(finding -> finding.standing() != Standing.NOT_AUTHORIZED)
                .map(finding -> finding.award() + finding.standing() + finding.count())
                .sorted()
                .toList();
    }

    @Test
    void the_headline_counts_paper_then_and_now() {
        var then = of(rifleman());
        assertThat(then.headline())
                .startsWith("He came home with 2 on his paper; ")
                .contains("due that day")
                .contains("due today");
        assertThat(then.today().authorized())
                .isGreaterThan(then.separation().orElseThrow().authorized());
    }

    @Test
    void without_a_day_of_separation_only_today_is_answered() {
        var then = of(Soldier.undated().ribbon("eame-campaign-medal", 0));
        assertThat(then.clocks())
                .singleElement()
                .satisfies(clock -> assertThat(clock.kind()).isEqualTo(Clock.Kind.TODAY));
        assertThat(then.headline()).contains("is not shown");
    }
}
