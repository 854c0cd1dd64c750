package org.honorsdue.reference.table;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.honorsdue.reference.Citation;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;

/**
 * One row of a table, cell by cell. A cell that does not hold what is asked for is noted as a fault and stands in for
 * itself with a harmless value, so that the other cells of the row are still looked at; {@link Table} then leaves the
 * row out.
 */
public final class Row {
    private static final String STAND_IN = "?";

    private final String table;
    private final List<String> columns;
    private final CsvRecord stored;
    private final FaultList faults;
    private final Map<String, Provenance> sources;
    private boolean sound = true;

    /**
     * @param sources what the rows before this one gave as their source, by the words of it: most rows of a table share
     *     a few, which are then checked and kept once
     */
    Row(String table, List<String> columns, CsvRecord stored, FaultList faults, Map<String, Provenance> sources) {
        this.table = table;
        this.columns = columns;
        this.stored = stored;
        this.faults = faults;
        this.sources = sources;
    }

    /** Line of the table, counted from 1. */
    public long line() {
        return stored.getStartingLineNumber();
    }

    boolean isSound() {
        return sound;
    }

    /** Notes a fault of this row. */
    public void fault(String column, String what, String remedy) {
        sound = false;
        faults.add(table, line(), column, what, remedy);
    }

    /** The cell, which may be empty. */
    public String textOrEmpty(String column) {
        return stored.getField(columns.indexOf(column)).strip();
    }

    /** The cell, which must hold something. */
    public String text(String column) {
        String cell = textOrEmpty(column);
        if (cell.isEmpty()) {
            fault(column, "The cell is empty.", "Every row needs it.");
            return STAND_IN;
        }
        return cell;
    }

    /** A stable id: lower-case words joined by hyphens, after a slash the same again. */
    public String id(String column) {
        String cell = text(column);
        if (!isId(cell) && !cell.equals(STAND_IN)) {
            fault(
                    column,
                    "\"%s\" is not an id.".formatted(cell),
                    "Write lower-case letters, digits and hyphens, as in eame-campaign-medal.");
        }
        return cell;
    }

    private static boolean isId(String cell) {
        return cell.chars().allMatch(c -> (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-' || c == '/');
    }

    /** The items of a list, separated by semicolons. An empty cell is an empty list. */
    public List<String> list(String column) {
        String cell = textOrEmpty(column);
        if (cell.isEmpty()) {
            return List.of();
        }
        var items = new ArrayList<String>();
        var seen = new HashSet<String>();
        for (String part : cell.split(";", -1)) {
            String item = part.strip();
            if (item.isEmpty()) {
                fault(column, "The list has an empty item.", "Take the extra semicolon out.");
            } else if (!seen.add(item)) {
                fault(column, "\"%s\" stands twice in the list.".formatted(item), "Take one out.");
            } else {
                items.add(item);
            }
        }
        return items;
    }

    /** A calendar day. */
    public LocalDate date(String column) {
        return parseDate(column, text(column));
    }

    /** A calendar day, or nothing. */
    public Optional<LocalDate> optionalDate(String column) {
        String cell = textOrEmpty(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(parseDate(column, cell));
    }

    // Taken apart by hand: the formatter of the library costs more to set up than all the dates of all the tables.
    private LocalDate parseDate(String column, String cell) {
        if (cell.equals(STAND_IN)) {
            return LocalDate.EPOCH;
        }
        if (hasShapeOfDate(cell)) {
            try {
                return LocalDate.of(
                        Integer.parseInt(cell, 0, 4, 10),
                        Integer.parseInt(cell, 5, 7, 10),
                        Integer.parseInt(cell, 8, 10, 10));
            } catch (DateTimeException e) {
                // No such day in the calendar: reported below like any other word that is not a date.
            }
        }
        fault(
                column,
                "\"%s\" is not a calendar date.".formatted(cell),
                "Write yyyy-MM-dd as the publication in column 'source' gives it.");
        return LocalDate.EPOCH;
    }

    private static boolean hasShapeOfDate(String cell) {
        if (cell.length() != "yyyy-MM-dd".length()) {
            return false;
        }
        for (int at = 0; at < cell.length(); at++) {
            char letter = cell.charAt(at);
            boolean right = at == 4 || at == 7 ? letter == '-' : (letter >= '0' && letter <= '9');
            if (!right) {
                return false;
            }
        }
        return true;
    }

    /** A span of days; both ends belong to it. */
    public DateSpan span(String firstColumn, String lastColumn) {
        LocalDate first = date(firstColumn);
        LocalDate last = date(lastColumn);
        inOrder(firstColumn, Optional.of(first), lastColumn, Optional.of(last));
        return last.isBefore(first) ? new DateSpan(first, first) : new DateSpan(first, last);
    }

    /** Two days, each of which may be missing; the second must not lie before the first. */
    public void inOrder(String firstColumn, Optional<LocalDate> first, String lastColumn, Optional<LocalDate> last) {
        if (sound && first.isPresent() && last.isPresent() && last.get().isBefore(first.get())) {
            fault(
                    lastColumn,
                    "%s lies before %s in column %s.".formatted(last.get(), first.get(), firstColumn),
                    "Check whether the two dates were swapped.");
        }
    }

    /** {@code yes} or {@code no}. */
    public boolean flag(String column) {
        String cell = text(column);
        if (!cell.equals("yes") && !cell.equals("no") && !cell.equals(STAND_IN)) {
            fault(column, "\"%s\" is neither yes nor no.".formatted(cell), "Write yes or no.");
        }
        return cell.equals("yes");
    }

    /** A whole number, or nothing. */
    public Optional<Integer> optionalNumber(String column) {
        String cell = textOrEmpty(column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(parseNumber(column, cell));
    }

    /** A whole number. */
    public int number(String column) {
        String cell = text(column);
        return cell.equals(STAND_IN) ? 0 : parseNumber(column, cell);
    }

    private int parseNumber(String column, String cell) {
        try {
            return Integer.parseInt(cell);
        } catch (NumberFormatException e) {
            fault(column, "\"%s\" is not a whole number.".formatted(cell), "Write digits only.");
            return 0;
        }
    }

    /** One of the constants of an enum, written in lower case with hyphens. */
    public <E extends Enum<E>> E choice(String column, Class<E> choices) {
        return choose(column, text(column), choices);
    }

    /** Some of the constants of an enum, separated by semicolons. */
    public <E extends Enum<E>> Set<E> choices(String column, Class<E> choices) {
        Set<E> chosen = EnumSet.noneOf(choices);
        for (String item : list(column)) {
            chosen.add(choose(column, item, choices));
        }
        return chosen;
    }

    private <E extends Enum<E>> E choose(String column, String word, Class<E> choices) {
        E[] constants = choices.getEnumConstants();
        for (E constant : constants) {
            if (word(constant).equals(word)) {
                return constant;
            }
        }
        if (!word.equals(STAND_IN)) {
            fault(
                    column,
                    "\"%s\" is not one of the words for this column.".formatted(word),
                    "Write one of: %s."
                            .formatted(Arrays.stream(constants).map(Row::word).collect(Collectors.joining(", "))));
        }
        return constants[0];
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Where the row comes from: the columns {@code source} and {@code grade}. */
    public Provenance provenance() {
        String words = textOrEmpty("grade").concat(textOrEmpty("source"));
        Provenance known = sources.get(words);
        if (known != null) {
            return known;
        }
        boolean soundBefore = sound;
        sound = true;
        Provenance read = readProvenance();
        if (sound) {
            sources.put(words, read);
        }
        sound &= soundBefore;
        return read;
    }

    private Provenance readProvenance() {
        String source = publication("source");
        Grade grade = choice("grade", Grade.class);
        if (source.equalsIgnoreCase("memory") && grade != Grade.MEMORY) {
            fault(
                    "grade",
                    "The source is memory and the grade is %s.".formatted(word(grade)),
                    "Name the publication that was read, or write the grade memory.");
        }
        return new Provenance(source, grade);
    }

    /** A citation made of the columns with these names. */
    public Citation citation(String publication, String pinpoint, String edition, String grade) {
        return new Citation(
                publication(publication), textOrEmpty(pinpoint), textOrEmpty(edition), choice(grade, Grade.class));
    }

    private String publication(String column) {
        String cell = text(column);
        if (holdsWebAddress(cell)) {
            fault(
                    column,
                    "\"%s\" holds a web address.".formatted(cell),
                    "Name the publication that was read there; addresses do not last.");
        }
        return cell;
    }

    /** Whether a scheme, a leading {@code www.} or a full stop inside a lower-case word stands in the text. */
    private static boolean holdsWebAddress(String text) {
        if (text.contains("://") || text.contains("www.")) {
            return true;
        }
        for (int dot = text.indexOf('.', 2); dot >= 0 && dot + 2 < text.length(); dot = text.indexOf('.', dot + 1)) {
            if (isLower(text, dot - 2) && isLower(text, dot - 1) && isLower(text, dot + 1) && isLower(text, dot + 2)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isLower(String text, int at) {
        return text.charAt(at) >= 'a' && text.charAt(at) <= 'z';
    }
}
