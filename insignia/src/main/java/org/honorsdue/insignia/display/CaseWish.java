package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.reference.insignia.Inches;

/**
 * What the user chooses about a case.
 *
 * @param width of the opening of the frame
 * @param height of the opening of the frame
 * @param depth clear between board and glass
 * @param rack how the ribbons are laid out, and for which standings a place is kept
 * @param ribbons whether the ribbons are shown beside the medals
 * @param fixed pieces at a place of the user's: moved there, or locked where they lay
 * @param leftOut ids of pieces that are not wanted
 * @param currentPatch id of the unit worn on the left sleeve; empty when not known
 * @param formerPatches ids of units of former service, worn on the right sleeve
 * @param ground colour of the board, {@code 0xRRGGBB}
 */
public record CaseWish(
        Inches width,
        Inches height,
        Inches depth,
        RackStyle rack,
        boolean ribbons,
        List<Addition> additions,
        List<Fixed> fixed,
        List<String> leftOut,
        String currentPatch,
        List<String> formerPatches,
        int ground) {
    private static final Inches LEAST = Inches.of(5);
    private static final Inches MOST = Inches.of(60);

    public CaseWish {
        additions = List.copyOf(additions);
        fixed = List.copyOf(fixed);
        leftOut = List.copyOf(leftOut);
        formerPatches = List.copyOf(formerPatches);
        for (Inches side : List.of(width, height)) {
            if (LEAST.isLongerThan(side) || side.isLongerThan(MOST)) {
                throw new IllegalArgumentException("A frame is 5 to 60 inches each way, not %s.".formatted(side));
            }
        }
        if (!depth.isLongerThan(Inches.ZERO)) {
            throw new IllegalArgumentException("A case needs some depth behind the glass, not %s.".formatted(depth));
        }
    }

    /**
     * A piece at a place.
     *
     * @param x of its upper left corner from that of the opening
     */
    public record Fixed(String piece, Inches x, Inches y) {}

    /** A frame one inch deep with the usual choices and nothing added. */
    public static CaseWish of(Inches width, Inches height) {
        return new CaseWish(
                width,
                height,
                Inches.of(9, 8),
                RackStyle.standard().withCaptions(false),
                true,
                List.of(),
                List.of(),
                List.of(),
                "",
                List.of(),
                0x2F3B4C);
    }

    /**
     * A frame as people write it.
     *
     * @param size as in {@code 16x20} or {@code 8 1/2 x 11}
     * @throws IllegalArgumentException with what to write instead
     */
    public static CaseWish ofSize(String size) {
        String[] sides = size.strip().split("\\s*[xX×]\\s*", -1);
        if (sides.length != 2) {
            throw new IllegalArgumentException(
                    "\"%s\" is no frame size. Write width x height in inches, as in 16x20.".formatted(size));
        }
        try {
            return of(Inches.parse(sides[0]), Inches.parse(sides[1]));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("\"%s\" is no frame size: %s".formatted(size, e.getMessage()), e);
        }
    }

    public CaseWish withFrame(Inches newWidth, Inches newHeight) {
        return new CaseWish(
                newWidth,
                newHeight,
                depth,
                rack,
                ribbons,
                additions,
                fixed,
                leftOut,
                currentPatch,
                formerPatches,
                ground);
    }

    public CaseWish withDepth(Inches clear) {
        return new CaseWish(
                width, height, clear, rack, ribbons, additions, fixed, leftOut, currentPatch, formerPatches, ground);
    }

    public CaseWish withRack(RackStyle style) {
        return new CaseWish(
                width, height, depth, style, ribbons, additions, fixed, leftOut, currentPatch, formerPatches, ground);
    }

    public CaseWish withRibbons(boolean shown) {
        return new CaseWish(
                width, height, depth, rack, shown, additions, fixed, leftOut, currentPatch, formerPatches, ground);
    }

    public CaseWish adding(Addition addition) {
        var more = new ArrayList<Addition>(additions);
        more.add(addition);
        return new CaseWish(
                width, height, depth, rack, ribbons, more, fixed, leftOut, currentPatch, formerPatches, ground);
    }

    /** Puts a piece at a place; a later place takes that of an earlier one. */
    public CaseWish moving(String piece, Inches x, Inches y) {
        var places = new ArrayList<Fixed>(fixed);
        places.removeIf(place -> place.piece().equals(piece));
        places.add(new Fixed(piece, x, y));
        return new CaseWish(
                width, height, depth, rack, ribbons, additions, places, leftOut, currentPatch, formerPatches, ground);
    }

    public CaseWish without(String piece) {
        var out = new ArrayList<String>(leftOut);
        out.add(piece);
        return new CaseWish(
                width, height, depth, rack, ribbons, additions, fixed, out, currentPatch, formerPatches, ground);
    }

    /** The sleeve insignia: of the last unit, and of former ones. */
    public CaseWish withPatches(String current, List<String> former) {
        return new CaseWish(width, height, depth, rack, ribbons, additions, fixed, leftOut, current, former, ground);
    }

    public CaseWish withGround(int rgb) {
        return new CaseWish(
                width, height, depth, rack, ribbons, additions, fixed, leftOut, currentPatch, formerPatches, rgb);
    }
}
