package org.honorsdue.reading.token;

import java.util.Arrays;

/** Which kinds of meaning an entry is for, the likeliest first: {@code SS} is one thing among decorations, another among weapons. */
public final class Preference {
    private static final int UNLIKELY = 100;

    private final int[] rank = new int[SenseKind.values().length];
    private boolean dates = true;
    private boolean onlyDates;

    private Preference(SenseKind[]... ranks) {
        Arrays.fill(rank, UNLIKELY);
        for (int i = 0; i < ranks.length; i++) {
            for (SenseKind kind : ranks[i]) {
                rank[kind.ordinal()] = i;
            }
        }
    }

    /** The groups from the likeliest to the least likely; kinds in one group are equally likely. */
    public static Preference of(SenseKind[]... groups) {
        return new Preference(groups);
    }

    /** Kinds in one group. */
    public static SenseKind[] group(SenseKind... kinds) {
        return kinds;
    }

    /** The same, for entries of figures that only look like dates: {@code 1-6-17} is a length of time there. */
    public Preference withoutDates() {
        var same = new Preference();
        System.arraycopy(rank, 0, same.rank, 0, rank.length);
        same.dates = false;
        return same;
    }

    /** The same, for entries that hold a date and nothing else: whatever stands between day and year is a month. */
    public Preference datesOnly() {
        var same = new Preference();
        System.arraycopy(rank, 0, same.rank, 0, rank.length);
        same.onlyDates = true;
        return same;
    }

    boolean onlyDates() {
        return onlyDates;
    }

    boolean dates() {
        return dates;
    }

    int rank(SenseKind kind) {
        return rank[kind.ordinal()];
    }

    /** Whether the entry is for that kind of meaning at all. */
    public boolean expects(SenseKind kind) {
        return rank[kind.ordinal()] < UNLIKELY;
    }
}
