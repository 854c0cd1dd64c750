package org.honorsdue.scanning.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.util.Arrays;

/** A gray picture: 0 is black, 255 is white. The pixels are shared, not copied; only its makers may write to them. */
public record Gray(int width, int height, byte[] pixels) {
    public Gray {
        if (width < 1 || height < 1 || pixels.length != width * height) {
            throw new IllegalArgumentException(
                    "A gray picture of %d by %d with %d pixels.".formatted(width, height, pixels.length));
        }
    }

    public static Gray blank(int width, int height, int value) {
        var pixels = new byte[Math.multiplyExact(width, height)];
        Arrays.fill(pixels, (byte) value);
        return new Gray(width, height, pixels);
    }

    /** Brightness by the weights of ITU-R BT.601; what is transparent counts as white paper. */
    public static Gray of(BufferedImage picture) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        var pixels = new byte[Math.multiplyExact(width, height)];
        if (picture.getType() == BufferedImage.TYPE_BYTE_GRAY
                && picture.getRaster().getDataBuffer() instanceof DataBufferByte bytes
                && bytes.getData().length == pixels.length) {
            System.arraycopy(bytes.getData(), 0, pixels, 0, pixels.length);
            return new Gray(width, height, pixels);
        }
        if (picture.getRaster().getNumBands() == 1 && !(picture.getColorModel() instanceof IndexColorModel)) {
            // Java would read one gray channel as linear light and make it too bright.
            int most = (1 << picture.getSampleModel().getSampleSize(0)) - 1;
            var samples = new int[width];
            for (int y = 0; y < height; y++) {
                picture.getRaster().getSamples(0, y, width, 1, 0, samples);
                for (int x = 0; x < width; x++) {
                    pixels[y * width + x] = (byte) ((long) samples[x] * 255 / most);
                }
            }
            return new Gray(width, height, pixels);
        }
        var row = new int[width];
        for (int y = 0; y < height; y++) {
            picture.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                int argb = row[x];
                int alpha = argb >>> 24;
                int luma = (299 * (argb >> 16 & 255) + 587 * (argb >> 8 & 255) + 114 * (argb & 255)) / 1000;
                pixels[y * width + x] = (byte) ((luma * alpha + 255 * (255 - alpha)) / 255);
            }
        }
        return new Gray(width, height, pixels);
    }

    public int at(int x, int y) {
        return pixels[y * width + x] & 255;
    }

    public BufferedImage picture() {
        var picture = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        picture.getRaster().setDataElements(0, 0, width, height, pixels);
        return picture;
    }

    public Gray inverted() {
        var turned = new byte[pixels.length];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = (byte) (255 - (pixels[i] & 255));
        }
        return new Gray(width, height, turned);
    }

    /** Turned clockwise by so many quarters. */
    public Gray quarters(int clockwise) {
        int turns = Math.floorMod(clockwise, 4);
        if (turns == 0) {
            return this;
        }
        int newWidth = turns % 2 == 0 ? width : height;
        int newHeight = turns % 2 == 0 ? height : width;
        var turned = new byte[pixels.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int to = switch (turns) {
                    case 1 -> x * newWidth + (height - 1 - y);
                    case 2 -> (height - 1 - y) * newWidth + (width - 1 - x);
                    default -> (width - 1 - x) * newWidth + y;
                };
                turned[to] = pixels[y * width + x];
            }
        }
        return new Gray(newWidth, newHeight, turned);
    }

    /** Made smaller by averaging; a factor of 1 or more is left alone. */
    public Gray shrunk(double factor) {
        if (factor >= 1) {
            return this;
        }
        int newWidth = Math.max(1, (int) Math.round(width * factor));
        int newHeight = Math.max(1, (int) Math.round(height * factor));
        var sums = new long[newWidth];
        var counts = new int[newWidth];
        var made = new byte[newWidth * newHeight];
        int done = -1;
        for (int y = 0; y < height; y++) {
            int to = Math.min(newHeight - 1, (int) ((long) y * newHeight / height));
            if (to != done) {
                flush(made, done, newWidth, sums, counts);
                done = to;
            }
            for (int x = 0; x < width; x++) {
                int column = (int) ((long) x * newWidth / width);
                sums[column] += pixels[y * width + x] & 255;
                counts[column]++;
            }
        }
        flush(made, done, newWidth, sums, counts);
        return new Gray(newWidth, newHeight, made);
    }

    private static void flush(byte[] made, int row, int width, long[] sums, int[] counts) {
        if (row < 0) {
            return;
        }
        for (int x = 0; x < width; x++) {
            made[row * width + x] = (byte) (counts[x] == 0 ? 255 : sums[x] / counts[x]);
            sums[x] = 0;
            counts[x] = 0;
        }
    }

    /** The mean over a square reaching so far on each side, cut at the borders. */
    public Gray localMean(int reach) {
        var made = new byte[pixels.length];
        var column = new int[width];
        int rows = 0;
        for (int y = 0; y < Math.min(reach, height); y++) {
            add(column, y, 1);
            rows++;
        }
        for (int y = 0; y < height; y++) {
            if (y + reach < height) {
                add(column, y + reach, 1);
                rows++;
            }
            if (y - reach - 1 >= 0) {
                add(column, y - reach - 1, -1);
                rows--;
            }
            long sum = 0;
            int columns = 0;
            for (int x = 0; x < Math.min(reach, width); x++) {
                sum += column[x];
                columns++;
            }
            for (int x = 0; x < width; x++) {
                if (x + reach < width) {
                    sum += column[x + reach];
                    columns++;
                }
                if (x - reach - 1 >= 0) {
                    sum -= column[x - reach - 1];
                    columns--;
                }
                made[y * width + x] = (byte) (sum / ((long) rows * columns));
            }
        }
        return new Gray(width, height, made);
    }

    private void add(int[] column, int row, int sign) {
        int at = row * width;
        for (int x = 0; x < width; x++) {
            column[x] += sign * (pixels[at + x] & 255);
        }
    }

    /** A copy of a part; what lies outside is filled with that value. */
    public Gray cut(int left, int top, int partWidth, int partHeight, int outside) {
        var part = blank(partWidth, partHeight, outside);
        int fromX = Math.max(0, left);
        int toX = Math.min(width, left + partWidth);
        if (fromX < toX) {
            for (int y = Math.max(0, top); y < Math.min(height, top + partHeight); y++) {
                System.arraycopy(
                        pixels, y * width + fromX, part.pixels, (y - top) * partWidth + fromX - left, toX - fromX);
            }
        }
        return part;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Gray gray && gray.width == width && Arrays.equals(gray.pixels, pixels);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(pixels);
    }

    @Override
    public String toString() {
        return "gray picture of %d by %d".formatted(width, height);
    }
}
