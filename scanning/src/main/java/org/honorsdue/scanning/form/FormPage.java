package org.honorsdue.scanning.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Flattening;
import org.honorsdue.scanning.preparation.Folds;
import org.honorsdue.scanning.preparation.Homography;
import org.honorsdue.scanning.preparation.Polarity;
import org.honorsdue.scanning.preparation.Straightening;

/**
 * A picture recognised as a form and drawn anew: upright, straight, dark on light, the paper even, at 300 dots to the
 * inch of the original letter sheet.
 *
 * @param polarity how the writing stood on the picture
 * @param quarters by how many quarters the picture was turned clockwise
 * @param fit how well the form lies on it
 * @param upright the page drawn anew, {@link #WIDTH} by {@link #HEIGHT}
 * @param toPicture from the upright page to the picture handed in
 * @param places where each box stands on the upright page, in its pixels
 * @param pictureWidth of the picture handed in
 * @param pictureHeight of the picture handed in
 */
public record FormPage(
        Polarity polarity,
        int quarters,
        FormFit fit,
        Gray upright,
        Homography toPicture,
        Map<FormPart, Area> places,
        int pictureWidth,
        int pictureHeight) {
    public static final int WIDTH = 2550;
    public static final int HEIGHT = 3300;
    private static final int LONG_SIDE = 1400;

    /** The share of a stretch of the upright page that the picture really shows, 0 to 1. */
    public double seen(Area place) {
        int seen = 0;
        for (int j = 0; j < 5; j++) {
            for (int i = 0; i < 5; i++) {
                var at = toPicture.apply(
                        place.x() + place.width() * (i + 0.5) / 5, place.y() + place.height() * (j + 0.5) / 5);
                boolean inside = at.x() >= 0 && at.y() >= 0 && at.x() < pictureWidth && at.y() < pictureHeight;
                seen += inside ? 1 : 0;
            }
        }
        return seen / 25.0;
    }

    /** Empty when the picture is not ruled at all or nothing of a form is recognised; the likeness says how sure. */
    public static Optional<FormPage> find(Gray picture) {
        double scale = Math.min(1, (double) LONG_SIDE / Math.max(picture.width(), picture.height()));
        var small = picture.shrunk(scale);
        var polarity = Polarity.of(small);
        boolean photostat = polarity == Polarity.LIGHT_ON_DARK;
        var dark = photostat ? picture.inverted() : picture;
        var smallDark = photostat ? small.inverted() : small;
        return Straightening.of(dark).flatMap(straightening -> {
            var toSmall = Homography.scaling(scale, scale, 0, 0).after(straightening.toPicture());
            var straight = toSmall.draw(smallDark, straightening.width(), straightening.height(), Flattening.PAPER);
            return PageForm.of(straight).map(form -> drawn(dark, polarity, straight, straightening, form));
        });
    }

    private static FormPage drawn(
            Gray dark, Polarity polarity, Gray straight, Straightening straightening, PageForm form) {
        var fit = form.fit();
        double perX = WIDTH / 100.0;
        double perY = HEIGHT / 100.0;
        var toTurned = Homography.scaling(fit.scaleX() / perX, fit.scaleY() / perY, fit.moveX(), fit.moveY());
        var toPicture = straightening
                .toPicture()
                .after(turnedBack(form.quarters(), straight.width(), straight.height()))
                .after(toTurned);
        var upright = Folds.smoothed(Flattening.flatten(toPicture.draw(dark, WIDTH, HEIGHT, Flattening.PAPER)));
        var places = new LinkedHashMap<FormPart, Area>();
        var found = fit.boxes(form.page());
        for (var part : fit.layout().parts()) {
            var at = found.get(part);
            if (at != null) {
                places.put(
                        part,
                        Area.between(
                                (at.x() - fit.moveX()) / fit.scaleX() * perX,
                                (at.y() - fit.moveY()) / fit.scaleY() * perY,
                                (at.right() - fit.moveX()) / fit.scaleX() * perX,
                                (at.bottom() - fit.moveY()) / fit.scaleY() * perY));
            }
        }
        return new FormPage(polarity, form.quarters(), fit, upright, toPicture, places, dark.width(), dark.height());
    }

    /** From the page after turning by quarters to the page before. */
    private static Homography turnedBack(int quarters, int width, int height) {
        return switch (quarters) {
            case 1 -> new Homography(0, 1, 0, -1, 0, height, 0, 0, 1);
            case 2 -> new Homography(-1, 0, width, 0, -1, height, 0, 0, 1);
            case 3 -> new Homography(0, -1, width, 1, 0, 0, 0, 0, 1);
            default -> new Homography(1, 0, 0, 0, 1, 0, 0, 0, 1);
        };
    }
}
