package org.honorsdue.determination.nextsteps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("The cheapest collection that meets every need")
@DisplayNameGeneration(ReplaceUnderscores.class)
class SmallestCoverTest {
    private static final ToIntFunction<String> ONE_EACH = thing -> 1;

    @Test
    void one_thing_that_meets_both_needs_beats_two_that_meet_one_each() {
        var choice = SmallestCover.of(
                List.of(List.of(Set.of("a"), Set.of("c")), List.of(Set.of("b"), Set.of("c"))), ONE_EACH);
        assertThat(choice.things()).containsExactly("c");
        assertThat(choice.cost()).isEqualTo(1);
        assertThat(choice.proven()).isTrue();
    }

    @Test
    void a_dear_thing_for_all_loses_against_cheap_ones() {
        ToIntFunction<String> cost = thing -> thing.equals("c") ? 5 : 2;
        var choice =
                SmallestCover.of(List.of(List.of(Set.of("a"), Set.of("c")), List.of(Set.of("b"), Set.of("c"))), cost);
        assertThat(choice.things()).containsExactly("a", "b");
        assertThat(choice.cost()).isEqualTo(4);
    }

    @Test
    void all_of_an_alternative_is_needed() {
        var choice = SmallestCover.of(List.of(List.of(Set.of("a", "b"))), ONE_EACH);
        assertThat(choice.things()).containsExactly("a", "b");
    }

    @Test
    void a_need_without_any_way_is_left_unmet() {
        var choice = SmallestCover.of(List.of(List.of(), List.of(Set.of("a"))), ONE_EACH);
        assertThat(choice.things()).containsExactly("a");
    }

    @Test
    void no_need_costs_nothing() {
        assertThat(SmallestCover.of(List.<List<Set<String>>>of(), ONE_EACH).things())
                .isEmpty();
    }

    /**
     * The case where greed is dear: the thing that meets most needs at once (e, four of six) leaves two needs for two more
     * things, while two things meet all. Hand arithmetic: greedy 3, best 2.
     */
    @Test
    void the_search_beats_the_greedy_choice() {
        var needs = List.<List<Set<String>>>of(
                List.of(Set.of("x"), Set.of("e")),
                List.of(Set.of("x"), Set.of("e")),
                List.of(Set.of("f"), Set.of("x")),
                List.of(Set.of("y"), Set.of("e")),
                List.of(Set.of("y"), Set.of("e")),
                List.of(Set.of("g"), Set.of("y")));
        var choice = SmallestCover.of(needs, ONE_EACH);
        assertThat(choice.things()).containsExactly("x", "y");
        assertThat(choice.proven()).isTrue();
        var cut = SmallestCover.of(needs, ONE_EACH, 0);
        assertThat(cut.proven()).isFalse();
        assertThat(cut.cost()).isEqualTo(3);
    }

    /** Against every subset, one by one. */
    @Test
    void no_subset_of_all_things_is_cheaper() {
        var random = new Random(1945);
        for (int round = 0; round < 300; round++) {
            var needs = needs(random, 1 + random.nextInt(6), 9);
            ToIntFunction<Integer> cost = thing -> 1 + thing % 4;
            var choice = SmallestCover.of(needs, cost);
            assertThat(choice.proven()).isTrue();
            assertThat(choice.cost()).isEqualTo(cheapest(needs, cost, 9));
            assertThat(needs).allMatch(need -> need.stream().anyMatch(choice.things()::containsAll));
        }
    }

    @Test
    void beyond_what_the_search_can_hold_every_need_is_still_met() {
        var random = new Random(1945);
        var needs = needs(random, 60, 100);
        var choice = SmallestCover.of(needs, (Integer thing) -> 1);
        assertThat(choice.proven()).isFalse();
        assertThat(needs).allMatch(need -> need.stream().anyMatch(choice.things()::containsAll));
        assertThat(SmallestCover.of(needs, (Integer thing) -> 1)).isEqualTo(choice);
    }

    private static List<List<Set<Integer>>> needs(Random random, int count, int things) {
        var needs = new ArrayList<List<Set<Integer>>>();
        for (int i = 0; i < count; i++) {
            var ways = new ArrayList<Set<Integer>>();
            for (int way = 0; way <= random.nextInt(4); way++) {
                var all = new TreeSet<Integer>();
                for (int thing = 0; thing <= random.nextInt(3); thing++) {
                    all.add(random.nextInt(things));
                }
                ways.add(all);
            }
            needs.add(ways);
        }
        return needs;
    }

    private static int cheapest(List<List<Set<Integer>>> needs, ToIntFunction<Integer> cost, int things) {
        int best = Integer.MAX_VALUE;
        for (int mask = 0; mask < 1 << things; mask++) {
            var chosen = new TreeSet<Integer>();
            for (int thing = 0; thing < things; thing++) {
                if ((mask >> thing & 1) == 1) {
                    chosen.add(thing);
                }
            }
            if (needs.stream().allMatch(need -> need.stream().anyMatch(chosen::containsAll))) {
                best = Math.min(best, chosen.stream().mapToInt(cost::applyAsInt).sum());
            }
        }
        return best;
    }
}
