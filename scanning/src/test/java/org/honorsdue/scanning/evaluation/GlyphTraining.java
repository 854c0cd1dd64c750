package org.honorsdue.scanning.evaluation;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.honorsdue.scanning.recognition.GlyphNet;
import org.honorsdue.scanning.typing.LetterCell;

/**
 * Trains the net of letter shapes on the letters that {@link LetterSamples} cut, by Adam on the cross entropy, one
 * thread. Arguments: output file, number of rounds, sample files. The same samples give the same net.
 */
final class GlyphTraining {
    private static final int W = LetterCell.WIDTH;
    private static final int H = LetterCell.HEIGHT;
    private static final int C1 = GlyphNet.FIRST;
    private static final int C2 = GlyphNet.SECOND;
    private static final int FLAT = GlyphNet.FLAT;
    private static final int FULL = GlyphNet.FULL;
    private static final int OUT = GlyphNet.LETTERS.length();
    private static final int BATCH = 64;

    /** A layer's numbers with what Adam remembers of them. */
    private static final class Weights {
        final float[] value;
        final float[] slope;
        final float[] mean;
        final float[] spread;

        Weights(int size, double start, Random dice) {
            value = new float[size];
            slope = new float[size];
            mean = new float[size];
            spread = new float[size];
            for (int i = 0; i < size; i++) {
                value[i] = (float) (dice.nextGaussian() * start);
            }
        }

        void step(int time, double rate) {
            double correct1 = 1 - Math.pow(0.9, time);
            double correct2 = 1 - Math.pow(0.999, time);
            float pace = (float) (rate * Math.sqrt(correct2) / correct1);
            for (int i = 0; i < value.length; i++) {
                float g = slope[i] / BATCH;
                mean[i] = 0.9f * mean[i] + 0.1f * g;
                spread[i] = 0.999f * spread[i] + 0.001f * g * g;
                value[i] -= pace * mean[i] / ((float) Math.sqrt(spread[i]) + 1e-8f) + (float) (rate * 1e-4) * value[i];
                slope[i] = 0;
            }
        }
    }

    private final Random dice = new Random(7);
    private final Weights f1 = new Weights(9 * C1, Math.sqrt(2.0 / 9), dice);
    private final Weights b1 = new Weights(C1, 0, dice);
    private final Weights f2 = new Weights(9 * C1 * C2, Math.sqrt(2.0 / (9 * C1)), dice);
    private final Weights b2 = new Weights(C2, 0, dice);
    private final Weights w1 = new Weights(FLAT * FULL, Math.sqrt(2.0 / FLAT), dice);
    private final Weights wb1 = new Weights(FULL, 0, dice);
    private final Weights w2 = new Weights(FULL * OUT, Math.sqrt(2.0 / FULL), dice);
    private final Weights wb2 = new Weights(OUT, 0, dice);

    private final float[] map1 = new float[W * H * C1];
    private final float[] pool1 = new float[W / 2 * (H / 2) * C1];
    private final int[] from1 = new int[pool1.length];
    private final float[] map2 = new float[W / 2 * (H / 2) * C2];
    private final float[] pool2 = new float[FLAT];
    private final int[] from2 = new int[FLAT];
    private final float[] shape = new float[FULL];
    private final boolean[] dropped = new boolean[FULL];
    private final float[] out = new float[OUT];
    private final float[] backShape = new float[FULL];
    private final float[] back1 = new float[pool1.length];
    private final float[] turned = new float[9 * C1 * C2];

    public static void main(String[] args) throws IOException {
        var cells = new ArrayList<byte[]>();
        for (int i = 2; i < args.length; i++) {
            load(Path.of(args[i]), cells);
        }
        System.out.println(cells.size() + " letters");
        var training = new GlyphTraining();
        var order = new ArrayList<>(cells);
        java.util.Collections.shuffle(order, new Random(5));
        int held = Math.min(4000, order.size() / 10);
        var check = order.subList(0, held);
        var learn = new ArrayList<>(order.subList(held, order.size()));
        int rounds = Integer.parseInt(args[1]);
        int time = 0;
        long steps = (long) rounds * (learn.size() / BATCH);
        for (int round = 0; round < rounds; round++) {
            java.util.Collections.shuffle(learn, new Random(round));
            double loss = 0;
            int right = 0;
            long begun = System.nanoTime();
            for (int at = 0; at + BATCH <= learn.size(); at += BATCH) {
                training.turn();
                for (int k = 0; k < BATCH; k++) {
                    var cell = learn.get(at + k);
                    var input = training.varied(cell);
                    int label = cell[0];
                    double own = training.forward(input, label, true);
                    loss += own;
                    right += training.best() == label ? 1 : 0;
                    training.backward(input, label);
                }
                time++;
                double rate = 0.0015 * 0.5 * (1 + Math.cos(Math.PI * time / steps)) + 1e-5;
                for (var weights : training.all()) {
                    weights.step(time, rate);
                }
            }
            int rightCheck = 0;
            for (var cell : check) {
                training.forward(plain(cell), cell[0], false);
                rightCheck += training.best() == cell[0] ? 1 : 0;
            }
            System.out.printf(
                    "round %d: loss %.4f, right %.2f %%, held back %.2f %%, %d s%n",
                    round,
                    loss / learn.size(),
                    100.0 * right / learn.size(),
                    100.0 * rightCheck / held,
                    (System.nanoTime() - begun) / 1_000_000_000);
            training.save(Path.of(args[0]));
        }
    }

    private static void load(Path file, List<byte[]> cells) throws IOException {
        try (var in = new DataInputStream(new GZIPInputStream(new BufferedInputStream(Files.newInputStream(file))))) {
            while (true) {
                var cell = new byte[1 + W * H];
                in.readFully(cell);
                cells.add(cell);
            }
        } catch (EOFException end) {
            System.out.println(file + " read to its end");
        }
    }

    private static float[] plain(byte[] cell) {
        var values = new float[W * H];
        for (int i = 0; i < values.length; i++) {
            values[i] = (cell[i + 1] & 255) / 255f;
        }
        return values;
    }

    /** Darker, lighter, grainier: what one page does not show. */
    private float[] varied(byte[] cell) {
        var values = plain(cell);
        float power = (float) Math.exp(dice.nextGaussian() * 0.25);
        float grain = Math.max(0, (float) (dice.nextGaussian() * 0.03));
        for (int i = 0; i < values.length; i++) {
            float value = (float) Math.pow(values[i], power);
            if (grain > 0.005f) {
                value += (float) dice.nextGaussian() * grain;
            }
            values[i] = Math.max(0, Math.min(1, value));
        }
        return values;
    }

    private List<Weights> all() {
        return List.of(f1, b1, f2, b2, w1, wb1, w2, wb2);
    }

    private int best() {
        int best = 0;
        for (int i = 1; i < OUT; i++) {
            if (out[i] > out[best]) {
                best = i;
            }
        }
        return best;
    }

    /** Filters of the second layer with inner and outer channel exchanged, for the way back. */
    private void turn() {
        for (int k = 0; k < 9; k++) {
            for (int c = 0; c < C1; c++) {
                for (int o = 0; o < C2; o++) {
                    turned[(k * C2 + o) * C1 + c] = f2.value[(k * C1 + c) * C2 + o];
                }
            }
        }
    }

    private double forward(float[] input, int label, boolean learning) {
        convolve(input, W, H, 1, C1, f1.value, b1.value, map1);
        pool(map1, W, H, C1, pool1, from1);
        convolve(pool1, W / 2, H / 2, C1, C2, f2.value, b2.value, map2);
        pool(map2, W / 2, H / 2, C2, pool2, from2);
        System.arraycopy(wb1.value, 0, shape, 0, FULL);
        for (int i = 0; i < FLAT; i++) {
            float value = pool2[i];
            if (value != 0) {
                int at = i * FULL;
                for (int o = 0; o < FULL; o++) {
                    shape[o] += value * w1.value[at + o];
                }
            }
        }
        for (int i = 0; i < FULL; i++) {
            dropped[i] = learning && dice.nextInt(5) == 0;
            shape[i] = dropped[i] ? 0 : Math.max(0, shape[i]) * (learning ? 1.25f : 1);
        }
        System.arraycopy(wb2.value, 0, out, 0, OUT);
        for (int i = 0; i < FULL; i++) {
            float value = shape[i];
            for (int o = 0; value != 0 && o < OUT; o++) {
                out[o] += value * w2.value[i * OUT + o];
            }
        }
        float most = Float.NEGATIVE_INFINITY;
        for (float value : out) {
            most = Math.max(most, value);
        }
        double sum = 0;
        for (int o = 0; o < OUT; o++) {
            out[o] = (float) Math.exp(out[o] - most);
            sum += out[o];
        }
        for (int o = 0; o < OUT; o++) {
            out[o] /= (float) sum;
        }
        return -Math.log(Math.max(1e-9, out[label]));
    }

    private void backward(float[] input, int label) {
        var backOut = out.clone();
        // A little doubt is kept, so that likelihoods stay honest.
        for (int o = 0; o < OUT; o++) {
            backOut[o] -= 0.03f / OUT;
        }
        backOut[label] -= 0.97f;
        Arrays.fill(backShape, 0);
        for (int o = 0; o < OUT; o++) {
            wb2.slope[o] += backOut[o];
        }
        for (int i = 0; i < FULL; i++) {
            if (shape[i] != 0) {
                float sum = 0;
                for (int o = 0; o < OUT; o++) {
                    w2.slope[i * OUT + o] += shape[i] * backOut[o];
                    sum += w2.value[i * OUT + o] * backOut[o];
                }
                backShape[i] = sum * 1.25f;
            }
        }
        for (int o = 0; o < FULL; o++) {
            wb1.slope[o] += backShape[o];
        }
        Arrays.fill(back1, 0);
        for (int i = 0; i < FLAT; i++) {
            float value = pool2[i];
            if (value <= 0) {
                continue;
            }
            int at = i * FULL;
            float sum = 0;
            for (int o = 0; o < FULL; o++) {
                w1.slope[at + o] += value * backShape[o];
                sum += w1.value[at + o] * backShape[o];
            }
            // Through the pooling to the one place it came from.
            int place = from2[i];
            int o = place % C2;
            int pixel = place / C2;
            int x = pixel % (W / 2);
            int y = pixel / (W / 2);
            b2.slope[o] += sum;
            for (int k = 0; k < 9; k++) {
                int px = x + k % 3 - 1;
                int py = y + k / 3 - 1;
                if (px < 0 || py < 0 || px >= W / 2 || py >= H / 2) {
                    continue;
                }
                int from = (py * (W / 2) + px) * C1;
                int filters = (k * C2 + o) * C1;
                for (int c = 0; c < C1; c++) {
                    f2.slope[(k * C1 + c) * C2 + o] += sum * pool1[from + c];
                    back1[from + c] += sum * turned[filters + c];
                }
            }
        }
        for (int i = 0; i < pool1.length; i++) {
            float slope = back1[i];
            if (pool1[i] <= 0 || slope == 0) {
                continue;
            }
            int place = from1[i];
            int o = place % C1;
            int pixel = place / C1;
            int x = pixel % W;
            int y = pixel / W;
            b1.slope[o] += slope;
            for (int k = 0; k < 9; k++) {
                int px = x + k % 3 - 1;
                int py = y + k / 3 - 1;
                if (px >= 0 && py >= 0 && px < W && py < H) {
                    f1.slope[k * C1 + o] += slope * input[py * W + px];
                }
            }
        }
    }

    private static void convolve(
            float[] in, int width, int height, int channels, int outs, float[] filters, float[] bias, float[] map) {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int to = (y * width + x) * outs;
                System.arraycopy(bias, 0, map, to, outs);
                for (int k = 0; k < 9; k++) {
                    int px = x + k % 3 - 1;
                    int py = y + k / 3 - 1;
                    if (px < 0 || py < 0 || px >= width || py >= height) {
                        continue;
                    }
                    int from = (py * width + px) * channels;
                    for (int c = 0; c < channels; c++) {
                        float value = in[from + c];
                        if (value != 0) {
                            int weights = (k * channels + c) * outs;
                            for (int o = 0; o < outs; o++) {
                                map[to + o] += value * filters[weights + o];
                            }
                        }
                    }
                }
            }
        }
    }

    /** The larger of two by two, below zero cut off, and where each came from. */
    private static void pool(float[] map, int width, int height, int channels, float[] pool, int[] from) {
        for (int y = 0; y < height / 2; y++) {
            for (int x = 0; x < width / 2; x++) {
                for (int c = 0; c < channels; c++) {
                    int to = (y * (width / 2) + x) * channels + c;
                    pool[to] = 0;
                    from[to] = 0;
                    for (int k = 0; k < 4; k++) {
                        int at = ((2 * y + k / 2) * width + 2 * x + k % 2) * channels + c;
                        if (map[at] > pool[to]) {
                            pool[to] = map[at];
                            from[to] = at;
                        }
                    }
                }
            }
        }
    }

    private void save(Path file) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(new GZIPOutputStream(bytes))) {
            for (var weights : all()) {
                float most = 1e-9f;
                for (float value : weights.value) {
                    most = Math.max(most, Math.abs(value));
                }
                float scale = most / 32767;
                out.writeFloat(scale);
                for (float value : weights.value) {
                    out.writeShort(Math.round(value / scale));
                }
            }
        }
        Files.write(file, bytes.toByteArray());
    }
}
