package org.honorsdue.scanning.typing;

import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Flattening;

/**
 * The place of one letter, drawn small and with even ink: {@link #WIDTH} by {@link #HEIGHT} values from 0 (paper) to 1
 * (the darkest ink of this place).
 */
public final class LetterCell {
    public static final int WIDTH = 20;
    public static final int HEIGHT = 28;
    /** What it covers, in carriage steps: sideways, above the line and below it. */
    private static final double ACROSS = 1.3;

    private static final double ABOVE = 1.35;
    private static final double BELOW = 0.45;

    private LetterCell() {}

    /**
     * @param line a typed line
     * @param middle where the letter's middle is, in pixels of the line's picture
     * @param step the carriage step
     */
    public static float[] of(TypedLine line, double middle, double step) {
        double baseline = line.baseline() - line.place().y() + TypedLines.MARGIN;
        var picture = line.picture();
        var values = new float[WIDTH * HEIGHT];
        float most = line.grain() * 1.1f;
        double perX = ACROSS * step / WIDTH;
        double perY = (ABOVE + BELOW) * step / HEIGHT;
        for (int j = 0; j < HEIGHT; j++) {
            double y = baseline - ABOVE * step + (j + 0.5) * perY;
            for (int i = 0; i < WIDTH; i++) {
                double x = middle - ACROSS * step / 2 + (i + 0.5) * perX;
                float ink = ink(picture, x, y, perX, perY);
                values[j * WIDTH + i] = ink;
                // The neighbours' ink does not set the scale.
                boolean own = i >= WIDTH / 6 && i < WIDTH - WIDTH / 6;
                if (own && ink > most) {
                    most = ink;
                }
            }
        }
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.min(1, values[i] / most);
        }
        return values;
    }

    /** The darkest ink of a letter's own place, 0 to 255, averaged over a stroke's width. */
    public static double darkest(TypedLine line, double middle, double step) {
        double baseline = line.baseline() - line.place().y() + TypedLines.MARGIN;
        double most = 0;
        for (double y = baseline - step; y < baseline; y += 2) {
            for (double x = middle - 0.4 * step; x <= middle + 0.4 * step; x += 2) {
                most = Math.max(most, ink(line.picture(), x, y, 4, 4));
            }
        }
        return most;
    }

    /** The mean ink over a small rectangle. */
    private static float ink(Gray picture, double x, double y, double width, double height) {
        int fromX = (int) Math.floor(x - width / 2);
        int toX = Math.max(fromX, (int) Math.ceil(x + width / 2) - 1);
        int fromY = (int) Math.floor(y - height / 2);
        int toY = Math.max(fromY, (int) Math.ceil(y + height / 2) - 1);
        float sum = 0;
        int count = 0;
        for (int j = fromY; j <= toY; j++) {
            for (int i = fromX; i <= toX; i++) {
                if (i >= 0 && j >= 0 && i < picture.width() && j < picture.height()) {
                    sum += Math.max(0, Flattening.PAPER - picture.at(i, j));
                }
                count++;
            }
        }
        return sum / count;
    }
}
