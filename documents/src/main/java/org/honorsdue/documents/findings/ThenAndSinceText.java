package org.honorsdue.documents.findings;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;
import org.honorsdue.determination.since.Change;
import org.honorsdue.determination.since.Clock;
import org.honorsdue.determination.since.ThenAndSince;
import org.honorsdue.reference.Citation;

/** The three clocks, for the reader at a terminal: the day he left, what later law changed, today. */
public final class ThenAndSinceText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private final Ink ink;
    private final int width;

    public ThenAndSinceText(Ink ink, int width) {
        this.ink = ink;
        this.width = width;
    }

    public String write(ThenAndSince clocks) {
        var page = new Column(width);
        page.line(ink.heading("THEN AND SINCE"));
        page.paragraph("  ", clocks.headline(), ink::bold);
        for (var clock : clocks.clocks()) {
            clock(page, clock);
        }
        return page.toString();
    }

    private void clock(Column page, Clock clock) {
        page.line("  " + ink.bold(DAY.format(clock.day())) + "  " + clock.kind().words());
        if (clock.changes().isEmpty()) {
            page.paragraph("      ", "nothing changed");
        }
        for (var change : clock.changes()) {
            change(page, change);
        }
    }

    private void change(Column page, Change change) {
        String standing = change.after().map(now -> now.id().replace('-', ' ')).orElse("no longer listed");
        String count = change.countAfter() > 1 ? ", " + change.countAfter() + " awards" : "";
        page.paragraph(change.added() ? "      + " : "      ~ ", change.name() + ": " + standing + count);
        page.paragraph("        ", change.why(), ink::dim);
        if (!change.authorities().isEmpty()) {
            page.paragraph(
                    "        ",
                    change.authorities().stream().map(Citation::text).distinct().collect(Collectors.joining("; ")),
                    ink::dim);
        }
    }
}
