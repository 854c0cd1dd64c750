package org.honorsdue.insignia.print;

import java.io.IOException;
import org.honorsdue.insignia.drawing.Mark;

/** Two bars of known length on a sheet, by which somebody with a ruler can tell that it was printed at true size. */
final class CheckBars {
    /** 100 mm in inches. */
    static final double HUNDRED_MILLIMETRES = 100 / 25.4;

    static final double FOUR_INCHES = 4;
    /** Height of a bar, inches. */
    static final double THICK = 0.06;

    private CheckBars() {}

    /** Draws both bars, the metric one above, with their upper left corner at a place. */
    static void draw(PdfBook.Page page, double x, double y) throws IOException {
        bar(page, x, y, HUNDRED_MILLIMETRES, 10, "100 mm");
        bar(page, x, y + 0.24, FOUR_INCHES, 4, "4 in");
    }

    private static void bar(PdfBook.Page page, double x, double y, double length, int parts, String says)
            throws IOException {
        page.box(x, y, length, THICK);
        for (int i = 0; i <= parts; i++) {
            double at = x + length * i / parts;
            page.line(at, y, at, y + THICK + 0.05, 0.006);
        }
        page.words(says, x + length + 0.08, y + 0.08, 0.12, Mark.Face.BOLD);
    }
}
