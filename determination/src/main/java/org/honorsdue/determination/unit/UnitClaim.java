package org.honorsdue.determination.unit;

import org.honorsdue.determination.law.Answer;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.unit.Held;

/**
 * Something a unit of his holds, with how far he shares in it.
 *
 * @param present whether he was there: met, usually so, open, or not met
 */
public record UnitClaim<T>(Stint stint, Held<T> held, Answer present) {
    /** Whether the tables only remember it: then it suggests and never decides. */
    public boolean fromMemory() {
        return held.grade() == Grade.MEMORY;
    }

    /** Whether it can count: read somewhere, and his presence shown or usual. */
    public boolean counts() {
        return !fromMemory() && (present.isMet() || present.usual());
    }

    /** Where the tables have it from, in words. */
    public String source() {
        var first = held.restsOn().get(held.restsOn().size() - 1);
        return fromMemory() ? "our tables have it from memory only" : first.source();
    }
}
