package org.honorsdue.scanning.typing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Flattening;
import org.honorsdue.scanning.typing.Marks.Mark;

/**
 * Finds the typed lines of a box on a page drawn at 300 dots to the inch of an original letter sheet. Printed captions
 * are told from typing by their size and by standing at the box's head.
 */
public final class TypedLines {
    /** A mark taller than this is no letter: a signature, a stamp, a stain's edge. */
    private static final int TOO_TALL = 62;

    /** Captions are set in the upper part of a box: their last line stands above this depth. */
    private static final int CAPTION_DEPTH = 52;

    /** Less ink than this, in pixels, is dirt. */
    private static final int INKED = 70;

    /** So far from the side of a box its rule may still show, in pixels. */
    private static final int RULE_REST = 8;

    /** Clean paper left around the line, in pixels. */
    static final int MARGIN = 14;

    private final Gray page;
    private final Marks marks;
    private final Gray soft;
    private final int grain;
    /** Capitals and figures of the typing are taller than this, capitals of captions lower. */
    private final double tall;

    /**
     * @param page the straightened page with even paper
     * @param boxes every box of the form on it
     */
    public TypedLines(Gray page, Collection<Area> boxes) {
        this.page = page;
        var smooth = page.localMean(1);
        this.soft = smooth.localMean(2);
        int threshold = threshold(smooth);
        this.grain = Flattening.PAPER - threshold;
        this.marks = new Marks(smooth, threshold, boxes);
        this.tall = tall(marks.marks);
    }

    /** Darker than paper by several times the grain of the picture. */
    private static int threshold(Gray page) {
        var counts = new int[256];
        for (int y = page.height() / 8; y < page.height() * 7 / 8; y += 2) {
            for (int x = page.width() / 8; x < page.width() * 7 / 8; x += 2) {
                counts[page.at(x, y)]++;
            }
        }
        int paper = Flattening.PAPER;
        for (int value = 150; value < 256; value++) {
            if (counts[value] > counts[paper]) {
                paper = value;
            }
        }
        // The bright side of the peak is grain alone; ink lies on the other.
        long brighter = 0;
        for (int value = paper; value < 256; value++) {
            brighter += counts[value];
        }
        long within = 0;
        int grain = 0;
        while (within < brighter * 0.68 && paper + grain < 255) {
            within += counts[paper + grain++];
        }
        return paper - Math.max(16, Math.min(60, (int) (4.5 * grain)));
    }

    /** Halfway between the height of caption capitals and that of typed ones, which are the two commonest heights. */
    private static double tall(List<Mark> marks) {
        var counts = new double[TOO_TALL + 3];
        for (var mark : marks) {
            if (mark.height() <= TOO_TALL && mark.height() >= 8 && mark.width() <= 60 && mark.area() >= 20) {
                counts[mark.height()]++;
            }
        }
        int print = commonest(counts, 11, 20);
        int typed = commonest(counts, Math.max(21, print + 5), 42);
        return (print + typed) / 2.0;
    }

    private static int commonest(double[] counts, int from, int to) {
        int best = from;
        for (int i = from; i <= to; i++) {
            if (counts[i - 1] + 2 * counts[i] + counts[i + 1]
                    > counts[best - 1] + 2 * counts[best] + counts[best + 1]) {
                best = i;
            }
        }
        return best;
    }

    /** The lines from top to bottom; none if the box holds no typing. */
    public List<TypedLine> in(Area box) {
        var inside = typed(box);
        var lines = new ArrayList<TypedLine>();
        for (var row : rows(inside)) {
            line(inside, row, box).ifPresent(lines::add);
        }
        return lines;
    }

    /** Whether anything at all stands in the box beside its caption. */
    public boolean inked(Area box) {
        return typed(box).stream().mapToInt(Mark::area).sum() >= INKED;
    }

    /** The marks in the box without those of its caption. */
    private List<Mark> typed(Area box) {
        var inside = new ArrayList<Mark>();
        for (var mark : marks.marks) {
            if (mark.middleX() > box.x() + 2
                    && mark.middleX() < box.right() - 2
                    && mark.middleY() > box.y() - 2
                    && mark.middleY() < box.bottom() + 6
                    && !edgeRest(mark, box)) {
                inside.add(mark);
            }
        }
        var printed = caption(inside, box);
        inside.removeIf(mark -> printed.contains(mark.id()));
        return inside;
    }

    /** What is left of an upright rule at the side of the box. */
    private static boolean edgeRest(Mark mark, Area box) {
        boolean atSide = mark.right() < box.x() + 9 || mark.left() > box.right() - 9;
        return atSide && mark.width() < 9;
    }

    /** The marks of the printed caption: low letters on one of the first lines of the box. */
    private Set<Integer> caption(List<Mark> inside, Area box) {
        var small = new ArrayList<Mark>();
        for (var mark : inside) {
            if (mark.bottom() < box.y() + CAPTION_DEPTH
                    && mark.height() >= 8
                    && mark.height() <= 60
                    && mark.width() < 90) {
                small.add(mark);
            }
        }
        small.sort(Comparator.comparingDouble(Mark::bottom));
        var printed = new HashSet<Integer>();
        var line = new ArrayList<Mark>();
        double before = box.y();
        for (int i = 0; i <= small.size(); i++) {
            if (i == small.size()
                    || (!line.isEmpty()
                            && small.get(i).bottom() - line.get(line.size() - 1).bottom() > 4)) {
                int low = line.stream()
                        .filter(mark -> mark.height() < tall)
                        .mapToInt(TypedLines::letters)
                        .sum();
                int all = line.stream().mapToInt(TypedLines::letters).sum();
                double baseline = line.isEmpty() ? 0 : line.get(line.size() / 2).bottom();
                // A second caption line follows close on the first.
                if (low >= 3 && low * 5 >= all * 4 && baseline - before < 40) {
                    for (var mark : inside) {
                        boolean onLine =
                                mark.bottom() <= baseline + 7 && mark.top() > baseline - 30 && mark.height() < tall + 4;
                        if (onLine) {
                            printed.add(mark.id());
                        }
                    }
                    before = baseline;
                }
                line.clear();
            }
            if (i < small.size()) {
                line.add(small.get(i));
            }
        }
        return printed;
    }

    /** How many letters a mark may be: on a coarse picture the small print runs together. */
    private static int letters(Mark mark) {
        return Math.max(1, (int) Math.round(mark.width() / (0.8 * mark.height())));
    }

    /** Marks that stand on one baseline. */
    private record Row(double baseline, double height, int letters) {
        double top() {
            return baseline - height;
        }
    }

    private List<Row> rows(List<Mark> inside) {
        var letters = new ArrayList<Mark>();
        for (var mark : inside) {
            if (mark.height() >= tall
                    && mark.height() <= TOO_TALL
                    && mark.width() <= 160
                    && mark.area() >= 30
                    && mark.width() >= 4) {
                letters.add(mark);
            }
        }
        letters.sort(Comparator.comparingDouble(Mark::middleY));
        var rows = new ArrayList<Row>();
        var group = new ArrayList<Mark>();
        for (var mark : letters) {
            double middle = group.stream().mapToDouble(Mark::middleY).average().orElse(0);
            if (!group.isEmpty() && mark.middleY() - middle > tall * 0.9) {
                rows.add(row(group));
                group.clear();
            }
            group.add(mark);
        }
        if (!group.isEmpty()) {
            rows.add(row(group));
        }
        return apart(rows);
    }

    /** Lines of typing do not overlap: of two that do, the one with fewer letters is dirt. */
    private List<Row> apart(List<Row> rows) {
        var kept = new ArrayList<Row>();
        for (var row : rows) {
            var last = kept.isEmpty() ? row : kept.get(kept.size() - 1);
            if (last == row || row.baseline() - last.baseline() > tall * 1.5) {
                kept.add(row);
            } else if (row.letters() > last.letters()) {
                kept.set(kept.size() - 1, row);
            }
        }
        return kept;
    }

    private static Row row(List<Mark> group) {
        var bottoms = group.stream().mapToInt(Mark::bottom).sorted().toArray();
        var heights = group.stream().mapToInt(Mark::height).sorted().toArray();
        return new Row(bottoms[bottoms.length / 2], heights[heights.length / 2], group.size());
    }

    private Optional<TypedLine> line(List<Mark> inside, Row row, Area box) {
        double above = row.top() - 0.35 * row.height();
        double below = row.baseline() + 0.4 * row.height();
        var wanted = new HashSet<Integer>();
        int fromX = Integer.MAX_VALUE;
        int toX = 0;
        for (var mark : inside) {
            boolean inRow = mark.middleY() > above && mark.middleY() < below;
            if (inRow && mark.height() <= TOO_TALL && mark.area() >= 6) {
                wanted.add(mark.id());
                if (mark.area() >= 20) {
                    fromX = Math.min(fromX, mark.left());
                    toX = Math.max(toX, mark.right());
                }
            }
        }
        if (toX - fromX < 4) {
            return Optional.empty();
        }
        int fromY = (int) (row.top() - 0.3 * row.height());
        int toY = (int) (row.baseline() + 0.35 * row.height());
        int top = (int) row.top();
        int foot = (int) row.baseline();
        fromX = Math.min(fromX, faintest(fromX - 2, (int) box.x() + 7, top, foot));
        toX = Math.max(toX, faintest(toX + 2, (int) box.right() - 7, top, foot));
        return Optional.of(new TypedLine(
                cut(wanted, fromX, fromY, toX, toY, box), Area.between(fromX, fromY, toX, toY), row.baseline(), grain));
    }

    /**
     * How far the line goes on in ink too faint to be a mark: the last such column on the way to the side of the box. A
     * fold that runs on above and below the line is no ink.
     */
    private int faintest(int from, int to, int top, int foot) {
        int direction = to < from ? -1 : 1;
        int last = from;
        int run = 0;
        int empty = 0;
        for (int x = from; (to - x) * direction > 0 && x > 2 && x < page.width() - 2; x += direction) {
            int inside = faint(x, top, foot);
            int outside = faint(x, top - 16, top - 4) + faint(x, foot + 8, foot + 20);
            run = inside >= 5 && outside <= 6 ? run + 1 : 0;
            empty = run > 0 ? 0 : empty + 1;
            if (run >= 5) {
                last = x;
            }
            // After two empty letter places the line is over.
            if (empty > 75) {
                break;
            }
        }
        return last;
    }

    private int faint(int x, int top, int foot) {
        int faint = 0;
        for (int y = Math.max(0, top); y < Math.min(page.height(), foot); y++) {
            boolean rule = marks.label[y * page.width() + x] == Marks.RULE;
            faint += !rule && soft.at(x, y) < Flattening.PAPER - 4 - grain * 2 / 5 ? 1 : 0;
        }
        return faint;
    }

    /** Paper outside the box is left out: the faint rest of its rule would be read as a figure. */
    private Gray cut(Set<Integer> wanted, int fromX, int fromY, int toX, int toY, Area box) {
        int width = toX - fromX + 2 * MARGIN;
        int height = toY - fromY + 2 * MARGIN;
        var made = Gray.blank(width, height, Flattening.PAPER);
        for (int y = MARGIN / 2; y < height - MARGIN / 2; y++) {
            for (int x = 0; x < width; x++) {
                int px = fromX + x - MARGIN;
                int py = fromY + y - MARGIN;
                boolean outside = px < box.x() + RULE_REST || px >= box.right() - RULE_REST;
                if (outside && marks.label(px, py) <= 0) {
                    continue;
                }
                if (px >= 2 && py >= 2 && px < page.width() - 2 && py < page.height() - 2 && kept(wanted, px, py)) {
                    made.pixels()[y * width + x] = page.pixels()[py * page.width() + px];
                }
            }
        }
        return made;
    }

    /** Wanted ink and the soft edge around it, and plain paper; not what belongs to caption, rules and dirt. */
    private boolean kept(Set<Integer> wanted, int x, int y) {
        int own = marks.label[y * marks.width + x];
        if (own != 0) {
            return own != Marks.RULE && wanted.contains(own);
        }
        boolean nearOther = false;
        for (int dy = -2; dy <= 2; dy++) {
            for (int dx = -2; dx <= 2; dx++) {
                int id = marks.label[(y + dy) * marks.width + x + dx];
                if (id != 0) {
                    if (id != Marks.RULE && wanted.contains(id)) {
                        return true;
                    }
                    nearOther = true;
                }
            }
        }
        return !nearOther;
    }
}
