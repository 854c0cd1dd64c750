package org.honorsdue.service.paper;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One paper as typed.
 *
 * @param form the kind of paper
 * @param formAsNamed the form in the words of the casefile, for {@link Form#OTHER}
 * @param entries what stands in each entry; an absent key is {@link Typed.NotSupplied}. When legs are given, the
 *     entry {@link Entry#SERVICE_OUTSIDE_US} holds the same lines, one to a line
 * @param legs the crossings line by line, when the casefile gives them apart; else empty
 */
public record Paper(Form form, String formAsNamed, Map<Entry, Typed> entries, List<Leg> legs) {
    private static final Typed NOT_SUPPLIED = new Typed.NotSupplied();

    public Paper {
        var ordered = new EnumMap<Entry, Typed>(Entry.class);
        ordered.putAll(entries);
        legs = List.copyOf(legs);
        if (!legs.isEmpty()) {
            ordered.put(
                    Entry.SERVICE_OUTSIDE_US,
                    new Typed.Text(legs.stream().map(Leg::text).collect(Collectors.joining("\n"))));
        }
        entries = Collections.unmodifiableMap(ordered);
    }

    public Typed entry(Entry entry) {
        return entries.getOrDefault(entry, NOT_SUPPLIED);
    }
}
