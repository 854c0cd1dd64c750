package org.honorsdue.workbench;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.honorsdue.determination.line.ServiceLine;
import org.honorsdue.determination.line.ServiceLine.CampaignTime;
import org.honorsdue.determination.line.Stretch;
import org.honorsdue.reference.DateSpan;

/**
 * The service line as rows of bars on one scale of days.
 *
 * @param first left end of the scale
 * @param last right end of the scale
 * @param rows from the top
 */
public record LineDrawing(LocalDate first, LocalDate last, List<Row> rows, ServiceLine line) {
    /** Room left and right of what is known, so that bars do not begin at the frame. */
    private static final int ROOM = 45;

    public LineDrawing {
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param caption the kind of row, written once for neighbours of the same kind
     * @param label what the row is about
     * @param look how its bars look
     */
    public record Row(String caption, String label, String look, List<Bar> bars) {
        public Row {
            bars = List.copyOf(bars);
        }
    }

    /**
     * Some days; both ends belong to it.
     *
     * @param own whether they are his own days, not merely those of the campaign or the law
     * @param sure whether both ends are known to the day
     */
    public record Bar(LocalDate from, LocalDate to, boolean own, boolean sure) {
        static Bar own(DateSpan span) {
            return new Bar(span.first(), span.last(), true, true);
        }
    }

    static LineDrawing of(ServiceLine line) {
        if (line.extent().isEmpty()) {
            return new LineDrawing(LocalDate.of(1941, 12, 7), LocalDate.of(1946, 12, 31), List.of(), line);
        }
        var known = line.extent().get();
        var extent = new DateSpan(known.first().minusDays(ROOM), known.last().plusDays(ROOM));
        var rows = new ArrayList<Row>();
        for (var segment : line.segments()) {
            String which = line.segments().size() > 1 ? "paper " + segment.paper() : "active service";
            row(rows, "In service", which, "service", segment.when(), extent);
        }
        for (var stay : line.stays()) {
            row(rows, "Abroad", stay.destination(), "abroad", stay.passage(), extent);
        }
        for (var unit : line.units()) {
            if (!unit.atSeparation()) {
                row(rows, "With", unit.designation(), "unit", unit.when(), extent);
            }
        }
        for (var held : line.captivity()) {
            row(rows, "Held by the enemy", "", "captivity", held, extent);
        }
        for (var campaign : line.campaigns()) {
            counted(rows, "Campaigns", name(campaign), "campaign", campaign.dates(), campaign.his(), extent);
        }
        for (var window : line.windows()) {
            counted(rows, "The law counts", window.name(), "window", window.dates(), window.his(), extent);
        }
        for (var gap : line.gaps()) {
            rows.add(new Row("Not known", gap.kind().id().replace('-', ' '), "gap", List.of(Bar.own(gap.days()))));
        }
        return new LineDrawing(extent.first(), extent.last(), rows, line);
    }

    /** A campaign, and how it stands to the paper. */
    public static String name(CampaignTime campaign) {
        if (!campaign.named()) {
            return campaign.name() + " (not on the paper)";
        }
        return campaign.his().isEmpty() ? campaign.name() + " (he was not there)" : campaign.name();
    }

    private static void row(List<Row> rows, String caption, String label, String look, Stretch when, DateSpan extent) {
        boolean sure = when.from().filter(day -> day.isDay()).isPresent()
                && when.to().filter(day -> day.isDay()).isPresent();
        when.within(extent)
                .ifPresent(span -> rows.add(
                        new Row(caption, label, look, List.of(new Bar(span.first(), span.last(), true, sure)))));
    }

    private static void counted(
            List<Row> rows,
            String caption,
            String label,
            String look,
            DateSpan dates,
            List<DateSpan> his,
            DateSpan extent) {
        var bars = new ArrayList<Bar>();
        dates.intersection(extent).ifPresent(span -> bars.add(new Bar(span.first(), span.last(), false, true)));
        his.forEach(span -> bars.add(Bar.own(span)));
        if (!bars.isEmpty()) {
            rows.add(new Row(caption, label, look, bars));
        }
    }

    /** Where a day lies, in thousandths of the width. */
    public long x(LocalDate day) {
        long whole = Math.max(1, ChronoUnit.DAYS.between(first, last));
        long at = ChronoUnit.DAYS.between(first, day.isBefore(first) ? first : day.isAfter(last) ? last : day);
        return Math.round(1000.0 * at / whole);
    }

    /** The first days of the years within the line. */
    public List<LocalDate> years() {
        var years = new ArrayList<LocalDate>();
        for (int year = first.getYear() + 1; year <= last.getYear(); year++) {
            years.add(LocalDate.of(year, 1, 1));
        }
        return years;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }
}
