package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.insignia.display.Breach.Rule;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.insignia.FrameSize;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;

/**
 * A display case laid out: every piece at a place on a sixteenth of an inch, none over another. The same findings and
 * wish give the same plan.
 *
 * @param placed by number, which runs from the top and the viewer's left
 * @param unplaced what has no room
 * @param breaches rules the plan does not keep, with what to do
 * @param smallestFrame the smallest common frame, held the same way, in which everything lies at ease; empty when no
 *     common frame is large enough
 */
public record CasePlan(
        CaseWish wish,
        List<Placed> placed,
        List<Piece> unplaced,
        List<Breach> breaches,
        Optional<FrameSize> smallestFrame) {
    /** Width in inches of the moulding that the finished drawing shows round the opening. */
    public static final double MOULDING = 0.9;

    public CasePlan {
        placed = List.copyOf(placed);
        unplaced = List.copyOf(unplaced);
        breaches = List.copyOf(breaches);
    }

    /** Lays out findings by the published tables. */
    public static CasePlan of(Findings findings, CaseWish wish) {
        return of(findings, wish, InsigniaTables.published());
    }

    /** Lays out findings by given tables. */
    public static CasePlan of(Findings findings, CaseWish wish, InsigniaTables tables) {
        List<Piece> pieces = CaseContents.of(findings, wish, tables);
        var layout = new CaseLayout(wish, tables);
        List<Placed> placed = layout.lay(pieces);
        var smallest = smallest(pieces, wish, tables);
        var breaches = new ArrayList<Breach>(layout.breaches());
        List<String> order = pieces.stream()
                .filter(piece -> piece.kind() == Kind.MEDAL)
                .map(Piece::id)
                .toList();
        breaches.addAll(CaseRules.of(wish, tables, placed, order));
        for (Piece piece : layout.unplaced()) {
            breaches.add(new Breach(
                    Rule.ROOM,
                    "%s has no room in this frame. %s".formatted(piece.name(), advice(smallest)),
                    List.of(piece.id()),
                    Grade.TEXT));
        }
        return new CasePlan(wish, placed, layout.unplaced(), breaches, smallest);
    }

    private static String advice(Optional<FrameSize> smallest) {
        return smallest.map(frame -> "A frame of %s in holds everything.".formatted(frame.id()))
                .orElse("No common frame holds everything: leave something out, or plan two cases.");
    }

    private static Optional<FrameSize> smallest(List<Piece> pieces, CaseWish wish, InsigniaTables tables) {
        boolean lying = wish.width().isLongerThan(wish.height());
        for (FrameSize frame : tables.frames()) {
            Inches width = lying ? frame.height() : frame.width();
            Inches height = lying ? frame.width() : frame.height();
            Box area = CaseLayout.area(new Box(Inches.ZERO, Inches.ZERO, width, height), tables);
            var atEase =
                    Arrangement.within(area, pieces, Band.Spacing.all(tables).subList(0, 2));
            if (atEase.isPresent()) {
                return Optional.of(
                        new FrameSize(width.text() + "x" + height.text(), width, height, frame.provenance()));
            }
        }
        return Optional.empty();
    }

    /** Whether a smaller common frame would do as well; that frame. */
    public Optional<FrameSize> smallerFrame() {
        return smallestFrame.filter(frame -> area(frame.width(), frame.height()) < area(wish.width(), wish.height()));
    }

    /** The common frame to take when this one is too small. */
    public Optional<FrameSize> largerFrame() {
        return smallestFrame.filter(frame -> area(frame.width(), frame.height()) > area(wish.width(), wish.height()));
    }

    private static double area(Inches width, Inches height) {
        return width.decimal() * height.decimal();
    }

    /** Size of the opening as people write it, in inches: {@code 16x20}. */
    public String frame() {
        return wish.width().text() + "x" + wish.height().text();
    }

    /** In words, piece by piece, as a screen reader reads it. */
    public String description() {
        if (placed.isEmpty()) {
            return "The findings authorize nothing that could be laid in a case yet.";
        }
        var words = new StringBuilder("Opening %s in wide and %s in high. From the top, as the viewer sees it: "
                .formatted(wish.width().text(), wish.height().text()));
        for (Placed one : placed) {
            words.append(one.number() == 1 ? "" : "; ")
                    .append(one.number())
                    .append(' ')
                    .append(one.piece().name())
                    .append(one.piece().pending() ? " (not settled: place kept)" : "");
        }
        return words.append('.').toString();
    }

    /** The case as it will look, in true size. */
    public Drawing drawing() {
        return CaseDrawing.finished(this);
    }

    public Svg svg() {
        return Svg.of(drawing(), "Display case, %s in".formatted(frame()), description());
    }

    /** The plan for the bench, with numbers and measures, in true size. */
    public Drawing benchDrawing() {
        return CaseDrawing.bench(this);
    }

    /**
     * The plan with numbers alone, to be shown smaller.
     *
     * @param magnified how much larger the numbers are than at true size, so that they can be read when it is reduced
     */
    public Drawing overview(double magnified) {
        return CaseDrawing.overview(this, magnified);
    }

    public Svg benchSvg() {
        return Svg.of(benchDrawing(), "Plan of the display case, %s in".formatted(frame()), description());
    }
}
