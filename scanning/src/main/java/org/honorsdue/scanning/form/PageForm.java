package org.honorsdue.scanning.form;

import java.util.Optional;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Strokes;

/**
 * Which form a straightened page is, and how it has to be turned.
 *
 * @param quarters by how many quarters the page must be turned clockwise to stand upright
 * @param page the page turned so
 */
public record PageForm(int quarters, RuledPage page, FormFit fit) {
    /** Below this the page is not called one of our forms. */
    public static final double LEAST_LIKENESS = 0.45;

    /** Above this no other turn or form needs to be tried. */
    private static final double CERTAIN = 0.9;

    /**
     * @param picture straightened but for the turn
     */
    public static Optional<PageForm> of(Gray picture) {
        var strokes = Strokes.of(picture);
        PageForm best = null;
        for (int quarters = 0; quarters < 4 && (best == null || best.fit.likeness() < CERTAIN); quarters++) {
            var page = RuledPage.of(picture.quarters(quarters), strokes.quarters(quarters));
            for (var layout : FormLayout.all()) {
                var fit = FormFit.of(page, layout);
                if (fit.isPresent() && (best == null || fit.get().likeness() > best.fit.likeness())) {
                    best = new PageForm(quarters, page, fit.get());
                }
            }
        }
        return Optional.ofNullable(best);
    }
}
