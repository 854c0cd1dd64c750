package org.honorsdue.scanning.form;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;

/**
 * Where the boxes of a form stand, in hundredths of the page. The tables are drawn from memory of the forms (grade
 * {@code memory} in every row): good enough to say which box is which, never trusted for the exact place of a rule.
 */
public record FormLayout(Form form, List<FormPart> parts) {
    /** Width of the page over its height: letter paper, from memory of the forms. */
    public static final double PAGE_SHAPE = 8.5 / 11;

    private static final FormLayout ENLISTED = load(Form.ENLISTED_53_55, "wd-ago-53-55.csv");
    private static final FormLayout OFFICER = load(Form.OFFICER_53_98, "wd-ago-53-98.csv");

    public FormLayout {
        parts = List.copyOf(parts);
    }

    /** The forms that can be scanned. */
    public static List<FormLayout> all() {
        return List.of(ENLISTED, OFFICER);
    }

    public static FormLayout of(Form form) {
        return all().stream()
                .filter(layout -> layout.form == form)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No drawing of the form \"" + form.title() + "\"."));
    }

    public List<FormPart> every(Predicate<FormPart> wanted) {
        return parts.stream().filter(wanted).toList();
    }

    public List<FormPart> boxes() {
        return every(part -> part.kind() == FormPart.Kind.BOX);
    }

    /** The columns, halves or places for a tick within that box. */
    public List<FormPart> within(FormPart box) {
        return every(part -> !part.id().equals(box.id())
                && part.box().isPresent()
                && part.box().equals(box.box()));
    }

    public Optional<FormPart> part(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }

    /** The rectangle that holds every ruled box. */
    public Area table() {
        double left = 100;
        double top = 100;
        double right = 0;
        double bottom = 0;
        for (var box : boxes()) {
            left = Math.min(left, box.place().x());
            top = Math.min(top, box.place().y());
            right = Math.max(right, box.place().right());
            bottom = Math.max(bottom, box.place().bottom());
        }
        return Area.between(left, top, right, bottom);
    }

    private static FormLayout load(Form form, String table) {
        var parts = new ArrayList<FormPart>();
        try (var stream = FormLayout.class.getResourceAsStream(table)) {
            if (stream == null) {
                throw new IllegalStateException("The table " + table + " is missing from this build.");
            }
            try (var rows =
                    CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                for (var row : rows) {
                    parts.add(part(row));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The table " + table + " cannot be read.", e);
        }
        return new FormLayout(form, parts);
    }

    private static FormPart part(NamedCsvRecord row) {
        return new FormPart(
                row.getField("id"),
                FormPart.Kind.valueOf(row.getField("kind").toUpperCase(Locale.ROOT)),
                Entry.ofKey(row.getField("entry")),
                row.getField("caption"),
                new Area(number(row, "x"), number(row, "y"), number(row, "w"), number(row, "h")));
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }
}
