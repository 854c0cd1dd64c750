package org.honorsdue.reading.token;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** All phrases as one tree of ideas. Immutable; one step down the tree is one look into a table of numbers. */
final class PhraseTable {
    static final int ROOT = 0;

    private final long[] keys;
    private final int[] next;
    private final int mask;
    private final @Nullable Sense[][] senses;
    private final int[][] children;

    private PhraseTable(Map<Long, Integer> steps, List<Set<Sense>> terminals) {
        int size = Integer.highestOneBit(Math.max(16, steps.size() * 2)) * 2;
        keys = new long[size];
        next = new int[size];
        mask = size - 1;
        Arrays.fill(keys, -1);
        var below = new HashMap<Integer, List<Integer>>();
        for (var step : steps.entrySet()) {
            int slot = slot(step.getKey());
            while (keys[slot] >= 0) {
                slot = slot + 1 & mask;
            }
            keys[slot] = step.getKey();
            next[slot] = step.getValue();
            below.computeIfAbsent((int) (step.getKey() >>> 20), node -> new ArrayList<>())
                    .add((int) (step.getKey() & 0xFFFFF));
        }
        senses = new Sense[terminals.size()][];
        children = new int[terminals.size()][];
        for (int node = 0; node < senses.length; node++) {
            var here = terminals.get(node);
            senses[node] = here.isEmpty() ? null : here.toArray(Sense[]::new);
            children[node] = below.getOrDefault(node, List.of()).stream()
                    .mapToInt(Integer::intValue)
                    .sorted()
                    .toArray();
        }
    }

    private int slot(long key) {
        long mixed = key * 0x9E3779B97F4A7C15L;
        return (int) (mixed >>> 40) & mask;
    }

    /** The node under a node for an idea; -1 when no phrase goes on so. */
    int step(int node, int idea) {
        long key = key(node, idea);
        int slot = slot(key);
        while (keys[slot] != key) {
            if (keys[slot] < 0) {
                return -1;
            }
            slot = slot + 1 & mask;
        }
        return next[slot];
    }

    private static long key(int node, int idea) {
        return (long) node << 20 | idea;
    }

    /** What a phrase ending at the node means; null when none ends there. */
    Sense @Nullable [] senses(int node) {
        return senses[node];
    }

    /** The ideas that go on from a node, in order. */
    int[] children(int node) {
        return children[node];
    }

    /** Collects phrases. */
    static final class Builder {
        private final Map<Long, Integer> steps = new HashMap<>();
        private final List<Set<Sense>> terminals = new ArrayList<>(List.of(new LinkedHashSet<>()));

        void add(List<Integer> ideas, Sense sense) {
            int node = ROOT;
            for (int idea : ideas) {
                node = steps.computeIfAbsent(key(node, idea), key -> {
                    terminals.add(new LinkedHashSet<>());
                    return terminals.size() - 1;
                });
            }
            var here = terminals.get(node);
            if (here.stream().noneMatch(known -> sameThing(known, sense))) {
                here.add(sense);
            }
        }

        private static boolean sameThing(Sense a, Sense b) {
            return a.kind() == b.kind()
                    && a.id().equals(b.id())
                    && (!a.id().isEmpty() || a.words().equals(b.words()));
        }

        PhraseTable build() {
            return new PhraseTable(steps, terminals);
        }
    }
}
