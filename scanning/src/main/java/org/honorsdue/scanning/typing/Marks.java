package org.honorsdue.scanning.typing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.picture.Gray;

/** The separate ink marks (8-connected) of a page, without its rules. Pixels of the page throughout. */
final class Marks {
    /** A straight stroke longer than this is a rule. */
    private static final int LONGEST = 95;

    /** A rule is no thicker than this; what is thicker there is a letter crossing it. */
    private static final int THICKEST = 9;

    /** One mark; far edges exclusive. */
    record Mark(int id, int left, int top, int right, int bottom, int area) {
        int width() {
            return right - left;
        }

        int height() {
            return bottom - top;
        }

        double middleX() {
            return (left + right) / 2.0;
        }

        double middleY() {
            return (top + bottom) / 2.0;
        }
    }

    /** The number of the mark at each pixel; 0 is paper, {@link #RULE} a rule. */
    final int[] label;

    static final int RULE = -1;

    final int width;
    final int height;
    final List<Mark> marks = new ArrayList<>();

    /**
     * @param smooth the page with even paper, its grain smoothed
     * @param threshold darker than this is ink
     * @param boxes where rules are known to run, so that short ones are known too
     */
    Marks(Gray smooth, int threshold, Iterable<Area> boxes) {
        width = smooth.width();
        height = smooth.height();
        var ink = new boolean[width * height];
        for (int i = 0; i < ink.length; i++) {
            ink[i] = (smooth.pixels()[i] & 255) < threshold;
        }
        var rule = new boolean[ink.length];
        longRuns(ink, rule, 1, width, width, height);
        longRuns(ink, rule, width, 1, height, width);
        for (var box : boxes) {
            knownRules(ink, rule, box);
        }
        label = new int[ink.length];
        for (int i = 0; i < ink.length; i++) {
            if (rule[i]) {
                label[i] = RULE;
                ink[i] = false;
            }
        }
        collect(ink);
    }

    /** Long straight strokes, a little slanted ones too. */
    private static void longRuns(boolean[] ink, boolean[] rule, int along, int across, int length, int lines) {
        for (int line = 1; line < lines - 1; line++) {
            int begun = -1;
            int last = 0;
            int filled = 0;
            for (int i = 0; i <= length; i++) {
                int at = line * across + i * along;
                boolean dark = i < length && (ink[at] || ink[at - across] || ink[at + across]);
                if (dark) {
                    if (begun < 0) {
                        begun = i;
                        filled = 0;
                    }
                    last = i;
                    filled++;
                } else if (begun >= 0 && (i - last > 2 || i == length)) {
                    if (last - begun >= LONGEST && filled * 20 > (last - begun) * 19) {
                        for (int k = begun; k <= last; k++) {
                            eraseThin(ink, rule, line, k, along, across, lines);
                        }
                    }
                    begun = -1;
                }
            }
        }
    }

    private void knownRules(boolean[] ink, boolean[] rule, Area box) {
        int left = (int) Math.max(1, box.x());
        int right = (int) Math.min(width - 2, box.right());
        int top = (int) Math.max(1, box.y());
        int bottom = (int) Math.min(height - 2, box.bottom());
        for (int off = -5; off <= 5; off++) {
            for (int y : new int[] {top + off, bottom + off}) {
                for (int x = left; y > 0 && y < height - 1 && x <= right; x++) {
                    eraseThin(ink, rule, y, x, 1, width, height);
                }
            }
            for (int x : new int[] {left + off, right + off}) {
                for (int y = top; x > 0 && x < width - 1 && y <= bottom; y++) {
                    eraseThin(ink, rule, x, y, width, 1, width);
                }
            }
        }
    }

    /** Erases the stroke at that place if it is no thicker than a rule. */
    private static void eraseThin(boolean[] ink, boolean[] rule, int line, int at, int along, int across, int lines) {
        int center = line;
        if (!ink[center * across + at * along]) {
            if (ink[(center - 1) * across + at * along]) {
                center--;
            } else if (ink[(center + 1) * across + at * along]) {
                center++;
            } else {
                return;
            }
        }
        int from = center;
        while (from > 0 && center - from <= THICKEST && ink[(from - 1) * across + at * along]) {
            from--;
        }
        int to = center;
        while (to < lines - 1 && to - center <= THICKEST && ink[(to + 1) * across + at * along]) {
            to++;
        }
        if (to - from + 1 <= THICKEST) {
            for (int k = from; k <= to; k++) {
                rule[k * across + at * along] = true;
            }
        }
    }

    private void collect(boolean[] ink) {
        var stack = new int[256];
        for (int start = 0; start < ink.length; start++) {
            if (!ink[start] || label[start] != 0) {
                continue;
            }
            int id = marks.size() + 1;
            int depth = 0;
            stack[depth++] = start;
            label[start] = id;
            int left = width;
            int right = 0;
            int top = height;
            int bottom = 0;
            int area = 0;
            while (depth > 0) {
                int at = stack[--depth];
                int x = at % width;
                int y = at / width;
                area++;
                left = Math.min(left, x);
                right = Math.max(right, x);
                top = Math.min(top, y);
                bottom = Math.max(bottom, y);
                for (int dy = -1; dy <= 1; dy++) {
                    for (int dx = -1; dx <= 1; dx++) {
                        int nx = x + dx;
                        int ny = y + dy;
                        if (nx < 0 || ny < 0 || nx >= width || ny >= height) {
                            continue;
                        }
                        int to = ny * width + nx;
                        if (ink[to] && label[to] == 0) {
                            label[to] = id;
                            if (depth == stack.length) {
                                stack = Arrays.copyOf(stack, depth * 2);
                            }
                            stack[depth++] = to;
                        }
                    }
                }
            }
            marks.add(new Mark(id, left, top, right + 1, bottom + 1, area));
        }
    }
}
