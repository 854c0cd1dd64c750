package org.honorsdue.scanning.preparation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.honorsdue.scanning.picture.Gray;

/**
 * The long straight lines of a picture, near level and near upright, by the Hough transform. A line near level is
 * {@code y = slope * x + start}; near upright the same with x and y exchanged.
 */
final class StraightLines {
    /** Lines leaning more than this are not looked for; such a page is refused rather than misread. */
    private static final double STEEPEST = Math.tan(Math.toRadians(16));

    private static final int SLOPES = 321;

    private StraightLines() {}

    /** @param strength how much ink lies on it, in pixels of full darkness */
    record Line(double slope, double start, double strength) {
        double at(double along) {
            return slope * along + start;
        }
    }

    /** @param ink the level strokes, see {@link Strokes}; for upright lines the upright strokes with x and y exchanged */
    static List<Line> level(Gray ink) {
        int width = ink.width();
        int height = ink.height();
        int margin = (int) (STEEPEST * width / 2) + 2;
        int bins = height + 2 * margin;
        var votes = new int[SLOPES][bins];
        double center = width / 2.0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int dark = ink.at(x, y);
                if (dark < 16) {
                    continue;
                }
                int weight = Math.min(dark, 72);
                for (int s = 0; s < SLOPES; s++) {
                    double slope = STEEPEST * (2.0 * s / (SLOPES - 1) - 1);
                    int start = (int) (y - slope * (x - center) + margin + 0.5);
                    votes[s][start] += weight;
                }
            }
        }
        return peaks(votes, margin, center, width);
    }

    private static List<Line> peaks(int[][] votes, int margin, double center, int width) {
        int strongest = 0;
        for (var row : votes) {
            for (int vote : row) {
                strongest = Math.max(strongest, vote);
            }
        }
        var lines = new ArrayList<Line>();
        int floor = Math.max(strongest / 10, width * 3);
        for (int s = 1; s < SLOPES - 1; s++) {
            for (int start = 2; start < votes[s].length - 2; start++) {
                int vote = votes[s][start];
                if (vote < floor || !tallest(votes, s, start)) {
                    continue;
                }
                double slope = STEEPEST * (2.0 * s / (SLOPES - 1) - 1);
                double sum = 0;
                double moment = 0;
                for (int k = -2; k <= 2; k++) {
                    sum += votes[s][start + k];
                    moment += k * (double) votes[s][start + k];
                }
                double middle = start - margin + moment / sum;
                lines.add(new Line(slope, middle - slope * center, vote / 72.0));
            }
        }
        lines.sort(Comparator.comparingDouble(Line::strength).reversed());
        return lines.size() > 80 ? List.copyOf(lines.subList(0, 80)) : lines;
    }

    private static boolean tallest(int[][] votes, int s, int start) {
        int vote = votes[s][start];
        for (int i = Math.max(0, s - 12); i <= Math.min(SLOPES - 1, s + 12); i++) {
            for (int k = -5; k <= 5; k++) {
                int at = start + k;
                if (at < 0 || at >= votes[i].length || (i == s && k == 0)) {
                    continue;
                }
                boolean before = i < s || (i == s && k < 0);
                if (votes[i][at] > vote || (before && votes[i][at] == vote)) {
                    return false;
                }
            }
        }
        return true;
    }
}
