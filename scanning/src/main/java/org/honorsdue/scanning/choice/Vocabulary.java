package org.honorsdue.scanning.choice;

import java.util.ArrayList;
import java.util.Comparator;
import org.honorsdue.reading.EntryReader;
import org.honorsdue.service.paper.Entry;

/**
 * Lets the reader of entries weigh the readings of a whole entry: one in which fewer words stay unread is taken where
 * the picture speaks nearly as well for it.
 */
public final class Vocabulary {
    /** What the picture may lose for every letter that becomes understood, and at most. */
    private static final double PER_LETTER = 1.6;

    private static final double AT_MOST = 7;

    private final EntryReader reader;

    public Vocabulary(EntryReader reader) {
        this.reader = reader;
    }

    /** The choice, or another reading of it with the first one kept among the alternatives. */
    public LineChoice weigh(Entry entry, LineChoice choice) {
        // The crossings are kept column by column, so their letters are not exchanged here.
        boolean words = EntryKind.of(entry) == EntryKind.WORDS && entry != Entry.SERVICE_OUTSIDE_US;
        if (!words || choice.text().isBlank()) {
            return choice;
        }
        int unread = unread(entry, choice.text());
        if (unread == 0) {
            return choice;
        }
        LineChoice.Alternative best = null;
        double most = 0;
        for (var other : choice.alternatives()) {
            if (other.behind() < AT_MOST && !other.text().isBlank()) {
                double gain = PER_LETTER * (unread - unread(entry, other.text())) - Math.max(0, other.behind());
                if (gain > most) {
                    most = gain;
                    best = other;
                }
            }
        }
        if (best == null) {
            return choice;
        }
        var chosen = best;
        var others = new ArrayList<>(choice.alternatives());
        others.remove(chosen);
        others.add(new LineChoice.Alternative(choice.text(), -chosen.behind()));
        others.sort(Comparator.comparingDouble(LineChoice.Alternative::behind));
        return new LineChoice(
                chosen.text(), choice.raw(), others, Math.min(choice.confidence(), 0.75), choice.clearness());
    }

    /** How many letters of a text the reader of entries makes nothing of. */
    public int unread(Entry entry, String text) {
        return reader.read(entry, text).unread().stream()
                .mapToInt(each -> each.text().length())
                .sum();
    }

    /** Whether a day can be made of what stands in an entry for days. */
    public boolean isDay(Entry entry, String text) {
        return !reader.read(entry, text).dates().isEmpty() || unread(entry, text) == 0;
    }
}
