package org.honorsdue.scanning;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Typed;

/**
 * What was read in one entry, offered to a person.
 *
 * @param text the reading offered; empty when the box holds no typing
 * @param raw what the engine made of it at first, before anything was weighed
 * @param alternatives other readings of the whole entry, the likeliest first, without {@code text}
 * @param confidence 0 to 1, as measured on generated pages: of entries with 0.9, about nine in ten were right
 * @param crop where the box stands on the upright page, in its pixels
 */
public record ScannedEntry(
        Entry entry,
        String text,
        String raw,
        List<String> alternatives,
        double confidence,
        Set<Flag> flags,
        Area crop) {
    public ScannedEntry {
        if (!(confidence >= 0 && confidence <= 1)) {
            throw new IllegalArgumentException("A confidence of " + confidence + "; it runs from 0 to 1.");
        }
        alternatives = List.copyOf(alternatives);
        var ordered = EnumSet.noneOf(Flag.class);
        ordered.addAll(flags);
        flags = java.util.Collections.unmodifiableSet(ordered);
    }

    /** As the casefile takes it. */
    public Typed typed() {
        if (!text.isBlank()) {
            return new Typed.Text(text);
        }
        return flags.contains(Flag.DAMAGED) ? new Typed.Illegible() : new Typed.Blank();
    }

    /** Whether more is to be said of it than that figures want comparing. */
    public boolean inDoubt() {
        return flags.stream().anyMatch(flag -> flag != Flag.FIGURES);
    }

    /** Whether a person must look before it is used: anything but a plain, certain word. */
    public boolean mustBeSeen() {
        return !flags.isEmpty();
    }
}
