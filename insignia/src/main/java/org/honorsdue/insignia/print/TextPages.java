package org.honorsdue.insignia.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Mark;

/** Sets running text and rows on as many pages as it takes. */
final class TextPages implements AutoCloseable {
    private static final double MARGIN = 0.8;
    private static final double SIZE = 0.145;
    private static final double LEADING = 0.2;

    private final PdfBook book;
    private final String footer;
    private PdfBook.Page page;
    private double y;
    private int number = 1;

    TextPages(PdfBook book, String footer) throws IOException {
        this.book = book;
        this.footer = footer;
        page = book.page();
        begin();
    }

    private void begin() throws IOException {
        y = MARGIN;
        page.words(footer, MARGIN, book.height() - 0.45, 0.115, Mark.Face.REGULAR);
        String count = Integer.toString(number);
        page.words(
                count,
                book.width() - MARGIN - book.faces().width(count, Mark.Face.REGULAR, 0.115),
                book.height() - 0.45,
                0.115,
                Mark.Face.REGULAR);
    }

    double width() {
        return book.width() - 2 * MARGIN;
    }

    double left() {
        return MARGIN;
    }

    double y() {
        return y;
    }

    PdfBook.Page page() {
        return page;
    }

    void skip(double inches) {
        y += inches;
    }

    /** Begins a page unless so much room is left. */
    void need(double inches) throws IOException {
        if (y + inches > book.height() - MARGIN) {
            page.close();
            number++;
            page = book.page();
            begin();
        }
    }

    void title(String text) throws IOException {
        need(0.6);
        y += 0.24;
        page.words(text, MARGIN, y, 0.27, Mark.Face.BOLD);
        y += 0.2;
    }

    void heading(String text) throws IOException {
        need(0.9);
        y += 0.32;
        page.words(text, MARGIN, y, 0.18, Mark.Face.BOLD);
        y += 0.08;
    }

    void paragraph(String text) throws IOException {
        paragraph(text, 0);
    }

    /** A paragraph set in from the left. */
    void paragraph(String text, double indent) throws IOException {
        for (String line : wrapped(text, width() - indent, SIZE, Mark.Face.REGULAR)) {
            need(LEADING);
            y += LEADING;
            page.words(line, MARGIN + indent, y, SIZE, Mark.Face.REGULAR);
        }
        y += 0.06;
    }

    /**
     * A row of cells, each wrapped in its column.
     *
     * @param columns left edge of each cell from the margin
     */
    void row(List<String> cells, double[] columns, Mark.Face face) throws IOException {
        double size = 0.13;
        double leading = 0.175;
        var wrapped = new ArrayList<List<String>>();
        int lines = 1;
        for (int i = 0; i < cells.size(); i++) {
            double next = i + 1 < columns.length ? columns[i + 1] : width();
            var cell = wrapped(cells.get(i), next - columns[i] - 0.12, size, face);
            wrapped.add(cell);
            lines = Math.max(lines, cell.size());
        }
        need(lines * leading + 0.08);
        for (int i = 0; i < wrapped.size(); i++) {
            for (int line = 0; line < wrapped.get(i).size(); line++) {
                page.words(wrapped.get(i).get(line), MARGIN + columns[i], y + (line + 1) * leading, size, face);
            }
        }
        y += lines * leading + 0.06;
        page.line(MARGIN, y, MARGIN + width(), y, 0.004);
    }

    private List<String> wrapped(String text, double width, double size, Mark.Face face) throws IOException {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (String word : text.split(" ")) {
            String longer = line.length() == 0 ? word : line + " " + word;
            if (line.length() > 0 && book.faces().width(longer, face, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    @Override
    public void close() throws IOException {
        page.close();
    }
}
