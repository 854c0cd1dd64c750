package org.honorsdue.scanning.preparation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Homography.Point;

/**
 * Undoes the slant and the perspective of a photograph from the rules of the form: all level rules of a flat sheet run
 * to one vanishing point, all upright ones to another. What is left open is the turn by quarters and the ratio of
 * width to height, which the form decides.
 *
 * @param toPicture from the straightened picture to the one handed in
 */
public record Straightening(Homography toPicture, int width, int height) {
    /** How many rules each way it takes before a page is believed to be ruled. */
    private static final int ENOUGH = 2;

    private static final int LONG_SIDE = 1400;

    /** Finds it for writing that is dark on light; empty when the page is not ruled. */
    public static Optional<Straightening> of(Gray picture) {
        double scale = Math.min(1, (double) LONG_SIDE / Math.max(picture.width(), picture.height()));
        var small = picture.shrunk(scale);
        var strokes = Strokes.of(small);
        var level = StraightLines.level(strokes.level());
        var upright = StraightLines.level(mirrored(strokes.upright()));
        var levelPencil = Pencil.fit(level);
        var uprightPencil = Pencil.fit(upright);
        if (levelPencil.isEmpty() || uprightPencil.isEmpty()) {
            return Optional.empty();
        }
        return between(levelPencil.get(), uprightPencil.get(), small, scale);
    }

    private static Optional<Straightening> between(Pencil level, Pencil upright, Gray small, double scale) {
        double middleX = small.width() / 2.0;
        double middleY = small.height() / 2.0;
        var top = level.through(middleX, 0);
        var bottom = level.through(middleX, small.height());
        var left = upright.through(middleY, 0);
        var right = upright.through(middleY, small.width());
        var corners =
                new Point[] {crossing(top, left), crossing(top, right), crossing(bottom, right), crossing(bottom, left)
                };
        double width = (distance(corners[0], corners[1]) + distance(corners[3], corners[2])) / 2;
        double height = (distance(corners[0], corners[3]) + distance(corners[1], corners[2])) / 2;
        if (!(width > 50) || !(height > 50) || width > 4 * small.width() || height > 4 * small.height()) {
            return Optional.empty();
        }
        var square = Homography.fromUnitSquare(corners[0], corners[1], corners[2], corners[3]);
        // The straightened sheet must show all of the picture, also what lies outside the four lines.
        var back = square.inverse();
        double minX = 0;
        double maxX = 1;
        double minY = 0;
        double maxY = 1;
        for (var corner : new Point[] {
            new Point(0, 0),
            new Point(small.width(), 0),
            new Point(small.width(), small.height()),
            new Point(0, small.height())
        }) {
            var at = back.apply(corner);
            minX = Math.max(-0.6, Math.min(minX, at.x()));
            maxX = Math.min(1.6, Math.max(maxX, at.x()));
            minY = Math.max(-0.6, Math.min(minY, at.y()));
            maxY = Math.min(1.6, Math.max(maxY, at.y()));
        }
        int newWidth = (int) Math.round(width * (maxX - minX));
        int newHeight = (int) Math.round(height * (maxY - minY));
        var toSquare = Homography.scaling(1 / width, 1 / height, minX, minY);
        var toSmall = square.after(toSquare);
        return Optional.of(
                new Straightening(Homography.scaling(1 / scale, 1 / scale, 0, 0).after(toSmall), newWidth, newHeight));
    }

    private static Gray mirrored(Gray picture) {
        var made = new byte[picture.pixels().length];
        for (int y = 0; y < picture.height(); y++) {
            for (int x = 0; x < picture.width(); x++) {
                made[x * picture.height() + y] = picture.pixels()[y * picture.width() + x];
            }
        }
        return new Gray(picture.height(), picture.width(), made);
    }

    private static Point crossing(StraightLines.Line level, StraightLines.Line upright) {
        // y = m x + c and x = n y + d
        double y = (level.slope() * upright.start() + level.start()) / (1 - level.slope() * upright.slope());
        return new Point(upright.at(y), y);
    }

    private static double distance(Point a, Point b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    /**
     * Lines through one vanishing point: their slope changes in step with where they start, {@code slope = steady +
     * change * start}.
     */
    private record Pencil(double steady, double change) {
        StraightLines.Line through(double along, double across) {
            // across = slope * along + start, with slope = steady + change * start
            double start = (across - steady * along) / (1 + change * along);
            return new StraightLines.Line(steady + change * start, start, 0);
        }

        static Optional<Pencil> fit(List<StraightLines.Line> lines) {
            if (lines.size() < ENOUGH) {
                return Optional.empty();
            }
            Pencil best = new Pencil(lines.get(0).slope(), 0);
            double bestScore = score(best, lines);
            int many = Math.min(30, lines.size());
            for (int i = 0; i < many; i++) {
                for (int j = i + 1; j < many; j++) {
                    double apart = lines.get(i).start() - lines.get(j).start();
                    if (Math.abs(apart) < 60) {
                        continue;
                    }
                    double change = (lines.get(i).slope() - lines.get(j).slope()) / apart;
                    if (Math.abs(change) > 0.0006) {
                        continue;
                    }
                    var pencil = new Pencil(
                            lines.get(i).slope() - change * lines.get(i).start(), change);
                    double score = score(pencil, lines);
                    if (score > bestScore) {
                        best = pencil;
                        bestScore = score;
                    }
                }
            }
            return refined(best, lines);
        }

        private static double score(Pencil pencil, List<StraightLines.Line> lines) {
            double score = 0;
            for (var line : lines) {
                double off = line.slope() - pencil.steady - pencil.change * line.start();
                score += line.strength() * Math.exp(-off * off / (2 * 0.003 * 0.003));
            }
            return score;
        }

        private static Optional<Pencil> refined(Pencil rough, List<StraightLines.Line> lines) {
            var pencil = rough;
            var fitting = new ArrayList<StraightLines.Line>();
            for (int round = 0; round < 3; round++) {
                fitting.clear();
                double w = 0;
                double sc = 0;
                double sm = 0;
                double scc = 0;
                double scm = 0;
                for (var line : lines) {
                    double off = line.slope() - pencil.steady - pencil.change * line.start();
                    if (Math.abs(off) > 0.006) {
                        continue;
                    }
                    fitting.add(line);
                    double weight = line.strength();
                    w += weight;
                    sc += weight * line.start();
                    sm += weight * line.slope();
                    scc += weight * line.start() * line.start();
                    scm += weight * line.start() * line.slope();
                }
                double spread = scc - sc * sc / Math.max(w, 1e-9);
                if (fitting.size() < ENOUGH) {
                    return Optional.empty();
                }
                double change = spread / w > 900 ? (scm - sc * sm / w) / spread : 0;
                pencil = new Pencil((sm - change * sc) / w, change);
            }
            return Optional.of(pencil);
        }
    }
}
