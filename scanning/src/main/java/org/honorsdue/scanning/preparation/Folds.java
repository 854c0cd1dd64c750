package org.honorsdue.scanning.preparation;

import java.util.Arrays;
import org.honorsdue.scanning.picture.Gray;

/**
 * Takes the shade of folds and long rules out of a page: what is dark along a whole stretch of its row or column is
 * measured against the places beside it. Letters are short, and so stay.
 */
public final class Folds {
    private static final int BLOCK = 8;
    /** How many blocks each way must be dark too: a stretch of about 140 pixels. */
    private static final int STRETCH = 8;
    /** How far to the side the clean paper is looked for, in pixels. */
    private static final int ASIDE = 26;

    private Folds() {}

    public static Gray smoothed(Gray page) {
        return along(transposed(along(transposed(page))));
    }

    /** Upright folds. */
    private static Gray along(Gray page) {
        int width = page.width();
        int rows = (page.height() + BLOCK - 1) / BLOCK;
        var bright = new byte[width * rows];
        for (int row = 0; row < rows; row++) {
            for (int x = 0; x < width; x++) {
                bright[row * width + x] = (byte) nearlyBrightest(page, x, row * BLOCK);
            }
        }
        var stretch = new byte[width * rows];
        var window = new int[2 * STRETCH + 1];
        for (int row = 0; row < rows; row++) {
            for (int x = 0; x < width; x++) {
                int count = 0;
                for (int k = Math.max(0, row - STRETCH); k <= Math.min(rows - 1, row + STRETCH); k++) {
                    window[count++] = bright[k * width + x] & 255;
                }
                Arrays.sort(window, 0, count);
                stretch[row * width + x] = (byte) window[count / 2];
            }
        }
        var made = page.pixels().clone();
        var line = new int[width];
        for (int row = 0; row < rows; row++) {
            for (int x = 0; x < width; x++) {
                line[x] = stretch[row * width + x] & 255;
            }
            for (int x = 0; x < width; x++) {
                int beside = beside(line, x);
                int own = line[x];
                if (own >= beside - 3) {
                    continue;
                }
                for (int y = row * BLOCK; y < Math.min(page.height(), (row + 1) * BLOCK); y++) {
                    int value = page.at(x, y) * beside / Math.max(24, own);
                    made[y * width + x] = (byte) Math.min(255, value);
                }
            }
        }
        return new Gray(width, page.height(), made);
    }

    private static int nearlyBrightest(Gray page, int x, int top) {
        int first = 0;
        int second = 0;
        for (int y = top; y < Math.min(page.height(), top + BLOCK); y++) {
            int value = page.at(x, y);
            if (value > first) {
                second = first;
                first = value;
            } else if (value > second) {
                second = value;
            }
        }
        return second;
    }

    /** The paper on both sides: the darker of the two sides' brightest, so that an edge is not taken for a fold. */
    private static int beside(int[] line, int x) {
        int left = 0;
        int right = 0;
        for (int k = 4; k <= ASIDE; k += 2) {
            if (x - k >= 0) {
                left = Math.max(left, line[x - k]);
            }
            if (x + k < line.length) {
                right = Math.max(right, line[x + k]);
            }
        }
        return Math.min(left, right);
    }

    private static Gray transposed(Gray page) {
        var made = new byte[page.pixels().length];
        for (int y = 0; y < page.height(); y++) {
            for (int x = 0; x < page.width(); x++) {
                made[x * page.height() + y] = page.pixels()[y * page.width() + x];
            }
        }
        return new Gray(page.height(), page.width(), made);
    }
}
