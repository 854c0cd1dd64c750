package org.honorsdue.scanning.typing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.form.FormPage;
import org.honorsdue.scanning.form.FormPart;
import org.honorsdue.scanning.preparation.Flattening;

/** Finds the typed X among the places for a tick: the place with clearly more ink than the others. */
public final class TickBoxes {
    /** Side of a printed place for a tick, and how far around it to look, in pixels of the upright page. */
    private static final int SIDE = 34;

    private static final int AROUND = 26;

    private TickBoxes() {}

    /**
     * @param label the printed word beside the ticked place
     * @param others the words of the other places
     */
    public record Tick(String label, List<String> others, double confidence) {}

    /** Empty if no place is clearly ticked. */
    public static Optional<Tick> ticked(FormPage page, List<FormPart> places) {
        double most = 0;
        double second = 0;
        FormPart best = places.get(0);
        for (var part : places) {
            double ink = ink(page, part);
            if (ink > most) {
                second = most;
                most = ink;
                best = part;
            } else if (ink > second) {
                second = ink;
            }
        }
        if (most < 12 || most < 1.6 * second) {
            return Optional.empty();
        }
        var others = new ArrayList<String>();
        for (var part : places) {
            if (part != best) {
                others.add(part.caption());
            }
        }
        double clear = most / Math.max(1, second);
        return Optional.of(new Tick(best.caption(), others, Math.min(0.99, 0.5 + (clear - 1.6) * 0.25)));
    }

    /** The ink, in pixels of full black, within the printed square, which is looked for near its place. */
    private static double ink(FormPage page, FormPart part) {
        var box = page.fit()
                .layout()
                .part(part.box().map(String::valueOf).orElseThrow())
                .orElseThrow();
        var found = page.places().get(box);
        double perX = FormPage.WIDTH / 100.0;
        double perY = FormPage.HEIGHT / 100.0;
        // The place moves with its box.
        Area drawn = box.place();
        int left = (int) (part.place().x() * perX + (found == null ? 0 : found.x() - drawn.x() * perX));
        int top = (int) (part.place().y() * perY + (found == null ? 0 : found.y() - drawn.y() * perY));
        double strongest = -1;
        int bestX = left;
        int bestY = top;
        for (int y = top - AROUND; y <= top + AROUND; y++) {
            for (int x = left - AROUND; x <= left + AROUND; x++) {
                double frame = window(page, x, y, SIDE, 3)
                        + window(page, x, y + SIDE - 3, SIDE, 3)
                        + window(page, x, y, 3, SIDE)
                        + window(page, x + SIDE - 3, y, 3, SIDE);
                if (frame > strongest) {
                    strongest = frame;
                    bestX = x;
                    bestY = y;
                }
            }
        }
        return window(page, bestX + 5, bestY + 5, SIDE - 10, SIDE - 10);
    }

    private static double window(FormPage page, int left, int top, int width, int height) {
        double ink = 0;
        for (int y = Math.max(0, top); y < Math.min(FormPage.HEIGHT, top + height); y++) {
            for (int x = Math.max(0, left); x < Math.min(FormPage.WIDTH, left + width); x++) {
                ink += Math.max(0, Flattening.PAPER - 14 - page.upright().at(x, y));
            }
        }
        return ink / 255;
    }
}
