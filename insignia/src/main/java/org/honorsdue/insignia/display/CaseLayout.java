package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.honorsdue.insignia.display.Band.Spacing;
import org.honorsdue.insignia.display.Breach.Rule;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;

/** Finds a place for every piece: first where the user wants it, then in bands, then wherever there is room. */
final class CaseLayout {
    private static final Inches SEARCH = Inches.of(1, 8);

    private final CaseWish wish;
    private final InsigniaTables tables;
    private final Box opening;
    private final Box area;
    private final Inches least;
    private final List<Breach> breaches = new ArrayList<>();
    private final List<Piece> unplaced = new ArrayList<>();
    private int ease;

    CaseLayout(CaseWish wish, InsigniaTables tables) {
        this.wish = wish;
        this.tables = tables;
        opening = new Box(Inches.ZERO, Inches.ZERO, wish.width(), wish.height());
        area = area(opening, tables);
        least = tables.displayRule("least-gap").length();
    }

    /** What the margins leave. A small frame keeps at least a quarter of its width and height free of them. */
    static Box area(Box opening, InsigniaTables tables) {
        Inches side = tables.displayRule("margin-side")
                .length()
                .min(opening.width().times(3).dividedBy(8));
        Inches top = tables.displayRule("margin-top")
                .length()
                .min(opening.height().times(3).dividedBy(8));
        Inches bottom = tables.displayRule("margin-bottom")
                .length()
                .min(opening.height().times(3).dividedBy(8));
        return new Box(
                side,
                top,
                opening.width().minus(side.times(2)),
                opening.height().minus(top).minus(bottom));
    }

    private record Spot(Piece piece, Box box, boolean fixed) {}

    List<Placed> lay(List<Piece> pieces) {
        var spots = new ArrayList<Spot>(fixed(pieces));
        var waiting = new ArrayList<Piece>(pieces);
        waiting.removeIf(piece -> spots.stream().anyMatch(spot -> spot.piece.equals(piece)));
        var laid = arranged(waiting);
        var homeless = new ArrayList<Spot>();
        for (int i = 0; i < laid.pieces().size(); i++) {
            var spot = new Spot(laid.pieces().get(i), laid.boxes().get(i), false);
            boolean taken =
                    spots.stream().filter(Spot::fixed).anyMatch(other -> other.box.overlaps(spot.box.grown(least)));
            (taken ? homeless : spots).add(spot);
        }
        for (Spot spot : homeless) {
            var free = free(spot, spots, least).or(() -> free(spot, spots, Inches.ZERO));
            if (free.isPresent()) {
                spots.add(new Spot(spot.piece, free.get(), false));
            } else {
                unplaced.add(spot.piece);
            }
        }
        spots.sort(Comparator.<Spot, Inches>comparing(spot -> spot.box.y())
                .thenComparing(spot -> spot.box.x())
                .thenComparing(spot -> spot.piece.id()));
        var placed = new ArrayList<Placed>();
        for (Spot spot : spots) {
            placed.add(new Placed(placed.size() + 1, spot.piece, spot.box.x(), spot.box.y(), spot.fixed));
        }
        return placed;
    }

    /** Pieces left out, soonest left out last. */
    List<Piece> unplaced() {
        return unplaced;
    }

    /** Places that could not be given. */
    List<Breach> breaches() {
        return breaches;
    }

    /** 0 at ease, 1 close, 2 and 3 closer than the rules want. */
    int ease() {
        return ease;
    }

    private List<Spot> fixed(List<Piece> pieces) {
        var spots = new ArrayList<Spot>();
        for (CaseWish.Fixed place : wish.fixed()) {
            Optional<Piece> named = pieces.stream()
                    .filter(piece -> piece.id().equals(place.piece()))
                    .findFirst();
            if (named.isEmpty()) {
                breaches.add(new Breach(
                        Rule.UNKNOWN_PIECE,
                        "There is no piece \"%s\" in this case. Take its place out of the wish, or check its name."
                                .formatted(place.piece()),
                        List.of(place.piece()),
                        Grade.TEXT));
                continue;
            }
            Piece piece = named.get();
            Box box = new Box(place.x(), place.y(), piece.width(), piece.height());
            if (!box.liesWithin(opening)) {
                refuse(piece, "lies beyond the opening of the frame");
            } else if (spots.stream().anyMatch(other -> other.box.overlaps(box))) {
                refuse(piece, "is taken by another piece that was put there");
            } else {
                spots.add(new Spot(piece, box, true));
            }
        }
        return spots;
    }

    private void refuse(Piece piece, String why) {
        breaches.add(new Breach(
                Rule.PLACE_TAKEN,
                "The place chosen for %s %s; it was laid elsewhere.".formatted(piece.name(), why),
                List.of(piece.id()),
                Grade.TEXT));
    }

    /** Bands of what fits; what has to stay out goes to the unplaced. */
    private Arrangement.Laid arranged(List<Piece> pieces) {
        var spacings = Spacing.all(tables);
        var in = new ArrayList<Piece>(pieces);
        while (!in.isEmpty()) {
            var laid = Arrangement.within(area, in, spacings);
            if (laid.isPresent()) {
                ease = laid.get().ease();
                return laid.get();
            }
            int out = 0;
            for (int i = 1; i < in.size(); i++) {
                if (in.get(i).kind().leavesFirst() >= in.get(out).kind().leavesFirst()) {
                    out = i;
                }
            }
            unplaced.add(0, in.remove(out));
        }
        return new Arrangement.Laid(List.of(), List.of(), 0);
    }

    /** The free place nearest to where a piece would have lain. */
    private Optional<Box> free(Spot wanted, List<Spot> spots, Inches gap) {
        Box best = null;
        Inches bestWay = Inches.ZERO;
        Inches lastX = area.right().minus(wanted.piece.width());
        Inches lastY = area.foot().minus(wanted.piece.height());
        for (Inches y = area.y(); y.compareTo(lastY) <= 0; y = y.plus(SEARCH)) {
            for (Inches x = area.x(); x.compareTo(lastX) <= 0; x = x.plus(SEARCH)) {
                Inches way = way(x, wanted.box.x()).plus(way(y, wanted.box.y()));
                if (best != null && way.compareTo(bestWay) >= 0) {
                    continue;
                }
                Box here = wanted.box.at(x, y);
                Box wide = here.grown(gap);
                if (spots.stream().noneMatch(spot -> spot.box.overlaps(wide))) {
                    best = here;
                    bestWay = way;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static Inches way(Inches one, Inches other) {
        return one.isLongerThan(other) ? one.minus(other) : other.minus(one);
    }
}
