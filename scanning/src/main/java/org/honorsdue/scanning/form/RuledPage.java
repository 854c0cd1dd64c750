package org.honorsdue.scanning.form;

import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Strokes;

/**
 * The rules of a straightened page: which pixels belong to a long level or a long upright stroke. Pixels of {@link
 * #picture()} throughout.
 */
public final class RuledPage {
    /** A stroke shorter than this share of the longer side is writing. */
    private static final double SHORTEST = 0.022;

    private final Gray picture;
    /** Row by row, how many rule pixels lie left of each column. */
    private final int[] levelBefore;
    /** Column by column, how many rule pixels lie above each row. */
    private final int[] uprightBefore;

    private RuledPage(Gray picture, int[] levelBefore, int[] uprightBefore) {
        this.picture = picture;
        this.levelBefore = levelBefore;
        this.uprightBefore = uprightBefore;
    }

    /**
     * @param picture the straightened page
     * @param strokes its thin dark strokes
     */
    public static RuledPage of(Gray picture, Strokes strokes) {
        int width = picture.width();
        int height = picture.height();
        int shortest = (int) (Math.max(width, height) * SHORTEST);
        return new RuledPage(
                picture,
                before(strokes.level(), 1, width, width, height, shortest),
                before(strokes.upright(), width, 1, height, width, shortest));
    }

    /** Runs along one direction; {@code along} and {@code across} are the steps in the pixel array. */
    private static int[] before(Gray ink, int along, int across, int length, int lines, int shortest) {
        var pixels = ink.pixels();
        var rule = new boolean[length * lines];
        for (int line = 1; line < lines - 1; line++) {
            int begun = -1;
            int last = -10;
            int filled = 0;
            for (int i = 0; i <= length; i++) {
                boolean dark = false;
                if (i < length) {
                    int at = line * across + i * along;
                    dark = Math.max(pixels[at] & 255, Math.max(pixels[at - across] & 255, pixels[at + across] & 255))
                            > 18;
                }
                if (dark) {
                    if (begun < 0) {
                        begun = i;
                        filled = 0;
                    }
                    last = i;
                    filled++;
                } else if (begun >= 0 && (i - last > 3 || i == length)) {
                    if (last - begun >= shortest && filled * 10 > (last - begun) * 8) {
                        for (int k = begun; k <= last; k++) {
                            rule[line * length + k] = true;
                        }
                    }
                    begun = -1;
                }
            }
        }
        var before = new int[(length + 1) * lines];
        for (int line = 0; line < lines; line++) {
            for (int i = 0; i < length; i++) {
                before[line * (length + 1) + i + 1] =
                        before[line * (length + 1) + i] + (rule[line * length + i] ? 1 : 0);
            }
        }
        return before;
    }

    public Gray picture() {
        return picture;
    }

    public int width() {
        return picture.width();
    }

    public int height() {
        return picture.height();
    }

    /** How many pixels of a level rule lie in that row between two columns. */
    public int levelPixels(int y, int fromX, int toX) {
        return pixels(levelBefore, y, fromX, toX, width(), height());
    }

    /** How many pixels of an upright rule lie in that column between two rows. */
    public int uprightPixels(int x, int fromY, int toY) {
        return pixels(uprightBefore, x, fromY, toY, height(), width());
    }

    private static int pixels(int[] before, int line, int from, int to, int length, int lines) {
        if (line < 0 || line >= lines) {
            return 0;
        }
        int low = Math.max(0, Math.min(length, from));
        int high = Math.max(low, Math.min(length, to));
        return before[line * (length + 1) + high] - before[line * (length + 1) + low];
    }

    /** The share of a level edge that is ruled, 0 to 1. */
    public double levelSupport(int y, double fromX, double toX) {
        int from = (int) Math.round(fromX);
        int to = (int) Math.round(toX);
        return to <= from ? 0 : (double) levelPixels(y, from, to) / (to - from);
    }

    /** The share of an upright edge that is ruled, 0 to 1. */
    public double uprightSupport(int x, double fromY, double toY) {
        int from = (int) Math.round(fromY);
        int to = (int) Math.round(toY);
        return to <= from ? 0 : (double) uprightPixels(x, from, to) / (to - from);
    }
}
