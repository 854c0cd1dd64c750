package org.honorsdue.scanning.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How well a form lies on a ruled page, and where: {@code pixel = scale * percent + move}, apart for the two
 * directions.
 *
 * @param likeness 0 to 1: how many of the form's rules are on the page, and how many of the page's rules are the form's
 */
public record FormFit(FormLayout layout, double scaleX, double moveX, double scaleY, double moveY, double likeness) {
    /** How far a rule may stand from where the table has it, in hundredths of the page. */
    private static final double SLACK = 0.75;

    /** Width over height of the paper may differ this much from the table's. */
    private static final double SHAPE_SLACK = 1.3;

    private record Guess(double scale, double move, double score) {}

    private record Level(double at, double length) {}

    public Area place(FormPart part) {
        var place = part.place();
        return Area.between(x(place.x()), y(place.y()), x(place.right()), y(place.bottom()));
    }

    public double x(double percent) {
        return scaleX * percent + moveX;
    }

    public double y(double percent) {
        return scaleY * percent + moveY;
    }

    /** The best lie of that form on the page; empty if nothing of it is recognised. */
    public static Optional<FormFit> of(RuledPage page, FormLayout layout) {
        var levels = levels(page, true);
        var uprights = levels(page, false);
        if (levels.size() < 3 || uprights.size() < 2) {
            return Optional.empty();
        }
        var down = guesses(levels, printed(layout, true), page.height());
        var across = guesses(uprights, printed(layout, false), page.width());
        FormFit best = null;
        for (var y : down) {
            for (var x : across) {
                double shape = x.scale / y.scale / FormLayout.PAGE_SHAPE;
                if (shape > SHAPE_SLACK || shape < 1 / SHAPE_SLACK) {
                    continue;
                }
                var fit = new FormFit(layout, x.scale, x.move, y.scale, y.move, 0);
                double found = fit.foundOn(page);
                if (found > 0.25) {
                    double likeness = 2 * found * fit.explained(page) / (found + fit.explained(page));
                    if (best == null || likeness > best.likeness) {
                        best = new FormFit(layout, x.scale, x.move, y.scale, y.move, likeness);
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The share of the form's rules, as far as they fall on the picture, that are there. */
    private double foundOn(RuledPage page) {
        double found = 0;
        double all = 0;
        int slackY = (int) Math.round(SLACK * scaleY);
        int slackX = (int) Math.round(SLACK * scaleX);
        for (var box : layout.boxes()) {
            var place = place(box);
            for (double y : new double[] {place.y(), place.bottom()}) {
                if (y < 0 || y >= page.height()) {
                    continue;
                }
                double best = 0;
                for (int off = -slackY; off <= slackY; off++) {
                    best = Math.max(
                            best,
                            page.levelSupport((int) Math.round(y) + off, place.x() + slackX, place.right() - slackX));
                }
                found += best * place.width();
                all += place.width();
            }
            for (double x : new double[] {place.x(), place.right()}) {
                if (x < 0 || x >= page.width()) {
                    continue;
                }
                double best = 0;
                for (int off = -slackX; off <= slackX; off++) {
                    best = Math.max(
                            best,
                            page.uprightSupport(
                                    (int) Math.round(x) + off,
                                    place.y() + slackY * 0.5,
                                    place.bottom() - slackY * 0.5));
                }
                found += best * place.height() * 2;
                all += place.height() * 2;
            }
        }
        return all == 0 ? 0 : found / all;
    }

    /** The share of the page's rules that the form accounts for. */
    private double explained(RuledPage page) {
        double explained = 0;
        double all = 1;
        int slackY = (int) Math.round(SLACK * scaleY);
        int slackX = (int) Math.round(SLACK * scaleX);
        var near = new boolean[page.height()];
        var nearX = new boolean[page.width()];
        for (var part : layout.parts()) {
            if (part.kind() == FormPart.Kind.TITLE
                    || part.kind() == FormPart.Kind.TICK
                    || part.kind() == FormPart.Kind.FOOTER) {
                continue;
            }
            var place = place(part);
            mark(near, place.y(), slackY);
            mark(near, place.bottom(), slackY);
            mark(nearX, place.x(), slackX);
            mark(nearX, place.right(), slackX);
        }
        for (int y = 0; y < page.height(); y++) {
            int length = page.levelPixels(y, 0, page.width());
            all += length;
            explained += near[y] ? length : 0;
        }
        for (int x = 0; x < page.width(); x++) {
            int length = page.uprightPixels(x, 0, page.height());
            all += length;
            explained += nearX[x] ? length : 0;
        }
        return explained / all;
    }

    private static void mark(boolean[] near, double at, int slack) {
        for (int i = (int) Math.round(at) - slack; i <= Math.round(at) + slack; i++) {
            if (i >= 0 && i < near.length) {
                near[i] = true;
            }
        }
    }

    /** Rows (or columns) with much rule in them. */
    private static List<Level> levels(RuledPage page, boolean rows) {
        int lines = rows ? page.height() : page.width();
        int length = rows ? page.width() : page.height();
        var sums = new double[lines];
        for (int i = 0; i < lines; i++) {
            sums[i] = rows ? page.levelPixels(i, 0, length) : page.uprightPixels(i, 0, length);
        }
        var found = new ArrayList<Level>();
        int apart = Math.max(3, lines / 250);
        for (int i = 0; i < lines; i++) {
            boolean peak = sums[i] > length * (rows ? 0.06 : 0.02);
            double weight = 0;
            double moment = 0;
            for (int k = Math.max(0, i - apart); peak && k <= Math.min(lines - 1, i + apart); k++) {
                peak = sums[k] < sums[i] || (sums[k] == sums[i] && k >= i);
                weight += sums[k];
                moment += k * sums[k];
            }
            if (peak) {
                found.add(new Level(moment / weight, sums[i]));
            }
        }
        return found;
    }

    private static List<Level> printed(FormLayout layout, boolean rows) {
        var lengths = new TreeMap<Double, Double>();
        for (var box : layout.boxes()) {
            var place = box.place();
            lengths.merge(rows ? place.y() : place.x(), rows ? place.width() : place.height(), Double::sum);
            lengths.merge(rows ? place.bottom() : place.right(), rows ? place.width() : place.height(), Double::sum);
        }
        var levels = new ArrayList<Level>();
        // A rule between two boxes was counted from both sides.
        lengths.forEach((at, length) -> levels.add(new Level(at, Math.min(length, rows ? 94 : 91))));
        return levels;
    }

    private static List<Guess> guesses(List<Level> seen, List<Level> printed, int size) {
        var guesses = new ArrayList<Guess>();
        int ends = Math.min(5, seen.size() - 1);
        double longest = seen.stream().mapToDouble(Level::length).max().orElse(1);
        double longestPrinted =
                printed.stream().mapToDouble(Level::length).max().orElse(1);
        for (int first = 0; first < ends; first++) {
            for (int last = seen.size() - 1; last > seen.size() - 1 - ends && last > first; last--) {
                for (int i = 0; i < printed.size(); i++) {
                    for (int j = i + 1; j < printed.size(); j++) {
                        double scale =
                                (seen.get(last).at - seen.get(first).at) / (printed.get(j).at - printed.get(i).at);
                        // The page fills at least a third of the picture and is at most three pictures large.
                        if (scale * 100 < size / 3.0 || scale * 100 > size * 3.0) {
                            continue;
                        }
                        double move = seen.get(first).at - scale * printed.get(i).at;
                        guesses.add(new Guess(
                                scale, move, likeness(seen, longest, printed, longestPrinted, scale, move, size)));
                    }
                }
            }
        }
        guesses.sort(Comparator.comparingDouble(Guess::score).reversed());
        var different = new ArrayList<Guess>();
        for (var guess : guesses) {
            boolean known = different.stream()
                    .anyMatch(other -> Math.abs(other.scale - guess.scale) < other.scale * 0.004
                            && Math.abs(other.move - guess.move) < size * 0.004);
            if (!known) {
                different.add(guess);
            }
            if (different.size() == 14) {
                break;
            }
        }
        return different;
    }

    private static double likeness(
            List<Level> seen,
            double longest,
            List<Level> printed,
            double longestPrinted,
            double scale,
            double move,
            int size) {
        double found = 0;
        double wanted = 0;
        double whole = 0;
        double slack = SLACK * scale * 1.2;
        int near = 0;
        for (var level : printed) {
            whole += level.length;
            double at = scale * level.at + move;
            if (at < 0 || at >= size) {
                continue;
            }
            while (near < seen.size() - 1 && Math.abs(seen.get(near + 1).at - at) <= Math.abs(seen.get(near).at - at)) {
                near++;
            }
            var line = seen.get(near);
            double agreement = Math.max(0, 1 - Math.abs(line.at - at) / slack);
            found += level.length * agreement * Math.min(1, line.length / longest / (level.length / longestPrinted));
            wanted += level.length;
        }
        double explained = 0;
        double all = 0;
        near = 0;
        for (var line : seen) {
            double at = (line.at - move) / scale;
            while (near < printed.size() - 1
                    && Math.abs(printed.get(near + 1).at - at) <= Math.abs(printed.get(near).at - at)) {
                near++;
            }
            explained += line.length * Math.max(0, 1 - Math.abs(printed.get(near).at - at) * scale / slack);
            all += line.length;
        }
        if (wanted == 0 || found + explained == 0) {
            return 0;
        }
        double recall = found / wanted;
        double precision = explained / all;
        // A form that lies mostly outside the picture must not win by the little that is in it.
        return 2 * recall * precision / (recall + precision) * Math.min(1, wanted / whole * 1.5 + 0.1);
    }

    /**
     * Where each box really stands on this page, in its pixels: every rule of the table is looked for near its place,
     * in order from top to bottom; a rule that has faded away keeps the place between its neighbours.
     */
    public Map<FormPart, Area> boxes(RuledPage page) {
        var rows = settle(page);
        var found = new HashMap<FormPart, Area>();
        for (var part : layout.parts()) {
            if (part.kind() == FormPart.Kind.BOX
                    || part.kind() == FormPart.Kind.COLUMN
                    || part.kind() == FormPart.Kind.PART) {
                var place = part.place();
                double top = rows.getOrDefault(place.y(), y(place.y()));
                double bottom = rows.getOrDefault(place.bottom(), y(place.bottom()));
                double left = nearestUpright(page, x(place.x()), top, bottom);
                double right = nearestUpright(page, x(place.right()), top, bottom);
                top = nearestLevel(page, top, left, right);
                bottom = nearestLevel(page, bottom, left, right);
                found.put(part, Area.between(left, top, right, bottom));
            }
        }
        return found;
    }

    private double nearestUpright(RuledPage page, double x, double top, double bottom) {
        double reach = 1.3 * scaleX;
        double best = x;
        double bestScore = 0.35;
        double trim = (bottom - top) * 0.12;
        for (int at = (int) (x - reach); at <= x + reach; at++) {
            double support = page.uprightSupport(at, top + trim, bottom - trim);
            double off = (at - x) / reach;
            double score = support - 0.35 * off * off;
            if (score > bestScore) {
                bestScore = score;
                best = at;
            }
        }
        return best;
    }

    private double nearestLevel(RuledPage page, double y, double left, double right) {
        double reach = 0.35 * scaleY;
        double best = y;
        double bestScore = 0.3;
        for (int at = (int) Math.round(y - reach); at <= y + reach; at++) {
            double off = (at - y) / reach;
            double score = page.levelSupport(at, left, right) - 0.25 * off * off;
            if (score > bestScore) {
                bestScore = score;
                best = at;
            }
        }
        return best;
    }

    /** Every level of the table with the row it really has. */
    private Map<Double, Double> settle(RuledPage page) {
        var wanted = new TreeSet<Double>();
        for (var part : layout.parts()) {
            if (part.kind() == FormPart.Kind.BOX
                    || part.kind() == FormPart.Kind.COLUMN
                    || part.kind() == FormPart.Kind.PART) {
                wanted.add(part.place().y());
                wanted.add(part.place().bottom());
            }
        }
        var levels = new ArrayList<>(wanted);
        int reach = (int) Math.ceil(1.4 * scaleY);
        int offsets = 2 * reach + 1;
        // Best total support when level n stands at its offset and all above it stand higher up.
        var best = new double[levels.size()][offsets];
        var from = new int[levels.size()][offsets];
        for (int n = 0; n < levels.size(); n++) {
            double at = y(levels.get(n));
            for (int k = 0; k < offsets; k++) {
                double off = (k - reach) / (double) reach;
                double own = support(page, levels.get(n), (int) Math.round(at) + k - reach) - 0.3 * off * off;
                double before = 0;
                int which = -1;
                if (n > 0) {
                    before = Double.NEGATIVE_INFINITY;
                    double above = y(levels.get(n - 1));
                    double least = 0.45 * (at - above);
                    for (int j = 0; j < offsets; j++) {
                        boolean ordered = Math.round(above) + j - reach + least <= Math.round(at) + k - reach;
                        // Neighbouring rules move together more often than apart.
                        double apart = (j - k) / (double) reach;
                        double total = best[n - 1][j] - 0.08 * apart * apart;
                        if (ordered && total > before) {
                            before = total;
                            which = j;
                        }
                    }
                }
                best[n][k] = own + before;
                from[n][k] = which;
            }
        }
        var settled = new HashMap<Double, Double>();
        int last = levels.size() - 1;
        int k = 0;
        for (int j = 1; j < offsets; j++) {
            if (best[last][j] > best[last][k]) {
                k = j;
            }
        }
        for (int n = last; n >= 0 && k >= 0; n--) {
            settled.put(levels.get(n), (double) Math.round(y(levels.get(n))) + k - reach);
            k = from[n][k];
        }
        return settled;
    }

    /** The share of the rules that the table draws at that level which is found in that row of the page. */
    private double support(RuledPage page, double level, int row) {
        double found = 0;
        double all = 0;
        for (var part : layout.parts()) {
            if (part.kind() == FormPart.Kind.BOX
                    || part.kind() == FormPart.Kind.COLUMN
                    || part.kind() == FormPart.Kind.PART) {
                var place = part.place();
                if (place.y() == level || place.bottom() == level) {
                    double left = x(place.x());
                    double right = x(place.right());
                    double length = right - left;
                    double best = 0;
                    for (int k = -1; k <= 1; k++) {
                        best = Math.max(best, page.levelSupport(row + k, left, right) - 0.02 * Math.abs(k));
                    }
                    found += length * best;
                    all += length;
                }
            }
        }
        return all == 0 ? 0 : found / all;
    }
}
