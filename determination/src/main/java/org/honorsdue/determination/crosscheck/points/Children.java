package org.honorsdue.determination.crosscheck.points;

import java.util.OptionalInt;

/**
 * How many children the entry on dependents leaves room for. Dependents are not only children, so it is a ceiling.
 *
 * @param dependents as typed; empty when the entry is blank or was not supplied
 */
public record Children(OptionalInt dependents) {
    /** Twelve points for a child, three children at most. */
    public static final int MOST_COUNTED = 3;

    public boolean allow(int children) {
        return dependents.isEmpty() || children <= dependents.getAsInt();
    }

    /** How far from the likeliest family: all dependents children, or all but a wife. */
    int distance(int children) {
        if (dependents.isEmpty()) {
            return children;
        }
        int most = Math.min(MOST_COUNTED, dependents.getAsInt());
        int least = Math.min(MOST_COUNTED, Math.max(0, dependents.getAsInt() - 1));
        if (children > most) {
            return 10 + children - most;
        }
        return children < least ? least - children : 0;
    }
}
