package org.honorsdue.scanning.typing;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Flattening;

/**
 * A typewriter moves its carriage by one step a letter, whatever the letter. The step is one for the whole page; where
 * the steps of a line begin is found line by line.
 *
 * @param step from letter to letter, in pixels of the upright page
 */
public record LetterGrid(double step) {
    /** Steps that machines of the time made: twelve, eleven or ten letters to the inch, with slack for the paper. */
    private static final double NARROWEST = 22.5;

    private static final double WIDEST = 33.5;

    /** The step that fits the lines best: the strongest period of their ink. */
    public static LetterGrid of(List<TypedLine> lines) {
        var profiles = new ArrayList<double[]>();
        for (var line : lines) {
            if (line.picture().width() > 4 * WIDEST) {
                profiles.add(profile(line.picture()));
            }
        }
        double best = 30;
        double most = 0;
        for (double step = NARROWEST; step <= WIDEST; step += 0.04) {
            double power = 0;
            for (var profile : profiles) {
                double sin = 0;
                double cos = 0;
                double turn = 2 * Math.PI / step;
                for (int x = 0; x < profile.length; x++) {
                    sin += profile[x] * Math.sin(turn * x);
                    cos += profile[x] * Math.cos(turn * x);
                }
                power += Math.sqrt(sin * sin + cos * cos) / Math.sqrt(profile.length);
            }
            if (power > most) {
                most = power;
                best = step;
            }
        }
        return new LetterGrid(best);
    }

    /** Ink column by column, without its mean. */
    private static double[] profile(Gray line) {
        var profile = new double[line.width()];
        double mean = 0;
        for (int x = 0; x < profile.length; x++) {
            double ink = 0;
            for (int y = 0; y < line.height(); y++) {
                ink += Math.max(0, Flattening.PAPER - 14 - line.at(x, y));
            }
            // Strong and weak letters count alike.
            profile[x] = Math.sqrt(ink);
            mean += profile[x] / profile.length;
        }
        for (int x = 0; x < profile.length; x++) {
            profile[x] -= mean;
        }
        return profile;
    }

    /** The middles of the letters of a line, from its first to its last, in pixels of the line's picture. */
    public List<Double> middles(TypedLine line) {
        var profile = profile(line.picture());
        double first = phase(profile);
        var middles = new ArrayList<Double>();
        for (double at = first; at < profile.length; at += step) {
            middles.add(at);
        }
        return middles;
    }

    /** The offset, 0 up to one step, at which the seams between letters meet the least ink. */
    private double phase(double[] profile) {
        double lowest = Double.POSITIVE_INFINITY;
        double best = 0;
        double least = 0;
        for (double value : profile) {
            least = Math.min(least, value);
        }
        for (double offset = 0; offset < step; offset += 0.5) {
            double seams = 0;
            int count = 0;
            for (double seam = offset - step / 2; seam < profile.length; seam += step) {
                for (int k = -3; k <= 3; k++) {
                    int x = (int) Math.round(seam) + k;
                    if (x >= 0 && x < profile.length) {
                        double weight = 1 - Math.abs(k) / 4.0;
                        seams += weight * (profile[x] - least);
                        count++;
                    }
                }
            }
            double centers = 0;
            for (double center = offset; center < profile.length; center += step) {
                for (int k = -5; k <= 5; k++) {
                    int x = (int) Math.round(center) + k;
                    if (x >= 0 && x < profile.length) {
                        centers += (1 - Math.abs(k) / 6.0) * (profile[x] - least);
                    }
                }
            }
            double score = (seams - 0.35 * centers) / Math.max(1, count);
            if (score < lowest) {
                lowest = score;
                best = offset;
            }
        }
        return best;
    }
}
