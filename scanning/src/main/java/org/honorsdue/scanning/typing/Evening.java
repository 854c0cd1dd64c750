package org.honorsdue.scanning.typing;

import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Flattening;

/**
 * Gives weakly struck letters the blackness of strongly struck ones: each part of a line is measured against the
 * darkest ink within a letter's width of it.
 */
public final class Evening {
    private static final int TARGET = 185;

    private Evening() {}

    /**
     * @param line a line of typing on even paper
     * @param letter about the width of a letter in pixels
     * @param grain ink fainter than this is the grain of the picture and is not raised further
     */
    public static Gray even(Gray line, int letter, int grain) {
        int width = line.width();
        int height = line.height();
        var smooth = line.localMean(1);
        var darkest = new int[width];
        for (int x = 0; x < width; x++) {
            int most = 0;
            for (int y = 0; y < height; y++) {
                most = Math.max(most, Flattening.PAPER - smooth.at(x, y));
            }
            darkest[x] = most;
        }
        int reach = Math.max(3, letter * 2 / 5);
        var gain = new double[width];
        for (int x = 0; x < width; x++) {
            int most = 0;
            for (int k = Math.max(0, x - reach); k <= Math.min(width - 1, x + reach); k++) {
                most = Math.max(most, darkest[k]);
            }
            gain[x] = TARGET / (double) Math.max(grain, most);
        }
        var made = new byte[width * height];
        for (int x = 0; x < width; x++) {
            double mean = 0;
            int count = 0;
            for (int k = Math.max(0, x - 3); k <= Math.min(width - 1, x + 3); k++) {
                mean += gain[k];
                count++;
            }
            mean = Math.max(1, mean / count);
            for (int y = 0; y < height; y++) {
                int ink = Flattening.PAPER - line.at(x, y);
                made[y * width + x] = (byte) Math.max(0, Math.min(255, Math.round(Flattening.PAPER - ink * mean)));
            }
        }
        return new Gray(width, height, made);
    }
}
