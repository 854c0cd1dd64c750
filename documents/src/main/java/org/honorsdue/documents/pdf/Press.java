package org.honorsdue.documents.pdf;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.BitSet;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;

/**
 * Sets well-formed XHTML as a tagged PDF (PDF/UA-1) with every face embedded. Nothing is fetched from anywhere: drawings
 * stand in the page as SVG. The same page and date give the same bytes.
 *
 * <p>Faces by CSS family: {@code Book} (400, italic, 600) and {@code Typewriter} (400, 700). A character that no
 * face has is written as its number, never swapped for another face without a word.
 */
public final class Press {
    private static final String FOLDER = "/org/honorsdue/documents/faces/";
    private static final List<Face> FACES = List.of(
            new Face("source-serif-4-latin-400-normal", "Book", 400, FontStyle.NORMAL),
            new Face("source-serif-4-latin-400-italic", "Book", 400, FontStyle.ITALIC),
            new Face("source-serif-4-latin-600-normal", "Book", 600, FontStyle.NORMAL),
            new Face("source-serif-4-latin-ext-400-normal", "BookMore", 400, FontStyle.NORMAL),
            new Face("source-serif-4-latin-ext-400-italic", "BookMore", 400, FontStyle.ITALIC),
            new Face("source-serif-4-latin-ext-600-normal", "BookMore", 600, FontStyle.NORMAL),
            new Face("courier-prime-latin-400-normal", "Typewriter", 400, FontStyle.NORMAL),
            new Face("courier-prime-latin-700-normal", "Typewriter", 700, FontStyle.NORMAL));
    private static final BitSet DRAWN = drawn();
    private static final FSCacheEx<String, FSCacheValue> METRICS = new FSDefaultCacheStore();

    static {
        XRLog.setLoggingEnabled(false);
    }

    /** A face in memory, so that no document waits for the archive it comes in. */
    private record Face(String family, int weight, FontStyle style, byte[] bytes) {
        Face(String file, String family, int weight, FontStyle style) {
            this(family, weight, style, read(file));
        }

        private static byte[] read(String file) {
            try (var face = Press.class.getResourceAsStream(FOLDER + file + ".ttf")) {
                if (face == null) {
                    throw new IllegalStateException("The face " + file + " is missing from the program.");
                }
                return withoutLigatures(face.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException("The face " + file + " could not be read.", e);
            }
        }
    }

    /**
     * PDFBox would set the ligatures of the face, and their glyphs map to no character: PDF/UA-1 forbids that (7.21.7),
     * and a reader could neither search nor copy the word. So the table of substitutions is hidden from it.
     */
    private static byte[] withoutLigatures(byte[] face) {
        int tables = ((face[4] & 0xFF) << 8) | (face[5] & 0xFF);
        for (int i = 0; i < tables; i++) {
            int tag = 12 + 16 * i;
            if (face[tag] == 'G' && face[tag + 1] == 'S' && face[tag + 2] == 'U' && face[tag + 3] == 'B') {
                face[tag] = 'x';
            }
        }
        return face;
    }

    /** The characters that the upright book faces hold together. */
    private static BitSet drawn() {
        var drawn = new BitSet();
        for (var face : FACES) {
            if (face.family.startsWith("Book") && face.weight == 400 && face.style == FontStyle.NORMAL) {
                try (var font = new TTFParser().parse(new RandomAccessReadBuffer(face.bytes))) {
                    var characters = font.getUnicodeCmapLookup();
                    for (int point = 0x20; point < 0x10000; point++) {
                        if (characters.getGlyphId(point) > 0) {
                            drawn.set(point);
                        }
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException("A face that comes with the program could not be read.", e);
                }
            }
        }
        return drawn;
    }

    /**
     * The page with every character the faces hold; any other is written as its number, as in {@code [U+0416]}, so that
     * nothing is lost without a word and no glyph is missing from the file.
     */
    static String spelled(String xhtml) {
        String composed = Normalizer.normalize(xhtml, Normalizer.Form.NFC);
        var out = new StringBuilder(composed.length());
        composed.codePoints().forEach(point -> {
            if (point < 0x20 || DRAWN.get(point)) {
                out.appendCodePoint(point);
            } else {
                out.append("[U+%04X]".formatted(point));
            }
        });
        return out.toString();
    }

    /**
     * @param xhtml a whole document with a title and a {@code lang}
     * @param dated goes into the document's properties in place of a clock
     */
    public byte[] print(String xhtml, LocalDate dated) {
        try {
            return settle(render(spelled(xhtml)), dated);
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
        builder.useCacheStore(PdfRendererBuilder.CacheStore.PDF_FONT_METRICS, METRICS);
        for (var face : FACES) {
            FSSupplier<InputStream> source = () -> new ByteArrayInputStream(face.bytes);
            builder.useFont(source, face.family, face.weight, face.style, true);
        }
        builder.withHtmlContent(xhtml, "honors:page");
        builder.toStream(out);
        builder.run();
        return out.toByteArray();
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
            var trailer = document.getDocument().getTrailer();
            trailer.setItem(COSName.ID, id);
            // Left from the compressed table of the first writing; their length varies with the clock it held.
            for (var left : List.of(
                    COSName.TYPE,
                    COSName.LENGTH,
                    COSName.INDEX,
                    COSName.W,
                    COSName.FILTER,
                    COSName.PREV,
                    COSName.SIZE)) {
                trailer.removeItem(left);
            }
            document.setDocumentId(0L);
            var out = new ByteArrayOutputStream(pdf.length);
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        }
    }
}
