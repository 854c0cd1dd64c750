package org.honorsdue.scanning.recognition;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.zip.GZIPInputStream;
import org.honorsdue.scanning.typing.LetterCell;

/**
 * A small convolutional net that says which typewriter letter stands in a {@link LetterCell}. It was trained by the
 * project's own test tool on pages which that tool drew; the faces kept for testing were not among them. Two layers of
 * 3 by 3 filters, each followed by taking the larger of 2 by 2, then two full layers.
 */
public final class GlyphNet {
    /** The letters it knows; the first, a space, stands for an empty place. */
    public static final String LETTERS =
            " ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,-/'\"&()$:;%+";

    public static final int FIRST = 16;
    public static final int SECOND = 32;
    public static final int FULL = 96;
    static final int W = LetterCell.WIDTH;
    static final int H = LetterCell.HEIGHT;
    public static final int FLAT = (W / 4) * (H / 4) * SECOND;

    private final float[] filters1;
    private final float[] bias1;
    private final float[] filters2;
    private final float[] bias2;
    private final float[] full1;
    private final float[] fullBias1;
    private final float[] full2;
    private final float[] fullBias2;

    private GlyphNet(DataInputStream in) throws IOException {
        filters1 = array(in, 9 * FIRST);
        bias1 = array(in, FIRST);
        filters2 = array(in, 9 * FIRST * SECOND);
        bias2 = array(in, SECOND);
        full1 = array(in, FLAT * FULL);
        fullBias1 = array(in, FULL);
        full2 = array(in, FULL * LETTERS.length());
        fullBias2 = array(in, LETTERS.length());
    }

    /** Sixteen-bit steps of one scale for each array. */
    private static float[] array(DataInputStream in, int length) throws IOException {
        float scale = in.readFloat();
        var values = new float[length];
        for (int i = 0; i < length; i++) {
            values[i] = in.readShort() * scale;
        }
        return values;
    }

    /** The net that comes with this build. */
    public static GlyphNet built() {
        try (InputStream stream = GlyphNet.class.getResourceAsStream("glyphs.net")) {
            if (stream == null) {
                throw new IllegalStateException("The table of letter shapes is missing from this build.");
            }
            return read(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static GlyphNet read(InputStream stream) throws IOException {
        return new GlyphNet(new DataInputStream(new GZIPInputStream(stream)));
    }

    /**
     * What it made of one place.
     *
     * @param likelihood for each of {@link #LETTERS}, summing to 1
     * @param shape what the last layer but one saw; like letters of one machine lie close together in it
     */
    public record Seen(float[] likelihood, float[] shape) {
        public int best() {
            int best = 0;
            for (int i = 1; i < likelihood.length; i++) {
                if (likelihood[i] > likelihood[best]) {
                    best = i;
                }
            }
            return best;
        }
    }

    public Seen see(float[] cell) {
        var map1 = pooled(convolved(cell, W, H, 1, FIRST, filters1, bias1), W, H, FIRST);
        var map2 = pooled(convolved(map1, W / 2, H / 2, FIRST, SECOND, filters2, bias2), W / 2, H / 2, SECOND);
        var shape = fullBias1.clone();
        product(map2, full1, shape);
        for (int i = 0; i < shape.length; i++) {
            shape[i] = Math.max(0, shape[i]);
        }
        var out = fullBias2.clone();
        product(shape, full2, out);
        return new Seen(softmax(out), shape);
    }

    private static float[] softmax(float[] values) {
        float most = Float.NEGATIVE_INFINITY;
        for (float value : values) {
            most = Math.max(most, value);
        }
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            values[i] = (float) Math.exp(values[i] - most);
            sum += values[i];
        }
        for (int i = 0; i < values.length; i++) {
            values[i] /= (float) sum;
        }
        return values;
    }

    private static void product(float[] in, float[] weights, float[] out) {
        int width = out.length;
        for (int i = 0; i < in.length; i++) {
            float value = in[i];
            if (value != 0) {
                int at = i * width;
                for (int o = 0; o < width; o++) {
                    out[o] += value * weights[at + o];
                }
            }
        }
    }

    /** Three by three, with a border of nothing, cut off below zero. Maps lie pixel by pixel, all channels together. */
    private static float[] convolved(
            float[] in, int width, int height, int channels, int outs, float[] filters, float[] bias) {
        var out = new float[width * height * outs];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int to = (y * width + x) * outs;
                System.arraycopy(bias, 0, out, to, outs);
                for (int k = 0; k < 9; k++) {
                    int fromX = x + k % 3 - 1;
                    int fromY = y + k / 3 - 1;
                    if (fromX < 0 || fromY < 0 || fromX >= width || fromY >= height) {
                        continue;
                    }
                    int from = (fromY * width + fromX) * channels;
                    for (int c = 0; c < channels; c++) {
                        float value = in[from + c];
                        if (value != 0) {
                            int weights = (k * channels + c) * outs;
                            for (int o = 0; o < outs; o++) {
                                out[to + o] += value * filters[weights + o];
                            }
                        }
                    }
                }
                for (int o = 0; o < outs; o++) {
                    out[to + o] = Math.max(0, out[to + o]);
                }
            }
        }
        return out;
    }

    private static float[] pooled(float[] in, int width, int height, int channels) {
        int newWidth = width / 2;
        int newHeight = height / 2;
        var out = new float[newWidth * newHeight * channels];
        for (int y = 0; y < newHeight; y++) {
            for (int x = 0; x < newWidth; x++) {
                int to = (y * newWidth + x) * channels;
                for (int k = 0; k < 4; k++) {
                    int from = ((2 * y + k / 2) * width + 2 * x + k % 2) * channels;
                    for (int c = 0; c < channels; c++) {
                        out[to + c] = Math.max(out[to + c], in[from + c]);
                    }
                }
            }
        }
        return out;
    }
}
