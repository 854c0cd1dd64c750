package org.honorsdue.scanning.evaluation;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.honorsdue.scanning.form.Area;
import org.honorsdue.scanning.form.FormLayout;
import org.honorsdue.scanning.form.FormPart;

/**
 * A blank form drawn at 300 dots to the inch. Since the table of the geometry is from memory, the drawing moves every
 * rule a little: a reader that knew the table by heart would be found out.
 */
final class BlankForm {
    static final int DPI = 300;
    static final int WIDTH = (int) (8.5 * DPI);
    static final int HEIGHT = 11 * DPI;
    private static final double POINT = DPI / 72.0;

    final FormLayout layout;
    final BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
    /** Where each part stands on this drawing, in pixels. */
    final Map<String, Area> places = new HashMap<>();
    /** The first pixel row free of printed words, per part. */
    final Map<String, Double> freeFrom = new HashMap<>();

    /** @param shift how far rules may move, in hundredths of the page */
    BlankForm(FormLayout layout, double shift, Random dice) {
        this.layout = layout;
        var rows = new TreeMap<Double, Double>();
        var columns = new HashMap<Double, Map<Double, Double>>();
        double across = (dice.nextDouble() - 0.5) * shift;
        double down = (dice.nextDouble() - 0.5) * shift;
        for (var part : layout.parts()) {
            var place = part.place();
            for (double y : new double[] {place.y(), place.bottom()}) {
                rows.computeIfAbsent(y, key -> key + down + (dice.nextDouble() - 0.5) * shift);
            }
        }
        for (var part : layout.parts()) {
            var place = part.place();
            boolean outer = place.x() <= 3;
            boolean far = place.right() >= 97;
            // Rules of different rows may move apart, unless they are one long rule.
            var moved = columns.computeIfAbsent(
                    part.kind() == FormPart.Kind.BOX || part.kind() == FormPart.Kind.BAR ? place.y() : -1.0,
                    key -> new HashMap<>());
            double left = outer
                    ? 3 + across
                    : moved.computeIfAbsent(place.x(), x -> x + across + (dice.nextDouble() - 0.5) * shift);
            double right = far
                    ? 97 + across
                    : moved.computeIfAbsent(place.right(), x -> x + across + (dice.nextDouble() - 0.5) * shift);
            var box = Area.between(
                    left * WIDTH / 100,
                    rows.get(place.y()) * HEIGHT / 100,
                    right * WIDTH / 100,
                    rows.get(place.bottom()) * HEIGHT / 100);
            places.put(part.id(), box);
        }
        // Columns and halves end where their box ends.
        for (var box : layout.boxes()) {
            var outer = places.get(box.id());
            for (var part : layout.within(box)) {
                var inner = places.get(part.id());
                double left = Math.abs(part.place().x() - box.place().x()) < 0.3 ? outer.x() : inner.x();
                double right =
                        Math.abs(part.place().right() - box.place().right()) < 0.3 ? outer.right() : inner.right();
                double bottom =
                        Math.abs(part.place().bottom() - box.place().bottom()) < 0.3 ? outer.bottom() : inner.bottom();
                places.put(part.id(), Area.between(left, inner.y(), right, bottom));
            }
        }
        draw();
    }

    private void draw() {
        var pen = picture.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        pen.setColor(new Color(25, 25, 25));
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        for (var part : layout.parts()) {
            var place = places.get(part.id());
            switch (part.kind()) {
                case TITLE -> centered(pen, part.caption(), place, 13, true);
                case BAR -> {
                    frame(pen, place, 2.4f);
                    centered(pen, part.caption(), place, place.height() / POINT > 14 ? 6.5 : 7, true);
                }
                case LABEL -> {
                    frame(pen, place, 2.0f);
                    centered(pen, part.caption(), place, 4.2, false);
                }
                case FOOTER -> words(pen, part.caption(), place.x(), place.y() + 6 * POINT, place.width(), 5.5);
                case BOX -> {
                    frame(pen, place, 2.0f);
                    double end = words(
                            pen,
                            part.id() + ". " + part.caption().toUpperCase(Locale.ROOT),
                            place.x() + 2 * POINT,
                            place.y() + 6.2 * POINT,
                            place.width() - 3 * POINT,
                            5.2);
                    freeFrom.put(part.id(), end);
                }
                case PART, COLUMN -> {
                    var box = layout.part(part.box().map(String::valueOf).orElseThrow())
                            .orElseThrow();
                    rule(pen, place.x(), place.y(), place.right(), place.y(), 1.4f);
                    if (part.place().x() > box.place().x() + 0.3) {
                        rule(pen, place.x(), place.y(), place.x(), place.bottom(), 1.4f);
                    }
                    double end = words(
                            pen,
                            part.caption().toUpperCase(Locale.ROOT),
                            place.x() + 2 * POINT,
                            place.y() + 5.4 * POINT,
                            place.width() - 3 * POINT,
                            4.4);
                    freeFrom.put(part.id(), end);
                }
                case TICK -> {
                    double size = 8 * POINT;
                    rule(pen, place.x(), place.y(), place.x() + size, place.y(), 1.2f);
                    rule(pen, place.x(), place.y() + size, place.x() + size, place.y() + size, 1.2f);
                    rule(pen, place.x(), place.y(), place.x(), place.y() + size, 1.2f);
                    rule(pen, place.x() + size, place.y(), place.x() + size, place.y() + size, 1.2f);
                    words(pen, part.caption(), place.x() + size + POINT, place.y() + 6 * POINT, place.width(), 4.0);
                }
            }
        }
        pen.dispose();
    }

    private static void frame(Graphics2D pen, Area place, float width) {
        rule(pen, place.x(), place.y(), place.right(), place.y(), width);
        rule(pen, place.x(), place.bottom(), place.right(), place.bottom(), width);
        rule(pen, place.x(), place.y(), place.x(), place.bottom(), width);
        rule(pen, place.right(), place.y(), place.right(), place.bottom(), width);
    }

    private static void rule(Graphics2D pen, double x0, double y0, double x1, double y1, float width) {
        pen.setStroke(new BasicStroke(width * 1.3f, BasicStroke.CAP_SQUARE, BasicStroke.JOIN_MITER));
        pen.draw(new Line2D.Double(x0, y0, x1, y1));
    }

    private static void centered(Graphics2D pen, String text, Area place, double points, boolean bold) {
        var font = printed(points, bold);
        var metrics = pen.getFontMetrics(font);
        double width = metrics.stringWidth(text);
        while (width > place.width() - 4 && points > 3) {
            points *= 0.9;
            font = printed(points, bold);
            width = pen.getFontMetrics(font).stringWidth(text);
        }
        pen.setFont(font);
        pen.drawString(text, (float) (place.x() + (place.width() - width) / 2), (float)
                (place.y() + place.height() / 2 + points * POINT * 0.36));
    }

    /** Returns the first row below the words. */
    private static double words(Graphics2D pen, String text, double x, double y, double width, double points) {
        var font = printed(points, false);
        var metrics = pen.getFontMetrics(font);
        if (metrics.stringWidth(text) > width * 1.25) {
            font = printed(points * 0.85, false);
            metrics = pen.getFontMetrics(font);
        }
        pen.setFont(font);
        var line = new StringBuilder();
        double at = y;
        for (var word : text.split(" ")) {
            if (line.length() > 0 && metrics.stringWidth(line + " " + word) > width) {
                pen.drawString(line.toString(), (float) x, (float) at);
                at += points * POINT * 1.02;
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        pen.drawString(line.toString(), (float) x, (float) at);
        return at + points * POINT * 0.25;
    }

    private static Font printed(double points, boolean bold) {
        return new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, 10)
                .deriveFont((float) (points * POINT))
                .deriveFont(AffineTransform.getScaleInstance(0.82, 1));
    }
}
