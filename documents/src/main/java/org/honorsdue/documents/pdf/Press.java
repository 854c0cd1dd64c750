package org.honorsdue.documents.pdf;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;

/**
 * Sets well-formed XHTML as a tagged PDF (PDF/UA-1) with every face embedded. Nothing is fetched from anywhere: drawings
 * stand in the page as SVG. The same page and date give the same bytes.
 *
 * <p>Faces by CSS family: {@code Book} (400, italic, 600) and {@code Typewriter} (400, 700). A character that neither
 * has is shown as a box by the face, never swapped for another face without a word.
 */
public final class Press {
    static {
        XRLog.setLoggingEnabled(false);
    }

    /**
     * @param xhtml a whole document with a title and a {@code lang}
     * @param dated goes into the document's properties in place of a clock
     */
    public byte[] print(String xhtml, LocalDate dated) {
        try {
            return settle(render(xhtml), dated);
        } catch (IOException e) {
            throw new UncheckedIOException("The PDF could not be made in memory.", e);
        }
    }

    private static byte[] render(String xhtml) throws IOException {
        var out = new ByteArrayOutputStream(64 * 1024);
        var builder = new PdfRendererBuilder();
        builder.usePdfUaAccessibility(true);
        builder.usePdfVersion(1.7f);
        builder.withProducer("Honors Due");
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useUriResolver((base, uri) -> null);
        face(builder, "source-serif-4-latin-400-normal", "Book", 400, FontStyle.NORMAL);
        face(builder, "source-serif-4-latin-400-italic", "Book", 400, FontStyle.ITALIC);
        face(builder, "source-serif-4-latin-600-normal", "Book", 600, FontStyle.NORMAL);
        face(builder, "source-serif-4-latin-ext-400-normal", "BookMore", 400, FontStyle.NORMAL);
        face(builder, "source-serif-4-latin-ext-400-italic", "BookMore", 400, FontStyle.ITALIC);
        face(builder, "source-serif-4-latin-ext-600-normal", "BookMore", 600, FontStyle.NORMAL);
        face(builder, "courier-prime-latin-400-normal", "Typewriter", 400, FontStyle.NORMAL);
        face(builder, "courier-prime-latin-700-normal", "Typewriter", 700, FontStyle.NORMAL);
        builder.withHtmlContent(xhtml, "honors:page");
        builder.toStream(out);
        builder.run();
        return out.toByteArray();
    }

    private static void face(PdfRendererBuilder builder, String file, String family, int weight, FontStyle style) {
        FSSupplier<InputStream> source = () -> {
            var face = Press.class.getResourceAsStream("/org/honorsdue/documents/faces/" + file + ".ttf");
            if (face == null) {
                throw new IllegalStateException("The face " + file + " is missing from the program.");
            }
            return face;
        };
        builder.useFont(source, family, weight, style, true);
    }

    /** Puts the given date and a fixed identity in the place of the clock's. */
    private static byte[] settle(byte[] pdf, LocalDate dated) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            Calendar day = GregorianCalendar.from(dated.atStartOfDay(ZoneOffset.UTC));
            day.setTimeZone(TimeZone.getTimeZone(ZoneOffset.UTC));
            document.getDocumentInformation().setCreationDate(day);
            document.getDocumentInformation().setModificationDate(day);
            var id = new COSArray();
            id.add(new COSString("HonorsDue-0000-1"));
            id.add(new COSString("HonorsDue-0000-1"));
            document.getDocument().getTrailer().setItem(COSName.ID, id);
            document.setDocumentId(0L);
            var out = new ByteArrayOutputStream(pdf.length);
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        }
    }
}
