package org.honorsdue.scanning;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.honorsdue.scanning.form.FormPage;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Leg;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/**
 * One paper as read from a picture, for review.
 *
 * @param picture number of the page in the file, from 1
 * @param entries in the order of the form; an absent entry was not read (ink, thumb print, what lies outside)
 * @param legs the crossings line by line, as the columns of the form give them
 * @param page the page drawn upright, which the crops of the entries point into
 */
public record ScannedPaper(Form form, int picture, Map<Entry, ScannedEntry> entries, List<Leg> legs, FormPage page) {
    public ScannedPaper {
        var ordered = new EnumMap<Entry, ScannedEntry>(Entry.class);
        ordered.putAll(entries);
        entries = Collections.unmodifiableMap(ordered);
        legs = List.copyOf(legs);
    }

    /** As the casefile has it, if every reading offered were taken. */
    public Paper paper() {
        Map<Entry, Typed> typed = entries.values().stream()
                .collect(Collectors.toMap(
                        ScannedEntry::entry, ScannedEntry::typed, (a, b) -> a, () -> new EnumMap<>(Entry.class)));
        return new Paper(form, form.title(), typed, legs);
    }
}
