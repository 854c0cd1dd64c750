package org.honorsdue.scanning.preparation;

import org.honorsdue.scanning.picture.Gray;

/**
 * Thin dark strokes: how much darker each pixel is than the paper on both sides of it, above and below for a level
 * stroke, left and right for an upright one. The edge of a sheet is dark on one side only and so is no stroke.
 */
public record Strokes(Gray level, Gray upright) {
    private static final int REACH = 4;

    public static Strokes of(Gray picture) {
        var mean = picture.localMean(12);
        return new Strokes(along(picture, mean, picture.width(), 0, REACH), along(picture, mean, 1, REACH, 0));
    }

    private static Gray along(Gray picture, Gray mean, int step, int marginX, int marginY) {
        int width = picture.width();
        var pixels = picture.pixels();
        var made = new byte[pixels.length];
        for (int y = marginY; y < picture.height() - marginY; y++) {
            for (int x = marginX; x < width - marginX; x++) {
                int at = y * width + x;
                int here = pixels[at] & 255;
                int darkest = Math.min(pixels[at - REACH * step] & 255, pixels[at + REACH * step] & 255);
                if (darkest > here) {
                    // In deep shade a small difference is as much ink as a large one in bright light.
                    int around = Math.max(40, mean.pixels()[at] & 255);
                    made[at] = (byte) Math.min(255, (darkest - here) * 200 / around);
                }
            }
        }
        return new Gray(width, picture.height(), made);
    }

    /** Turned clockwise by so many quarters; level strokes turned by one quarter are upright. */
    public Strokes quarters(int clockwise) {
        boolean exchanged = Math.floorMod(clockwise, 2) == 1;
        return new Strokes(
                (exchanged ? upright : level).quarters(clockwise), (exchanged ? level : upright).quarters(clockwise));
    }
}
