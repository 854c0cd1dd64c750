package org.honorsdue.insignia.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.ribbon.RibbonRack;

/** Prints one drawing at true size, with check bars; smaller only when the sheet is too narrow, and then it says so. */
public final class DrawingPrint {
    private DrawingPrint() {}

    /** A ribbon rack with its order in words and its remarks. */
    public static byte[] rack(RibbonRack rack, Paper paper, LocalDate dated) {
        var notes = new ArrayList<String>();
        notes.add(rack.description());
        notes.addAll(rack.remarks());
        return pdf(rack.drawing(), "Ribbon rack", notes, paper, dated);
    }

    /** Any drawing with lines of text below it. */
    public static byte[] pdf(Drawing drawing, String title, List<String> notes, Paper paper, LocalDate dated) {
        try (var book = new PdfBook(paper, title, dated)) {
            var form = book.form(drawing);
            try (var text =
                    new TextPages(book, "Honors Due advises; only the Army and the National Archives decide.")) {
                text.title(title);
                text.skip(0.2);
                double scale = Math.min(1, text.width() / drawing.width());
                text.page().show(form, (book.width() - drawing.width() * scale) / 2, text.y(), scale);
                text.skip(drawing.height() * scale + 0.3);
                CheckBars.draw(text.page(), text.left(), text.y());
                text.skip(0.55);
                if (scale < 1) {
                    text.paragraph("Reduced to %.0f percent, as the sheet is too narrow.".formatted(scale * 100));
                } else {
                    text.paragraph("True size when printed at 100 percent: measure the bars.");
                }
                for (String note : notes) {
                    text.paragraph(note);
                }
            }
            return book.bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("The PDF could not be made in memory.", e);
        }
    }
}
