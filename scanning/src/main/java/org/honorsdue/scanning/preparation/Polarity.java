package org.honorsdue.scanning.preparation;

import org.honorsdue.scanning.picture.Gray;

/** Whether the writing is dark on light, or light on dark as on a county's photostat. */
public enum Polarity {
    DARK_ON_LIGHT,
    LIGHT_ON_DARK;

    /**
     * Writing is thin: what differs strongly from its surroundings is the writing, on whichever side it lies. The
     * borders are left out, since the edge of the sheet against a dark table shows both signs.
     */
    public static Polarity of(Gray picture) {
        var mean = picture.localMean(Math.max(6, picture.width() / 60));
        long darker = 0;
        long lighter = 0;
        for (int y = picture.height() / 6; y < picture.height() * 5 / 6; y++) {
            for (int x = picture.width() / 6; x < picture.width() * 5 / 6; x++) {
                int difference = picture.at(x, y) - mean.at(x, y);
                if (difference < -14) {
                    darker += (long) difference * difference;
                } else if (difference > 14) {
                    lighter += (long) difference * difference;
                }
            }
        }
        return lighter > darker ? LIGHT_ON_DARK : DARK_ON_LIGHT;
    }
}
