package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.honorsdue.insignia.display.Band.Spacing;
import org.honorsdue.reference.insignia.Inches;

/**
 * Puts pieces in bands from the top of a case to its foot: sleeve insignia and photograph, badges, medals, ribbons, what
 * is left, nameplate.
 */
final class Arrangement {
    /** More medals side by side are hard to take in at a glance. Our own. */
    private static final int MOST_MEDALS_ACROSS = 6;

    /** The most by which a gap grows when there is room to spare. */
    private static final Inches MOST_STRETCH = Inches.of(3, 4);

    private Arrangement() {}

    /** Where everything lies, in the order of the pieces of the bands, and how closely. */
    record Laid(List<Piece> pieces, List<Box> boxes, int ease) {}

    /** How pieces are shared out over a case. */
    private enum Manner {
        /** Bands from top to foot. */
        STACKED,
        /** The same, with the small pieces beside the ribbons. */
        JOINED,
        /** Sleeve insignia, photographs and small pieces in columns at both sides. */
        COLUMNS
    }

    /** The easiest arrangement within an area; empty when even the closest one is too large. */
    static Optional<Laid> within(Box area, List<Piece> pieces, List<Spacing> spacings) {
        boolean lying = area.width().isLongerThan(area.height());
        List<Manner> manners = lying
                ? List.of(Manner.COLUMNS, Manner.STACKED, Manner.JOINED)
                : List.of(Manner.STACKED, Manner.JOINED, Manner.COLUMNS);
        for (Spacing spacing : spacings) {
            for (Manner manner : manners) {
                var laid = manner == Manner.COLUMNS
                        ? columns(area, pieces, spacing)
                        : bands(pieces, area.width(), spacing, manner == Manner.JOINED)
                                .flatMap(bands -> stacked(bands, area, spacing));
                if (laid.isPresent()) {
                    return laid;
                }
            }
        }
        return Optional.empty();
    }

    private static final List<Kind> AT_THE_SIDES = List.of(
            Kind.PATCH,
            Kind.PHOTOGRAPH,
            Kind.PAPER,
            Kind.FLAG,
            Kind.DOG_TAGS,
            Kind.CORD,
            Kind.SLEEVE_BARS,
            Kind.QUALIFICATION,
            Kind.SMALL);

    /** Decorations in the middle, the rest in two columns of the same width beside them. */
    private static Optional<Laid> columns(Box area, List<Piece> pieces, Spacing spacing) {
        var left = new ArrayList<Piece>();
        var right = new ArrayList<Piece>();
        for (Kind kind : AT_THE_SIDES) {
            for (Piece piece : of(pieces, kind)) {
                boolean former =
                        kind == Kind.PATCH && left.isEmpty() && of(pieces, kind).size() > 1;
                boolean shorter = height(left, spacing).compareTo(height(right, spacing)) < 0;
                // The last insigne is that of the left sleeve, at the viewer's right.
                (former || shorter ? left : right).add(piece);
            }
        }
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        Inches side = left.stream()
                .map(Piece::width)
                .reduce(Inches.ZERO, Inches::max)
                .max(right.stream().map(Piece::width).reduce(Inches.ZERO, Inches::max));
        Inches aside = side.plus(spacing.groups());
        Inches inner = area.width().minus(aside.times(2));
        if (!inner.isLongerThan(Inches.ZERO)
                || height(left, spacing).isLongerThan(area.height())
                || height(right, spacing).isLongerThan(area.height())) {
            return Optional.empty();
        }
        var middle = new Box(area.x().plus(aside), area.y(), inner, area.height());
        List<Piece> core = pieces.stream()
                .filter(piece -> !AT_THE_SIDES.contains(piece.kind()))
                .toList();
        var laid = bands(core, inner, spacing, false).flatMap(bands -> stacked(bands, middle, spacing));
        if (laid.isEmpty()) {
            return Optional.empty();
        }
        var all = new ArrayList<Piece>(laid.get().pieces());
        var boxes = new ArrayList<Box>(laid.get().boxes());
        column(left, area.x().plus(side.half()), area, spacing, all, boxes);
        column(right, area.right().minus(side.half()), area, spacing, all, boxes);
        return Optional.of(new Laid(all, boxes, spacing.ease()));
    }

    private static Inches height(List<Piece> column, Spacing spacing) {
        Inches height = Inches.ZERO;
        for (int i = 0; i < column.size(); i++) {
            height = height.plus(column.get(i).height());
            if (i > 0) {
                height = height.plus(
                        spacing.beside(column.get(i - 1).kind(), column.get(i).kind()));
            }
        }
        return height;
    }

    /** Pieces one below another about an upright line, what room is left over shared between them. */
    private static void column(
            List<Piece> column, Inches middle, Box area, Spacing spacing, List<Piece> all, List<Box> boxes) {
        Inches free = area.height().minus(height(column, spacing));
        Inches stretch = column.size() < 2
                ? Inches.ZERO
                : Spacing.marked(MOST_STRETCH.times(2).min(free.dividedBy(column.size() + 1L)));
        Inches over = free.minus(stretch.times(Math.max(0, column.size() - 1L)));
        Inches y = area.y().plus(over.times(9).dividedBy(20));
        for (int i = 0; i < column.size(); i++) {
            Piece piece = column.get(i);
            if (i > 0) {
                y = y.plus(spacing.beside(column.get(i - 1).kind(), piece.kind()))
                        .plus(stretch);
            }
            all.add(piece);
            boxes.add(new Box(
                    Spacing.marked(middle.minus(piece.width().half())),
                    Spacing.marked(y),
                    piece.width(),
                    piece.height()));
            y = y.plus(piece.height());
        }
    }

    private static Optional<List<Band>> bands(List<Piece> pieces, Inches width, Spacing spacing, boolean joined) {
        List<Piece> badges = of(pieces, Kind.BADGE);
        List<Piece> photographs = of(pieces, Kind.PHOTOGRAPH);
        List<Piece> patches = of(pieces, Kind.PATCH);
        var head = flanked(patches, photographs);
        var rows = new ArrayList<List<Piece>>();
        boolean besideBadges =
                photographs.isEmpty() && patches.size() % 2 == 0 && !patches.isEmpty() && !badges.isEmpty();
        if (besideBadges && new Band(flanked(patches, badges)).width(spacing).compareTo(width) <= 0) {
            rows.add(flanked(patches, badges));
        } else {
            rows.add(head);
            rows.add(badges);
        }
        medalRows(of(pieces, Kind.MEDAL), width, spacing).forEach(rows::add);

        var ribbons = new ArrayList<Piece>(of(pieces, Kind.UNIT_EMBLEMS));
        ribbons.addAll(of(pieces, Kind.RIBBONS));
        ribbons.addAll(of(pieces, Kind.QUALIFICATION));
        var rest = new ArrayList<Piece>();
        for (Kind kind : List.of(Kind.FLAG, Kind.PAPER, Kind.DOG_TAGS, Kind.CORD, Kind.SLEEVE_BARS, Kind.SMALL)) {
            rest.addAll(of(pieces, kind));
        }
        List<Piece> lower = mountain(rest);
        if (joined && !ribbons.isEmpty() && !lower.isEmpty()) {
            rows.add(flanked(lower, ribbons));
        } else {
            rows.add(ribbons);
            rows.add(lower);
        }
        rows.add(of(pieces, Kind.NAMEPLATE));

        var bands = new ArrayList<Band>();
        for (List<Piece> row : rows) {
            var wrapped = wrapped(row, width, spacing);
            if (wrapped.isEmpty()) {
                return Optional.empty();
            }
            bands.addAll(wrapped.get());
        }
        return Optional.of(bands);
    }

    private static List<Piece> of(List<Piece> pieces, Kind kind) {
        return pieces.stream().filter(piece -> piece.kind() == kind).toList();
    }

    /** The first half of the outer pieces, the inner ones, the other half: the last unit's insigne comes at the right. */
    private static List<Piece> flanked(List<Piece> outer, List<Piece> inner) {
        int left = outer.size() / 2;
        var row = new ArrayList<Piece>(outer.subList(0, left));
        row.addAll(inner);
        row.addAll(outer.subList(left, outer.size()));
        return row;
    }

    /** The largest in the middle, the next ones right and left of it in turn. */
    private static List<Piece> mountain(List<Piece> pieces) {
        var sorted = new ArrayList<Piece>(pieces);
        sorted.sort(Comparator.<Piece, Inches>comparing(Piece::height)
                .thenComparing(Piece::width)
                .reversed()
                .thenComparing(Piece::id));
        var row = new ArrayList<Piece>();
        for (int i = 0; i < sorted.size(); i++) {
            row.add(i % 2 == 0 ? 0 : row.size(), sorted.get(i));
        }
        return row;
    }

    /** Rows as equal as can be, a shorter one above. */
    private static List<List<Piece>> medalRows(List<Piece> medals, Inches width, Spacing spacing) {
        int across = Math.min(MOST_MEDALS_ACROSS, medals.size());
        while (across > 1 && !everyRowFits(medals, across, width, spacing)) {
            across--;
        }
        return medals.isEmpty() ? List.of() : split(medals, across);
    }

    private static boolean everyRowFits(List<Piece> medals, int across, Inches width, Spacing spacing) {
        return split(medals, across).stream()
                .allMatch(row -> new Band(row).width(spacing).compareTo(width) <= 0);
    }

    private static List<List<Piece>> split(List<Piece> pieces, int across) {
        int rows = (pieces.size() + across - 1) / across;
        var split = new ArrayList<List<Piece>>();
        int from = 0;
        for (int row = 0; row < rows; row++) {
            int size = (pieces.size() - from) / (rows - row);
            split.add(pieces.subList(from, from + size));
            from += size;
        }
        return split;
    }

    /** One row, or as many as its width asks for; empty when a single piece is too wide. */
    private static Optional<List<Band>> wrapped(List<Piece> row, Inches width, Spacing spacing) {
        if (row.isEmpty()) {
            return Optional.of(List.of());
        }
        for (int across = row.size(); across >= 1; across--) {
            var bands = split(row, across).stream().map(Band::new).toList();
            if (bands.stream().allMatch(band -> band.width(spacing).compareTo(width) <= 0)) {
                return Optional.of(bands);
            }
        }
        return Optional.empty();
    }

    /** Bands one below another, what room is left over shared between gaps and margins, a little more below. */
    private static Optional<Laid> stacked(List<Band> bands, Box area, Spacing spacing) {
        Inches height = Inches.ZERO;
        for (int i = 0; i < bands.size(); i++) {
            height = height.plus(bands.get(i).height());
            if (i > 0) {
                height = height.plus(spacing.below(bands.get(i - 1), bands.get(i)));
            }
        }
        Inches free = area.height().minus(height);
        if (Inches.ZERO.isLongerThan(free)) {
            return Optional.empty();
        }
        Inches stretch =
                bands.size() < 2 ? Inches.ZERO : Spacing.marked(MOST_STRETCH.min(free.dividedBy(bands.size() + 1L)));
        Inches over = free.minus(stretch.times(Math.max(0, bands.size() - 1L)));
        // Nine parts above and eleven below look centred.
        Inches y = area.y().plus(Spacing.marked(over.times(9).dividedBy(20)));
        var pieces = new ArrayList<Piece>();
        var boxes = new ArrayList<Box>();
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            if (i > 0) {
                y = y.plus(spacing.below(bands.get(i - 1), band)).plus(stretch);
            }
            pieces.addAll(band.pieces());
            boxes.addAll(band.boxes(area.middle(), y, spacing));
            y = y.plus(band.height());
        }
        // Marks of a rule can round a row a sixteenth beyond the area.
        return boxes.stream().allMatch(box -> box.liesWithin(area.grown(Inches.of(1, 16))))
                ? Optional.of(new Laid(pieces, boxes, spacing.ease()))
                : Optional.empty();
    }
}
