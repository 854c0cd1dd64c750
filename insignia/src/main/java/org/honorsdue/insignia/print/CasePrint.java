package org.honorsdue.insignia.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.honorsdue.insignia.display.Breach;
import org.honorsdue.insignia.display.CasePlan;
import org.honorsdue.insignia.display.Piece;
import org.honorsdue.insignia.display.Placed;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.insignia.CareNote;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;

/**
 * Prints a case for the bench as PDF: an overview, the parts list with advice and cautions, and the plan at true size
 * over as many sheets as it takes, each with registration marks and two check bars.
 */
public final class CasePrint {
    private static final String ADVISES =
            "Honors Due advises; only the Army and the National Archives decide. Every drawing of a medal or badge is a sketch.";

    private static final double EDGE = 0.5;
    /** Room for the check bars under the field of a sheet. */
    private static final double STRIP = 0.75;

    private CasePrint() {}

    /**
     * The whole print. The same plan, paper and date give the same bytes.
     *
     * @param dated goes into the document in place of a clock
     */
    public static byte[] pdf(CasePlan plan, Paper paper, LocalDate dated) {
        return pdf(plan, paper, dated, InsigniaTables.published());
    }

    /** The same with given tables. */
    public static byte[] pdf(CasePlan plan, Paper paper, LocalDate dated, InsigniaTables tables) {
        String title = "Plan of a display case, %s in".formatted(plan.frame());
        try (var book = new PdfBook(paper, title, dated)) {
            PDFormXObject bench = book.form(plan.benchDrawing());
            overview(book, plan, bench, title, tables);
            sheets(book, plan, bench);
            return book.bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("The PDF could not be made in memory.", e);
        }
    }

    private static void overview(PdfBook book, CasePlan plan, PDFormXObject bench, String title, InsigniaTables tables)
            throws IOException {
        try (var text = new TextPages(book, ADVISES)) {
            text.title(title);
            text.paragraph(size(plan));
            double w = plan.wish().width().decimal();
            double h = plan.wish().height().decimal();
            double scale = Math.min(text.width() / w, (book.height() - text.y() - 1.9) / h);
            scale = Math.min(1, scale);
            text.skip(0.1);
            text.page().show(bench, (book.width() - w * scale) / 2, text.y(), scale);
            text.skip(h * scale + 0.1);
            text.paragraph("Reduced, for finding the way. Numbers are those of the parts list; beside each stands the"
                    + " place of its upper left corner in inches, from the left and from the top of the opening. Red"
                    + " crosses in rings are holes, small crosses stitches, angles corners.");
            checks(text, plan);
            parts(text, plan);
            care(text, tables);
        }
    }

    private static String size(CasePlan plan) {
        return "Opening %s x %s in (%.1f x %.1f mm), clear depth %s in. %s"
                .formatted(
                        plan.wish().width().text(),
                        plan.wish().height().text(),
                        plan.wish().width().millimetres(),
                        plan.wish().height().millimetres(),
                        plan.wish().depth().text(),
                        plan.largerFrame()
                                .map(frame -> "Everything lies at ease in %s in.".formatted(frame.id()))
                                .or(() -> plan.smallerFrame()
                                        .map(frame -> "A frame of %s in would do as well.".formatted(frame.id())))
                                .orElse(""));
    }

    private static void checks(TextPages text, CasePlan plan) throws IOException {
        if (plan.breaches().isEmpty()) {
            return;
        }
        text.heading("What to look at");
        for (Breach breach : plan.breaches()) {
            text.paragraph(
                    "– " + breach.says() + (breach.grade() == Grade.MEMORY ? " (check: trade practice)" : ""), 0.1);
        }
    }

    private static void parts(TextPages text, CasePlan plan) throws IOException {
        text.heading("Parts list");
        double[] columns = {0, 0.4, 3.5, 4.25, 5.6};
        text.row(List.of("No.", "What", "How many", "Size in inches", "Size in mm"), columns, Mark.Face.BOLD);
        for (Placed one : plan.placed()) {
            boolean first = true;
            for (Piece.Part part : one.piece().parts()) {
                if (one.piece().pending()) {
                    break;
                }
                boolean check =
                        one.piece().sizeGrade() == Grade.MEMORY && !part.size().isEmpty();
                text.row(
                        List.of(
                                first ? Integer.toString(one.number()) : "",
                                part.what(),
                                Integer.toString(part.count()),
                                part.size() + (check ? " (check)" : ""),
                                millimetres(part.size())),
                        columns,
                        Mark.Face.REGULAR);
                first = false;
            }
            if (one.piece().pending()) {
                text.row(
                        List.of(
                                Integer.toString(one.number()),
                                "Place kept, not settled: " + one.piece().name(),
                                "0",
                                one.piece().width().text() + " x "
                                        + one.piece().height().text(),
                                ""),
                        columns,
                        Mark.Face.REGULAR);
            }
        }
        text.paragraph(
                "Mark each piece original or replacement on the slip behind the backing. \"check\": the size is the"
                        + " practice of the trade and was not read in a publication; measure the piece in hand.");
        var proofs = new ArrayList<String>();
        for (Placed one : plan.placed()) {
            if (!one.piece().authority().isEmpty()) {
                proofs.add(one.number() + " " + one.piece().name() + ": "
                        + one.piece().authority());
            }
        }
        if (!proofs.isEmpty()) {
            text.heading("On what authority");
            for (String proof : proofs) {
                text.paragraph(proof, 0.1);
            }
        }
    }

    /** {@code 1 3/8 x 3/8} as {@code 34.9 x 9.5}. */
    private static String millimetres(String size) {
        if (size.isEmpty()) {
            return "";
        }
        var sides = new ArrayList<String>();
        for (String side : size.split(" x ")) {
            sides.add("%.1f".formatted(Inches.parse(side).millimetres()));
        }
        return String.join(" x ", sides);
    }

    private static void care(TextPages text, InsigniaTables tables) throws IOException {
        for (CareNote.Kind kind : CareNote.Kind.values()) {
            text.heading(kind == CareNote.Kind.ADVICE ? "How to mount it" : "What stays out");
            for (CareNote note : tables.careNotes()) {
                if (note.kind() == kind) {
                    String source = note.provenance().grade() == Grade.MEMORY
                            ? " (common practice)"
                            : " (" + note.provenance().source() + ")";
                    text.paragraph("– " + note.says() + source, 0.1);
                }
            }
        }
    }

    private static void sheets(PdfBook book, CasePlan plan, PDFormXObject bench) throws IOException {
        var tiling = new Tiling(
                plan.wish().width().decimal(),
                plan.wish().height().decimal(),
                book.width() - 2 * EDGE,
                book.height() - 2 * EDGE - STRIP);
        for (Tiling.Tile tile : tiling.tiles()) {
            try (var page = book.page()) {
                page.showWithin(bench, EDGE - tile.x(), EDGE - tile.y(), EDGE, EDGE, tile.width(), tile.height());
                registration(page, tile, tiling);
                double y = book.height() - EDGE - 0.42;
                CheckBars.draw(page, EDGE, y);
                double x = EDGE + 4.6;
                page.words("Sheet " + tile.name(), x, y + 0.12, 0.17, Mark.Face.BOLD);
                page.words(
                        "of %d x %d · print at 100 %%, measure the bars".formatted(tiling.columns(), tiling.rows()),
                        x,
                        y + 0.32,
                        0.105,
                        Mark.Face.REGULAR);
            }
        }
    }

    /** Rings with crosses on the middle line of each shared strip; both sheets show the same ones. */
    private static void registration(PdfBook.Page page, Tiling.Tile tile, Tiling tiling) throws IOException {
        double half = Tiling.SHARED / 2;
        var across = new ArrayList<Double>();
        if (tile.column() > 0) {
            across.add(EDGE + half);
        }
        if (tile.column() < tiling.columns() - 1) {
            across.add(EDGE + tiling.fieldWidth() - half);
        }
        var down = new ArrayList<Double>();
        if (tile.row() > 0) {
            down.add(EDGE + half);
        }
        if (tile.row() < tiling.rows() - 1) {
            down.add(EDGE + tiling.fieldHeight() - half);
        }
        for (double x : across) {
            page.line(x, EDGE, x, EDGE + tile.height(), 0.004, 0.08, 0.08);
            for (double part : new double[] {0.25, 0.75}) {
                cross(page, x, EDGE + tile.height() * part);
            }
        }
        for (double y : down) {
            page.line(EDGE, y, EDGE + tile.width(), y, 0.004, 0.08, 0.08);
            for (double part : new double[] {0.25, 0.75}) {
                cross(page, EDGE + tile.width() * part, y);
            }
        }
        for (double x : across) {
            for (double y : down) {
                cross(page, x, y);
            }
        }
    }

    private static void cross(PdfBook.Page page, double x, double y) throws IOException {
        page.line(x - 0.14, y, x + 0.14, y, 0.008);
        page.line(x, y - 0.14, x, y + 0.14, 0.008);
        double r = 0.07;
        for (int i = 0; i < 24; i++) {
            double from = Math.toRadians(15.0 * i);
            double to = Math.toRadians(15.0 * (i + 1));
            page.line(
                    x + r * Math.sin(from), y - r * Math.cos(from), x + r * Math.sin(to), y - r * Math.cos(to), 0.008);
        }
    }
}
