package org.honorsdue.scanning.picture;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.w3c.dom.Node;

/** Pictures that Java opens by itself. A TIFF may hold several; of an animation only the first picture counts. */
final class ImagePages implements Pages {
    private final String name;
    private final ImageInputStream stream;
    private final ImageReader reader;
    private final int count;
    private final boolean animated;
    private final long pixels;
    private final long refusedPixels;

    private ImagePages(
            String name,
            ImageInputStream stream,
            ImageReader reader,
            int count,
            boolean animated,
            long pixels,
            long refusedPixels) {
        this.name = name;
        this.stream = stream;
        this.reader = reader;
        this.count = count;
        this.animated = animated;
        this.pixels = pixels;
        this.refusedPixels = refusedPixels;
    }

    static Opened open(Path file, String name, PictureFile kind, long pixels, long refusedPixels) throws IOException {
        var readers = ImageIO.getImageReadersByFormatName(kind.format());
        if (!readers.hasNext()) {
            return new Opened.Refused(name + ": this Java cannot open " + kind.name() + " pictures. Save it as PNG.");
        }
        var reader = readers.next();
        var stream = ImageIO.createImageInputStream(file.toFile());
        try {
            reader.setInput(stream, false, false);
            int pictures = kind == PictureFile.TIFF || kind == PictureFile.GIF ? reader.getNumImages(true) : 1;
            boolean animated = kind == PictureFile.GIF && pictures > 1;
            return new Opened.Ready(
                    new ImagePages(name, stream, reader, animated ? 1 : pictures, animated, pixels, refusedPixels));
        } catch (IOException | RuntimeException e) {
            // The readers of the Java library meet broken files with exceptions of many kinds.
            reader.dispose();
            stream.close();
            return new Opened.Refused(
                    name + ": the picture is damaged (" + e.getMessage() + "). Scan or save it again.");
        }
    }

    @Override
    public int count() {
        return count;
    }

    @Override
    public Page page(int index) {
        try {
            int width = reader.getWidth(index);
            int height = reader.getHeight(index);
            long claimed = (long) width * height;
            if (claimed > refusedPixels) {
                return new Page.Unreadable(
                        "%s: a picture of %,d by %,d points is larger than is taken. Save it at 300 dots to the inch."
                                .formatted(name, width, height));
            }
            if (width < 200 || height < 200) {
                return new Page.Unreadable(
                        "%s: a picture of %d by %d points is too small to read typing from. Scan it at 300 dots to the inch."
                                .formatted(name, width, height));
            }
            var remarks = new ArrayList<String>();
            if (animated) {
                remarks.add("This is an animation; only its first picture was read.");
            }
            int step = 1;
            while (claimed / ((long) step * step) > pixels) {
                step++;
            }
            if (step > 1) {
                remarks.add("The picture is very large and was taken in at 1/" + step + " of its size.");
            }
            return new Page.Picture(gray(index, step), remarks);
        } catch (IOException | RuntimeException e) {
            // As above: a broken file may fail in any way while it is decoded.
            return new Page.Unreadable(
                    name + ": the picture is damaged or cut off (" + e.getMessage() + "). Scan or save it again.");
        }
    }

    private Gray gray(int index, int step) throws IOException {
        var settings = reader.getDefaultReadParam();
        settings.setSourceSubsampling(step, step, 0, 0);
        BufferedImage picture;
        try {
            picture = reader.read(index, settings);
        } catch (IIOException e) {
            if (!reader.canReadRaster()) {
                throw e;
            }
            return inks(reader.readRaster(index, settings), index);
        }
        if (picture.getColorModel().getColorSpace().getType() == ColorSpace.TYPE_CMYK && reader.canReadRaster()) {
            // Java takes every such picture for Adobe's, whose inks are inverted.
            return inks(reader.readRaster(index, settings), index);
        }
        return Gray.of(picture);
    }

    /** A picture in four printing inks, which Java decodes but does not mix. */
    private Gray inks(Raster raster, int index) throws IOException {
        if (raster.getNumBands() != 4) {
            throw new IIOException("a picture of " + raster.getNumBands() + " colours");
        }
        int transform = adobeTransform(reader.getImageMetadata(index).getAsTree("javax_imageio_jpeg_image_1.0"));
        var made = Gray.blank(raster.getWidth(), raster.getHeight(), 255);
        var row = new int[raster.getWidth() * 4];
        for (int y = 0; y < raster.getHeight(); y++) {
            raster.getPixels(raster.getMinX(), raster.getMinY() + y, raster.getWidth(), 1, row);
            for (int x = 0; x < raster.getWidth(); x++) {
                // Adobe's files hold the inks inverted; with its transform 2 the first is already the brightness.
                int light = transform == 2
                        ? row[4 * x]
                        : (299 * row[4 * x] + 587 * row[4 * x + 1] + 114 * row[4 * x + 2]) / 1000;
                int key = row[4 * x + 3];
                int value = transform < 0 ? (255 - light) * (255 - key) / 255 : light * key / 255;
                made.pixels()[y * made.width() + x] = (byte) value;
            }
        }
        return made;
    }

    /** The transform of Adobe's marker, or -1 where a file has none. */
    private static int adobeTransform(Node node) {
        if ("app14Adobe".equals(node.getNodeName())) {
            return Integer.parseInt(
                    node.getAttributes().getNamedItem("transform").getNodeValue());
        }
        for (var child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            int found = adobeTransform(child);
            if (found >= 0) {
                return found;
            }
        }
        return -1;
    }

    @Override
    public void close() {
        reader.dispose();
        try {
            stream.close();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
