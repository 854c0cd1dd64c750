package org.honorsdue.scanning.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The pages of a PDF, drawn at 300 dots to the inch or as fine as the limit allows. */
final class PdfPages implements Pages {
    private static final float DPI = 300;

    private final String name;
    private final PDDocument document;
    private final long pixels;
    private final long refusedPixels;

    private PdfPages(String name, PDDocument document, long pixels, long refusedPixels) {
        this.name = name;
        this.document = document;
        this.pixels = pixels;
        this.refusedPixels = refusedPixels;
    }

    static Opened open(Path file, String name, long pixels, long refusedPixels) {
        try {
            var document = Loader.loadPDF(file.toFile(), "", null, null, IOUtils.createTempFileOnlyStreamCache());
            return new Opened.Ready(new PdfPages(name, document, pixels, refusedPixels));
        } catch (InvalidPasswordException e) {
            return new Opened.Refused(name + ": the PDF is locked with a password. Save it without one.");
        } catch (IOException | RuntimeException e) {
            // A broken PDF may fail in any way while it is parsed.
            return new Opened.Refused(name + ": the PDF is damaged (" + e.getMessage() + "). Save it again.");
        }
    }

    @Override
    public int count() {
        return document.getNumberOfPages();
    }

    @Override
    public Page page(int index) {
        try {
            var page = document.getPage(index);
            long largest = largestImage(page.getResources(), 0);
            if (largest > refusedPixels) {
                return new Page.Unreadable("%s: page %d holds a picture of %,d points, larger than is taken."
                        .formatted(name, index + 1, largest));
            }
            var box = page.getCropBox();
            float scale = DPI / 72;
            double wanted = (double) box.getWidth() * box.getHeight() * scale * scale;
            var remarks = new ArrayList<String>();
            if (wanted > pixels) {
                scale *= (float) Math.sqrt(pixels / wanted);
                remarks.add("The page is very large and was drawn at %.0f dots to the inch.".formatted(scale * 72));
            }
            if (box.getWidth() * scale < 200 || box.getHeight() * scale < 200) {
                return new Page.Unreadable("%s: page %d is too small to read typing from.".formatted(name, index + 1));
            }
            var renderer = new PDFRenderer(document);
            renderer.setSubsamplingAllowed(true);
            return new Page.Picture(Gray.of(renderer.renderImage(index, scale, ImageType.GRAY)), remarks);
        } catch (IOException | RuntimeException e) {
            // As above.
            return new Page.Unreadable(
                    "%s: page %d is damaged (%s). Save the PDF again.".formatted(name, index + 1, e.getMessage()));
        }
    }

    /** The most points that any picture on the page claims, forms within forms counted to a sane depth. */
    private static long largestImage(PDResources resources, int depth) throws IOException {
        long largest = 0;
        if (resources == null || depth > 6) {
            return largest;
        }
        for (COSName each : resources.getXObjectNames()) {
            var object = resources.getXObject(each);
            if (object instanceof PDImageXObject image) {
                largest = Math.max(largest, (long) image.getWidth() * image.getHeight());
            } else if (object instanceof PDFormXObject form) {
                largest = Math.max(largest, largestImage(form.getResources(), depth + 1));
            }
        }
        return largest;
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
