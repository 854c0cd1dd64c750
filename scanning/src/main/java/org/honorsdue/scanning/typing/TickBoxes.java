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

    private static final int AROUND = 22;

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
        if (most < 60 || most < 1.25 * second) {
            return Optional.empty();
        }
        var others = new ArrayList<String>();
        for (var part : places) {
            if (part != best) {
                others.add(part.caption());
            }
        }
        double clear = most / Math.max(1, second);
        return Optional.of(new Tick(best.caption(), others, Math.min(0.99, 0.5 + (clear - 1.25) * 0.6)));
    }

    /** The most ink, in pixels of full black, that a window of the size of a tick sees near the place. */
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
        double left = part.place().x() * perX + (found == null ? 0 : found.x() - drawn.x() * perX);
        double top = part.place().y() * perY + (found == null ? 0 : found.y() - drawn.y() * perY);
        double most = 0;
        for (int dy = -AROUND; dy <= AROUND; dy += 3) {
            for (int dx = -AROUND; dx <= AROUND; dx += 3) {
                most = Math.max(most, window(page, (int) left + dx, (int) top + dy));
            }
        }
        return most;
    }

    private static double window(FormPage page, int left, int top) {
        double ink = 0;
        for (int y = Math.max(0, top); y < Math.min(FormPage.HEIGHT, top + SIDE); y++) {
            for (int x = Math.max(0, left); x < Math.min(FormPage.WIDTH, left + SIDE); x++) {
                ink += Math.max(0, Flattening.PAPER - 20 - page.upright().at(x, y));
            }
        }
        return ink / 255;
    }
}
