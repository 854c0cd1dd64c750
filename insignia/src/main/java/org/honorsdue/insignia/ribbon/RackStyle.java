package org.honorsdue.insignia.ribbon;

import java.util.List;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reference.insignia.Inches;

/**
 * Choices about a rack that the regulation leaves open, or that differ between then and now.
 *
 * @param perRow three or four (AR 670-1, 2005, wear of service ribbons)
 * @param rowGap between rows: nothing or 1/8 inch (same)
 * @param placesFor standings that get an empty, marked place; never {@code AUTHORIZED}, which is drawn, nor {@code
 *     NOT_AUTHORIZED}
 * @param serviceOrder ids of service medals in the order earned, where it is known; others follow in the usual order
 * @param captions a line under each group that says whose breast it is
 */
public record RackStyle(
        int perRow,
        Practice practice,
        TopRow topRow,
        Inches rowGap,
        List<Standing> placesFor,
        List<String> serviceOrder,
        Finish finish,
        boolean captions) {
    public RackStyle {
        placesFor = List.copyOf(placesFor);
        serviceOrder = List.copyOf(serviceOrder);
        if (perRow != 3 && perRow != 4) {
            throw new IllegalArgumentException("Ribbons stand three or four to a row, not %d.".formatted(perRow));
        }
        if (!rowGap.equals(Inches.ZERO) && !rowGap.equals(Inches.of(1, 8))) {
            throw new IllegalArgumentException("Rows touch or stand 1/8 inch apart, not %s.".formatted(rowGap));
        }
        if (placesFor.contains(Standing.AUTHORIZED) || placesFor.contains(Standing.NOT_AUTHORIZED)) {
            throw new IllegalArgumentException("Only awards that are still open can have a place kept for them.");
        }
    }

    /** Three to a row, rows touching, as worn today; a place is kept for what is presumed. */
    public static RackStyle standard() {
        return new RackStyle(
                3,
                Practice.PRESENT,
                TopRow.CENTERED,
                Inches.ZERO,
                List.of(Standing.PRESUMED),
                List.of(),
                Finish.SILK,
                true);
    }

    public RackStyle withPerRow(int ribbons) {
        return new RackStyle(ribbons, practice, topRow, rowGap, placesFor, serviceOrder, finish, captions);
    }

    public RackStyle withPractice(Practice other) {
        return new RackStyle(perRow, other, topRow, rowGap, placesFor, serviceOrder, finish, captions);
    }

    public RackStyle withTopRow(TopRow other) {
        return new RackStyle(perRow, practice, other, rowGap, placesFor, serviceOrder, finish, captions);
    }

    public RackStyle withRowGap(Inches gap) {
        return new RackStyle(perRow, practice, topRow, gap, placesFor, serviceOrder, finish, captions);
    }

    public RackStyle withPlacesFor(List<Standing> standings) {
        return new RackStyle(perRow, practice, topRow, rowGap, standings, serviceOrder, finish, captions);
    }

    public RackStyle withServiceOrder(List<String> awards) {
        return new RackStyle(perRow, practice, topRow, rowGap, placesFor, awards, finish, captions);
    }

    public RackStyle withFinish(Finish other) {
        return new RackStyle(perRow, practice, topRow, rowGap, placesFor, serviceOrder, other, captions);
    }

    public RackStyle withCaptions(boolean shown) {
        return new RackStyle(perRow, practice, topRow, rowGap, placesFor, serviceOrder, finish, shown);
    }

    /** Whose practice is followed where then and now differ. */
    public enum Practice {
        /** The order of wear as it stands today. */
        PRESENT,
        /** As worn in 1945: Purple Heart after the Air Medal, no emblem for a meritorious service unit. */
        WARTIME
    }

    /** Where a short row lies. */
    public enum TopRow {
        CENTERED,
        /** Flush with the wearer's right, the viewer's left: allowed where a lapel hides ribbons. */
        LEFT
    }
}
