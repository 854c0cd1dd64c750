package org.honorsdue.scanning.preparation;

import org.honorsdue.scanning.picture.Gray;

/** Takes shade and stains out of the paper: every place is measured against the paper around it. */
public final class Flattening {
    private static final int BLOCK = 16;
    /** What clean paper is set to. */
    public static final int PAPER = 235;

    private Flattening() {}

    public static Gray flatten(Gray picture) {
        int columns = (picture.width() + BLOCK - 1) / BLOCK;
        int rows = (picture.height() + BLOCK - 1) / BLOCK;
        var paper = new byte[columns * rows];
        var counts = new int[256];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                paper[row * columns + column] = (byte) bright(picture, column, row, counts);
            }
        }
        // The brightest paper nearby bridges letters and rules; the mean then smooths the steps.
        var smooth = brightestNearby(new Gray(columns, rows, paper), 2).localMean(2);
        var made = new byte[picture.pixels().length];
        for (int y = 0; y < picture.height(); y++) {
            double v = Math.max(0, Math.min(rows - 1.001, (y + 0.5) / BLOCK - 0.5));
            int y0 = (int) v;
            double fy = v - y0;
            int y1 = Math.min(rows - 1, y0 + 1);
            for (int x = 0; x < picture.width(); x++) {
                double u = Math.max(0, Math.min(columns - 1.001, (x + 0.5) / BLOCK - 0.5));
                int x0 = (int) u;
                double fx = u - x0;
                int x1 = Math.min(columns - 1, x0 + 1);
                double light = (smooth.at(x0, y0) * (1 - fx) + smooth.at(x1, y0) * fx) * (1 - fy)
                        + (smooth.at(x0, y1) * (1 - fx) + smooth.at(x1, y1) * fx) * fy;
                int value = picture.at(x, y);
                made[y * picture.width() + x] = (byte) Math.min(255, (int) (value * PAPER / Math.max(16, light)));
            }
        }
        return new Gray(picture.width(), picture.height(), made);
    }

    /** The seventh decile of a block: paper, unless the block is mostly ink. */
    private static int bright(Gray picture, int column, int row, int[] counts) {
        java.util.Arrays.fill(counts, 0);
        int total = 0;
        for (int y = row * BLOCK; y < Math.min(picture.height(), (row + 1) * BLOCK); y++) {
            for (int x = column * BLOCK; x < Math.min(picture.width(), (column + 1) * BLOCK); x++) {
                counts[picture.at(x, y)]++;
                total++;
            }
        }
        int above = total * 3 / 10;
        for (int value = 255; value > 0; value--) {
            above -= counts[value];
            if (above < 0) {
                return value;
            }
        }
        return 0;
    }

    private static Gray brightestNearby(Gray picture, int reach) {
        var made = new byte[picture.pixels().length];
        for (int y = 0; y < picture.height(); y++) {
            for (int x = 0; x < picture.width(); x++) {
                int best = 0;
                for (int j = Math.max(0, y - reach); j <= Math.min(picture.height() - 1, y + reach); j++) {
                    for (int i = Math.max(0, x - reach); i <= Math.min(picture.width() - 1, x + reach); i++) {
                        best = Math.max(best, picture.at(i, j));
                    }
                }
                made[y * picture.width() + x] = (byte) best;
            }
        }
        return new Gray(picture.width(), picture.height(), made);
    }
}
