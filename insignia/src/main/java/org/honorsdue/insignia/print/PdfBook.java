package org.honorsdue.insignia.print;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDFormContentStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;

/** A PDF in the making. Lengths on a page are in inches from its upper left corner. */
final class PdfBook implements AutoCloseable {
    private final PDDocument document = new PDDocument();
    private final PdfFaces faces;
    private final double width;
    private final double height;

    PdfBook(Paper paper, String title, LocalDate dated) {
        faces = new PdfFaces(document);
        width = paper.width().decimal();
        height = paper.height().decimal();
        Calendar day = GregorianCalendar.from(dated.atStartOfDay(ZoneOffset.UTC));
        day.setTimeZone(TimeZone.getTimeZone(ZoneOffset.UTC));
        var information = document.getDocumentInformation();
        information.setTitle(title);
        information.setProducer("Honors Due");
        information.setCreationDate(day);
        information.setModificationDate(day);
        document.getDocumentCatalog().setLanguage("en-US");
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    PdfFaces faces() {
        return faces;
    }

    /** A drawing kept once and shown on any page. */
    PDFormXObject form(Drawing drawing) throws IOException {
        var form = new PDFormXObject(document);
        form.setResources(new PDResources());
        form.setBBox(new PDRectangle((float) (drawing.width() * 72), (float) (drawing.height() * 72)));
        form.setFormType(1);
        try (var stream = new PDFormContentStream(form)) {
            new PdfPen(stream, faces).draw(drawing);
        }
        return form;
    }

    Page page() throws IOException {
        var page = new PDPage(new PDRectangle(points(width), points(height)));
        document.addPage(page);
        return new Page(new PDPageContentStream(document, page));
    }

    private static float points(double inches) {
        return (float) (inches * 72);
    }

    byte[] bytes() throws IOException {
        var id = new COSArray();
        id.add(new COSString("HonorsDue-plan-1"));
        id.add(new COSString("HonorsDue-plan-1"));
        document.getDocument().getTrailer().setItem(COSName.ID, id);
        document.setDocumentId(0L);
        var out = new ByteArrayOutputStream();
        document.save(out, CompressParameters.NO_COMPRESSION);
        return out.toByteArray();
    }

    @Override
    public void close() throws IOException {
        document.close();
    }

    /** One page, drawn on until it is closed. */
    final class Page implements AutoCloseable {
        private final PDPageContentStream stream;

        private Page(PDPageContentStream stream) {
            this.stream = stream;
        }

        /**
         * Shows a form.
         *
         * @param x where its upper left corner lies
         * @param scale 1 for true size
         */
        void show(PDFormXObject form, double x, double y, double scale) throws IOException {
            stream.saveGraphicsState();
            double formHeight = form.getBBox().getHeight() / 72.0;
            stream.transform(
                    new Matrix((float) scale, 0, 0, (float) scale, points(x), points(height - y - formHeight * scale)));
            stream.drawForm(form);
            stream.restoreGraphicsState();
        }

        /** Shows what of a form falls into a window; the form's corner lies at x, y. */
        void showWithin(
                PDFormXObject form, double x, double y, double windowX, double windowY, double windowW, double windowH)
                throws IOException {
            stream.saveGraphicsState();
            stream.addRect(points(windowX), points(height - windowY - windowH), points(windowW), points(windowH));
            stream.clip();
            show(form, x, y, 1);
            stream.restoreGraphicsState();
        }

        void words(String text, double x, double baseline, double size, Mark.Face face) throws IOException {
            stream.setNonStrokingColor(new Color(0x2A2722));
            stream.beginText();
            stream.newLineAtOffset(points(x), points(height - baseline));
            for (PdfFaces.Run run : faces.runs(text, face)) {
                stream.setFont(run.face(), points(size));
                stream.showText(run.text());
            }
            stream.endText();
        }

        void line(double x1, double y1, double x2, double y2, double width, double... dashes) throws IOException {
            var pattern = new float[dashes.length];
            for (int i = 0; i < dashes.length; i++) {
                pattern[i] = points(dashes[i]);
            }
            stream.setStrokingColor(new Color(0x2A2722));
            stream.setLineDashPattern(pattern, 0);
            stream.setLineWidth(points(width));
            stream.moveTo(points(x1), points(height - y1));
            stream.lineTo(points(x2), points(height - y2));
            stream.stroke();
        }

        void box(double x, double y, double w, double h) throws IOException {
            stream.setNonStrokingColor(new Color(0x2A2722));
            stream.addRect(points(x), points(height - y - h), points(w), points(h));
            stream.fill();
        }

        @Override
        public void close() throws IOException {
            stream.close();
        }
    }
}
