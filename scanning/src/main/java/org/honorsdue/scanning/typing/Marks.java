package org.honorsdue.scanning.typing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Flattening;

/** The separate ink marks (8-connected) of a page, without its rules. Pixels of the page throughout. */
final class Marks {
    /** A straight stroke longer than this is a rule. */
    private static final int LONGEST = 95;

    /** A rule is no thicker than this; what is thicker there is a letter crossing it. */
    private static final int THICKEST = 9;

    /** What is larger than this is no letter by itself, in pixels. */
    private static final int LETTER_HEIGHT = 58;

    private static final int LETTERS_WIDTH = 200;

    /** How much darker than paper, step by step, a large mark is looked at again. */
    private static final int[] DEEPER = {45, 70, 100, 130};

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
        collect(ink, smooth);
    }

    /** The number of the mark at that pixel; 0 outside the page too. */
    int label(int x, int y) {
        return x < 0 || y < 0 || x >= width || y >= height ? 0 : label[y * width + x];
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

    /**
     * Marks too large for a letter are letters run together by a stain, a fold or a stamp; they are taken apart at
     * deeper and deeper shades, which letters keep longest.
     */
    private void collect(boolean[] ink, Gray smooth) {
        var places = new int[ink.length];
        int count = 0;
        for (int i = 0; i < ink.length; i++) {
            if (ink[i]) {
                places[count++] = i;
            }
        }
        for (int level = 0; level <= DEEPER.length && count > 0; level++) {
            int before = marks.size();
            flood(ink, places, count);
            if (level == DEEPER.length) {
                break;
            }
            var large = new boolean[marks.size() + 1];
            boolean any = false;
            for (var mark : marks.subList(before, marks.size())) {
                large[mark.id()] = mark.height() > LETTER_HEIGHT || mark.width() > LETTERS_WIDTH;
                any |= large[mark.id()];
            }
            if (!any) {
                break;
            }
            int kept = 0;
            for (int k = 0; k < count; k++) {
                int at = places[k];
                if (label[at] > before && large[label[at]]) {
                    label[at] = 0;
                    ink[at] = (smooth.pixels()[at] & 255) < Flattening.PAPER - DEEPER[level];
                    if (ink[at]) {
                        places[kept++] = at;
                    }
                } else {
                    ink[at] = false;
                }
            }
            count = kept;
            for (int k = before; k < marks.size(); k++) {
                if (large[marks.get(k).id()]) {
                    marks.set(k, new Mark(marks.get(k).id(), 0, 0, 0, 0, 0));
                }
            }
        }
        marks.removeIf(mark -> mark.area() == 0);
    }

    private void flood(boolean[] ink, int[] places, int count) {
        var stack = new int[256];
        int next = marks.size();
        for (int p = 0; p < count; p++) {
            int start = places[p];
            if (!ink[start] || label[start] != 0) {
                continue;
            }
            int id = ++next;
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
