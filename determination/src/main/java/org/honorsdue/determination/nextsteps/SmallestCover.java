package org.honorsdue.determination.nextsteps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToIntFunction;

/**
 * The cheapest collection of things with which every need is met, where a need is met by having all of any one of its
 * alternatives.
 *
 * <p>Branch and bound finds the cheapest for certain while the search stays within its limit; beyond it the best found so
 * far stands, with more than {@value #MOST_EXACT} things a greedy choice, and either says so. The same input gives the same
 * choice.
 */
public final class SmallestCover<T extends Comparable<T>> {
    /** Sets of things are kept as the bits of a long. */
    static final int MOST_EXACT = 63;

    private static final int DEFAULT_LIMIT = 200_000;

    private final List<T> things;
    private final int[] costs;
    private final List<long[]> needs;
    private final int limit;
    private int steps;
    private long best;
    private int bestCost;

    /**
     * The choice.
     *
     * @param cost of all things chosen together
     * @param proven whether it is certain that no cheaper choice exists
     */
    public record Choice<T>(SortedSet<T> things, int cost, boolean proven) {}

    private SmallestCover(List<T> things, int[] costs, List<long[]> needs, int limit) {
        this.things = things;
        this.costs = costs;
        this.needs = needs;
        this.limit = limit;
    }

    /** @param needs for each need its alternatives; a need without any is left unmet */
    public static <T extends Comparable<T>> Choice<T> of(List<List<Set<T>>> needs, ToIntFunction<T> cost) {
        return of(needs, cost, DEFAULT_LIMIT);
    }

    /** @param limit the most steps of search; with none the greedy choice stands */
    public static <T extends Comparable<T>> Choice<T> of(List<List<Set<T>>> needs, ToIntFunction<T> cost, int limit) {
        var meetable = needs.stream().filter(need -> !need.isEmpty()).toList();
        var all = new TreeSet<T>();
        meetable.forEach(need -> need.forEach(all::addAll));
        var greedy = greedy(meetable, cost);
        if (all.size() > MOST_EXACT) {
            return new Choice<>(greedy, total(greedy, cost), false);
        }
        return exact(new ArrayList<>(all), meetable, cost, limit, greedy);
    }

    private static <T extends Comparable<T>> Choice<T> exact(
            List<T> things, List<List<Set<T>>> needs, ToIntFunction<T> cost, int limit, SortedSet<T> greedy) {
        var places = new TreeMap<T, Integer>();
        var costs = new int[things.size()];
        for (int i = 0; i < things.size(); i++) {
            places.put(things.get(i), i);
            costs[i] = cost.applyAsInt(things.get(i));
        }
        var masks = new ArrayList<long[]>();
        for (var need : needs) {
            masks.add(need.stream()
                    .mapToLong(alternative -> alternative.stream()
                            .mapToLong(thing -> 1L << places.getOrDefault(thing, 0))
                            .reduce(0, (one, other) -> one | other))
                    .sorted()
                    .distinct()
                    .toArray());
        }
        // The need with the fewest ways out goes first: it prunes most.
        masks.sort(Comparator.comparingInt(alternatives -> alternatives.length));
        var cover = new SmallestCover<>(things, costs, masks, limit);
        cover.best = greedy.stream()
                .mapToLong(thing -> 1L << places.getOrDefault(thing, 0))
                .reduce(0, (one, other) -> one | other);
        cover.bestCost = total(greedy, cost);
        cover.search(0L, 0);
        return new Choice<>(cover.chosen(), cover.bestCost, cover.steps <= limit);
    }

    private void search(long chosen, int cost) {
        if (++steps > limit || cost >= bestCost) {
            return;
        }
        long[] open = new long[0];
        int bound = 0;
        long spoken = 0;
        for (var need : needs) {
            int missing = cheapest(need, chosen);
            if (missing == 0) {
                continue;
            }
            if (open.length == 0) {
                open = need;
            }
            // Needs that share nothing each cost their own cheapest way.
            long things = all(need) & ~chosen;
            if ((things & spoken) == 0) {
                spoken |= things;
                bound += missing;
            }
        }
        if (open.length == 0) {
            best = chosen;
            bestCost = cost;
            return;
        }
        if (cost + bound >= bestCost) {
            return;
        }
        for (long alternative : open) {
            search(chosen | alternative, cost + costOf(alternative & ~chosen));
        }
    }

    private static long all(long[] alternatives) {
        long all = 0;
        for (long alternative : alternatives) {
            all |= alternative;
        }
        return all;
    }

    private int cheapest(long[] alternatives, long chosen) {
        int least = Integer.MAX_VALUE;
        for (long alternative : alternatives) {
            long missing = alternative & ~chosen;
            if (missing == 0) {
                return 0;
            }
            least = Math.min(least, costOf(missing));
        }
        return least;
    }

    private int costOf(long mask) {
        int cost = 0;
        for (long rest = mask; rest != 0; rest &= rest - 1) {
            cost += costs[Long.numberOfTrailingZeros(rest)];
        }
        return cost;
    }

    private SortedSet<T> chosen() {
        var chosen = new TreeSet<T>();
        for (long rest = best; rest != 0; rest &= rest - 1) {
            chosen.add(things.get(Long.numberOfTrailingZeros(rest)));
        }
        return chosen;
    }

    /** Takes, again and again, the alternative that meets most needs for its cost; then drops what is not needed. */
    private static <T extends Comparable<T>> SortedSet<T> greedy(List<List<Set<T>>> needs, ToIntFunction<T> cost) {
        var chosen = new TreeSet<T>();
        var open = new ArrayList<>(needs);
        open.removeIf(need -> met(need, chosen));
        while (!open.isEmpty()) {
            SortedSet<T> take = new TreeSet<>();
            double worth = -1;
            for (var need : open) {
                for (var alternative : need) {
                    var with = new TreeSet<>(chosen);
                    with.addAll(alternative);
                    long gained = open.stream().filter(one -> met(one, with)).count();
                    double value = (double) gained / Math.max(1, total(with, cost) - total(chosen, cost));
                    if (value > worth) {
                        worth = value;
                        take = with;
                    }
                }
            }
            chosen.addAll(take);
            open.removeIf(need -> met(need, chosen));
        }
        for (var thing : List.copyOf(chosen)) {
            chosen.remove(thing);
            if (!needs.stream().allMatch(need -> met(need, chosen))) {
                chosen.add(thing);
            }
        }
        return chosen;
    }

    private static <T> boolean met(List<Set<T>> need, Set<T> chosen) {
        return need.stream().anyMatch(chosen::containsAll);
    }

    private static <T> int total(Set<T> things, ToIntFunction<T> cost) {
        return things.stream().mapToInt(cost).sum();
    }
}
