package org.honorsdue.determination.line;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.line.ServiceLine.CampaignTime;
import org.honorsdue.determination.line.ServiceLine.Window;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.service.fact.PartialDate;

/**
 * The service line in plain characters, for a terminal of any width from {@value #NARROWEST} columns.
 *
 * <p>Above, one row a thing on a scale of years and months; below, the events one by one. A run of {@code =} is service or
 * a stay, {@code #} the days of a campaign or a window that are his, {@code .} the rest of it.
 */
public final class ServiceLineText {
    private static final int NARROWEST = 40;
    private static final int WIDEST_LABEL = 26;
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private final ServiceLine line;
    private final DateSpan extent;
    private final int label;
    private final int columns;
    private final StringBuilder page = new StringBuilder();

    private ServiceLineText(ServiceLine line, DateSpan extent, int width) {
        this.line = line;
        this.extent = extent;
        label = Math.min(WIDEST_LABEL, width / 3);
        columns = width - label - 1;
    }

    /** @param width columns of the terminal; less than {@value #NARROWEST} counts as that */
    public static String write(ServiceLine line, int width) {
        int usable = Math.max(NARROWEST, width);
        return line.extent()
                .map(days -> new ServiceLineText(line, wholeYears(days), usable).write())
                .orElse("No date of the service is known.\n");
    }

    /** The scale begins with a January and ends with a December, so that the years are equally wide. */
    private static DateSpan wholeYears(DateSpan days) {
        return new DateSpan(
                LocalDate.of(days.first().getYear(), 1, 1),
                LocalDate.of(days.last().getYear(), 12, 31));
    }

    private String write() {
        scale();
        for (var segment : line.segments()) {
            row(
                    line.segments().size() > 1 ? "service, paper " + segment.paper() : "service",
                    segment.when().within(extent),
                    List.of(),
                    '=');
        }
        for (var stay : line.stays()) {
            row(stay.destination(), stay.passage().within(extent), List.of(), '=');
        }
        for (var unit : line.units()) {
            if (!unit.atSeparation()) {
                row(unit.designation(), unit.when().within(extent), List.of(), '=');
            }
        }
        for (var held : line.captivity()) {
            row("prisoner", held.within(extent), List.of(), '=');
        }
        campaigns();
        windows();
        eventMarks();
        list();
        return page.toString();
    }

    private void scale() {
        var years = blank();
        var ticks = blank();
        for (int year = extent.first().getYear(); year <= extent.last().getYear(); year++) {
            int at = column(LocalDate.of(year, 1, 1));
            put(years, at, Integer.toString(year));
            ticks[at] = '|';
            for (int month = 4; month <= 10; month += 3) {
                int tick = column(LocalDate.of(year, month, 1));
                if (ticks[tick] == ' ') {
                    ticks[tick] = '\'';
                }
            }
        }
        line("", years);
        line("", ticks);
    }

    private void campaigns() {
        for (var campaign : line.campaigns()) {
            row("  " + campaign.name() + mark(campaign), campaign.dates().intersection(extent), campaign.his(), '.');
        }
    }

    /** {@code ?} for one the paper names and he cannot have seen, {@code +} for one it does not name. */
    private static String mark(CampaignTime campaign) {
        if (!campaign.named()) {
            return " +";
        }
        return campaign.his().isEmpty() ? " ?" : "";
    }

    private void windows() {
        for (var window : line.windows()) {
            row("  " + brief(window), window.dates().intersection(extent), window.his(), '.');
        }
    }

    private static String brief(Window window) {
        return window.name()
                .replace("European-African-Middle Eastern", "EAME")
                .replace("World War II ", "")
                .replace("Army of Occupation Medal", "Occupation")
                .replace(" clasp", "");
    }

    private void eventMarks() {
        var marks = blank();
        for (var event : line.events()) {
            int at = column(event.when().earliest());
            marks[at] = marks[at] == ' ' ? event.kind().mark() : '%';
        }
        line("events", marks);
    }

    private void list() {
        page.append('\n');
        for (var event : line.events()) {
            wrapped("%s  %-11s ".formatted(event.kind().mark(), date(event.when())), event.says());
        }
        for (var gap : line.gaps()) {
            wrapped(
                    "?  %s to %s: "
                            .formatted(day(gap.days().first()), day(gap.days().last())),
                    gap.says());
        }
        for (var contradiction : line.contradictions()) {
            wrapped("!  ", contradiction.says());
        }
        legend();
    }

    private void legend() {
        var notes = new ArrayList<String>();
        if (line.campaigns().stream().anyMatch(campaign -> !campaign.named())) {
            notes.add("+ credited to the unit, not on the paper");
        }
        if (line.campaigns().stream()
                .anyMatch(campaign -> campaign.named() && campaign.his().isEmpty())) {
            notes.add("? named, and no day of it is his");
        }
        if (line.campaigns().stream().anyMatch(campaign -> !campaign.his().isEmpty())
                || !line.windows().isEmpty()) {
            notes.add("# his days, . the rest");
        }
        if (!notes.isEmpty()) {
            page.append('\n');
            wrapped("", String.join("; ", notes));
        }
    }

    private void row(String name, Optional<DateSpan> whole, List<DateSpan> his, char fill) {
        var row = blank();
        whole.ifPresent(span -> fill(row, span, fill));
        his.forEach(part -> extent.intersection(part).ifPresent(span -> fill(row, span, '#')));
        line(name, row);
    }

    private void fill(char[] row, DateSpan span, char fill) {
        Arrays.fill(row, column(span.first()), column(span.last()) + 1, fill);
    }

    private char[] blank() {
        var row = new char[columns];
        Arrays.fill(row, ' ');
        return row;
    }

    private int column(LocalDate day) {
        long from = extent.first().toEpochDay();
        long days = extent.last().toEpochDay() - from + 1;
        long at = Math.max(0, Math.min(days - 1, day.toEpochDay() - from));
        return (int) (at * columns / days);
    }

    private static void put(char[] row, int at, String text) {
        for (int i = 0; i < text.length() && at + i < row.length; i++) {
            row[at + i] = text.charAt(i);
        }
    }

    private void line(String name, char[] row) {
        var shown = name.length() > label ? name.substring(0, label - 1) + "~" : name;
        page.append((shown + " ".repeat(label + 1 - shown.length()) + new String(row)).stripTrailing())
                .append('\n');
    }

    private void wrapped(String head, String text) {
        int width = label + 1 + columns;
        var indent = " ".repeat(Math.min(head.length(), width / 2));
        var current = new StringBuilder(head);
        boolean empty = true;
        for (var word : text.split(" ")) {
            if (!empty && current.length() + 1 + word.length() > width) {
                page.append(current.toString().stripTrailing()).append('\n');
                current = new StringBuilder(indent);
                empty = true;
            }
            current.append(empty ? "" : " ").append(word);
            empty = false;
        }
        page.append(current.toString().stripTrailing()).append('\n');
    }

    private static String date(PartialDate date) {
        if (date.isDay()) {
            return day(date.earliest());
        }
        var text = date.toString();
        return text.length() == 7
                ? MONTHS.get(date.earliest().getMonthValue() - 1) + " "
                        + date.earliest().getYear()
                : text.length() == 4 ? text : "about " + date.earliest().getYear();
    }

    private static String day(LocalDate day) {
        return "%2d %s %d".formatted(day.getDayOfMonth(), MONTHS.get(day.getMonthValue() - 1), day.getYear());
    }
}
