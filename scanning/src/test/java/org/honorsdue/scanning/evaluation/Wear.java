package org.honorsdue.scanning.evaluation;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Random;

/** What happened to the paper and how it was photographed. One kind for each way that papers come in. */
enum Wear {
    FLATBED_CLEAN(300, 90),
    FLATBED_WORN(300, 75),
    CARBON_COPY(300, 75),
    FOLDED_AND_STAINED(300, 75),
    STAMPED_AND_SIGNED(300, 80),
    LOW_RESOLUTION(150, 60),
    HIGH_RESOLUTION(400, 85),
    PHOTOSTAT(250, 70),
    PHOTOSTAT_POOR(200, 50),
    PHONE(240, 80),
    PHONE_STEEP(260, 65),
    SIDEWAYS(220, 75);

    private final int dpi;
    private final int jpegQuality;

    Wear(int dpi, int jpegQuality) {
        this.dpi = dpi;
        this.jpegQuality = jpegQuality;
    }

    int jpegQuality() {
        return jpegQuality;
    }

    Typist.Machine machine(TypeFace face, Random dice) {
        int pitch = dice.nextInt(5) < 3 ? 12 : 10;
        double shift = 1.5 + dice.nextDouble() * 1.5;
        return switch (this) {
            case FLATBED_CLEAN, HIGH_RESOLUTION -> new Typist.Machine(face, pitch, 0.92, 0.25, shift, 0, 0.4);
            case FLATBED_WORN ->
                new Typist.Machine(face, pitch, 0.55 + dice.nextDouble() * 0.2, 0.9, shift * 1.4, 0.004, 0.6);
            case CARBON_COPY ->
                new Typist.Machine(
                        face, pitch, 0.6 + dice.nextDouble() * 0.15, 0.5, shift, 0.004, 1.5 + dice.nextDouble() * 0.5);
            case FOLDED_AND_STAINED, SIDEWAYS -> new Typist.Machine(face, pitch, 0.75, 0.6, shift, 0.002, 0.7);
            case STAMPED_AND_SIGNED -> new Typist.Machine(face, pitch, 0.85, 0.5, shift, 0.002, 0.6);
            case LOW_RESOLUTION, PHONE, PHONE_STEEP -> new Typist.Machine(face, pitch, 0.85, 0.45, shift, 0.001, 0.6);
            case PHOTOSTAT, PHOTOSTAT_POOR -> new Typist.Machine(face, pitch, 0.85, 0.5, shift, 0.002, 0.7);
        };
    }

    /** The finished picture of a typed form. */
    BufferedImage photograph(BlankForm form, Typist typist, double inkBlur, Random dice) {
        int width = BlankForm.WIDTH;
        int height = BlankForm.HEIGHT;
        Plane.blur(typist.ink, width, height, inkBlur);
        var page = Plane.of(form.picture);
        double printFade = this == FLATBED_WORN || this == CARBON_COPY ? 0.75 : 0.95;
        double paper = 225 + dice.nextDouble() * 20;
        for (int i = 0; i < page.value.length; i++) {
            double print = (255 - page.value[i]) / 255 * printFade;
            page.value[i] = (float) ((paper - 10) * (1 - print) * (1 - typist.ink[i] * 0.92) + 12);
        }
        if (this == FOLDED_AND_STAINED || this == FLATBED_WORN) {
            folds(page, dice);
            stains(page, dice, this == FOLDED_AND_STAINED ? 3 : 1);
        }
        if (this == STAMPED_AND_SIGNED || this == PHOTOSTAT || this == PHONE) {
            stampsAndSignatures(page, dice, this == STAMPED_AND_SIGNED ? 2 : 1);
        }
        return switch (this) {
            case FLATBED_CLEAN -> finish(page, dice, skew(dice, 1), 0.5, 2, 0, false);
            case HIGH_RESOLUTION -> finish(page, dice, skew(dice, 1.5), 0.7, 3, 6, false);
            case FLATBED_WORN -> finish(page, dice, skew(dice, 2), 0.7, 4, 15, false);
            case CARBON_COPY -> finish(page, dice, skew(dice, 2), 0.6, 4, 10, false);
            case FOLDED_AND_STAINED -> finish(page, dice, skew(dice, 2.5), 0.7, 4, 25, false);
            case STAMPED_AND_SIGNED -> finish(page, dice, skew(dice, 2), 0.6, 3, 10, false);
            case LOW_RESOLUTION -> finish(page, dice, skew(dice, 2), 1.0, 3, 15, false);
            case PHOTOSTAT -> finish(page, dice, skew(dice, 2), 1.0, 5, 20, true);
            case PHOTOSTAT_POOR -> finish(page, dice, skew(dice, 2.5), 1.5, 7, 30, true);
            case PHONE -> finish(page, dice, phone(dice, 0.05), 1.1, 4, 45, false);
            case PHONE_STEEP -> finish(page, dice, phone(dice, 0.11), 1.2, 5, 60, false);
            case SIDEWAYS -> finish(page, dice, turned(dice), 0.8, 3, 20, false);
        };
    }

    /** Corner moves as fractions of the page, clockwise from the upper left. */
    private static double[][] skew(Random dice, double degrees) {
        double angle = Math.toRadians((dice.nextDouble() * 2 - 1) * degrees);
        double[][] corners = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
        for (var corner : corners) {
            double x = (corner[0] - 0.5) * 8.5;
            double y = (corner[1] - 0.5) * 11;
            corner[0] = (x * Math.cos(angle) - y * Math.sin(angle)) / 8.5 + 0.5;
            corner[1] = (x * Math.sin(angle) + y * Math.cos(angle)) / 11 + 0.5;
        }
        return corners;
    }

    private static double[][] phone(Random dice, double steep) {
        var corners = skew(dice, 3);
        double lean = (dice.nextBoolean() ? 1 : -1) * steep;
        double tip = (dice.nextBoolean() ? 1 : -1) * steep * 0.5;
        corners[0][0] += lean;
        corners[1][0] -= lean;
        corners[0][1] += tip;
        corners[3][1] -= tip;
        for (var corner : corners) {
            corner[0] += (dice.nextDouble() - 0.5) * 0.02;
            corner[1] += (dice.nextDouble() - 0.5) * 0.02;
        }
        return corners;
    }

    private static double[][] turned(Random dice) {
        var corners = skew(dice, 2);
        int quarter = 1 + dice.nextInt(3);
        var turned = new double[4][];
        for (int i = 0; i < 4; i++) {
            turned[i] = corners[(i + quarter) % 4];
        }
        return turned;
    }

    private BufferedImage finish(
            Plane page, Random dice, double[][] corners, double blur, double noise, double shade, boolean photostat) {
        double scale = (double) dpi / BlankForm.DPI;
        // Corners of the page in the picture, with a margin of table around it.
        boolean sideways = Math.abs(corners[1][1] - corners[0][1]) > 0.5;
        double margin = this == PHONE || this == PHONE_STEEP ? 0.10 : 0.02;
        int pictureWidth = (int) ((sideways ? BlankForm.HEIGHT : BlankForm.WIDTH) * scale * (1 + 2 * margin));
        int pictureHeight = (int) ((sideways ? BlankForm.WIDTH : BlankForm.HEIGHT) * scale * (1 + 2 * margin));
        var target = new double[4][2];
        for (int i = 0; i < 4; i++) {
            target[i][0] = (corners[i][0] + margin) / (1 + 2 * margin) * pictureWidth;
            target[i][1] = (corners[i][1] + margin) / (1 + 2 * margin) * pictureHeight;
        }
        double[][] source = {{0, 0}, {page.width, 0}, {page.width, page.height}, {0, page.height}};
        var back = Perspective.mapping(target, source);
        Plane.blur(page.value, page.width, page.height, blur + Math.max(0, 0.45 / scale - 0.45));
        float table = photostat ? 250 : this == PHONE || this == PHONE_STEEP ? 70 : 200;
        var picture = new Plane(pictureWidth, pictureHeight);
        double lightX = dice.nextDouble();
        double lightY = dice.nextDouble();
        for (int y = 0; y < pictureHeight; y++) {
            for (int x = 0; x < pictureWidth; x++) {
                var from = back.apply(x + 0.5, y + 0.5);
                float value = page.at(from[0] - 0.5, from[1] - 0.5, table);
                double far = Math.hypot((double) x / pictureWidth - lightX, (double) y / pictureHeight - lightY);
                picture.value[y * pictureWidth + x] = (float) (value * (1 - shade / 100 * far));
            }
        }
        if (photostat) {
            for (int i = 0; i < picture.value.length; i++) {
                double v = picture.value[i] / 255;
                v = 1 / (1 + Math.exp(-(v - 0.55) * 7));
                picture.value[i] = (float) (235 - 205 * v);
            }
        }
        for (int i = 0; i < picture.value.length; i++) {
            picture.value[i] += (float) (dice.nextGaussian() * noise);
        }
        return picture.picture();
    }

    private static void folds(Plane page, Random dice) {
        int folds = 1 + dice.nextInt(3);
        for (int f = 0; f < folds; f++) {
            boolean level = dice.nextInt(3) > 0;
            double at = (level ? page.height : page.width) * (0.2 + 0.6 * dice.nextDouble());
            double slope = dice.nextGaussian() * 0.004;
            double dark = 25 + dice.nextDouble() * 60;
            for (int y = 0; y < page.height; y++) {
                for (int x = 0; x < page.width; x++) {
                    double off = level ? y - at - slope * x : x - at - slope * y;
                    if (Math.abs(off) < 30) {
                        int i = y * page.width + x;
                        page.value[i] -= (float) (dark * Math.exp(-off * off / 4) + 14 * Math.exp(-off * off / 180));
                        if (off > 1 && off < 4) {
                            page.value[i] += 20;
                        }
                    }
                }
            }
        }
    }

    private static void stains(Plane page, Random dice, int count) {
        for (int s = 0; s < count; s++) {
            double x0 = dice.nextDouble() * page.width;
            double y0 = dice.nextDouble() * page.height;
            double radius = 120 + dice.nextDouble() * 330;
            double deep = 0.08 + dice.nextDouble() * 0.22;
            for (int y = (int) Math.max(0, y0 - radius * 1.2); y < Math.min(page.height, y0 + radius * 1.2); y++) {
                for (int x = (int) Math.max(0, x0 - radius * 1.2); x < Math.min(page.width, x0 + radius * 1.2); x++) {
                    double angle = Math.atan2(y - y0, x - x0);
                    double edge = radius * (1 + 0.08 * Math.sin(5 * angle + s) + 0.04 * Math.sin(13 * angle));
                    double r = Math.hypot(x - x0, y - y0) / edge;
                    if (r < 1) {
                        double rim = Math.exp(-Math.pow((r - 0.97) / 0.03, 2));
                        page.value[y * page.width + x] *= (float) (1 - deep * (0.6 + 0.6 * rim));
                    }
                }
            }
        }
    }

    private static void stampsAndSignatures(Plane page, Random dice, int count) {
        var over = new BufferedImage(page.width, page.height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = over.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        for (int s = 0; s < count; s++) {
            pen.setColor(new Color(110, 110, 110));
            double x = page.width * (0.15 + 0.6 * dice.nextDouble());
            double y = page.height * (0.1 + 0.75 * dice.nextDouble());
            var old = pen.getTransform();
            pen.translate(x, y);
            pen.rotate((dice.nextDouble() - 0.5) * 0.8);
            if (dice.nextBoolean()) {
                pen.setStroke(new BasicStroke(5));
                pen.draw(new Ellipse2D.Double(-150, -150, 300, 300));
                pen.draw(new Ellipse2D.Double(-110, -110, 220, 220));
            } else {
                pen.setStroke(new BasicStroke(4));
                pen.drawRect(-220, -60, 440, 120);
            }
            pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 34));
            pen.drawString("RECORDED", -105, -5);
            pen.drawString("VOL 12", -70, 38);
            pen.setTransform(old);
            pen.setColor(new Color(170, 170, 170));
            pen.setStroke(new BasicStroke(5, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            scrawl(
                    pen,
                    page.width * (0.1 + 0.5 * dice.nextDouble()),
                    page.height * (0.2 + 0.7 * dice.nextDouble()),
                    dice);
        }
        // Every paper is signed at its foot.
        pen.setColor(new Color(200, 200, 200));
        pen.setStroke(new BasicStroke(5, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        scrawl(pen, page.width * 0.06, page.height * 0.972, dice);
        scrawl(pen, page.width * 0.5, page.height * 0.972, dice);
        pen.dispose();
        var drawn = Plane.of(over);
        for (int i = 0; i < page.value.length; i++) {
            page.value[i] *= 1 - drawn.value[i] / 255 * 0.85f;
        }
    }

    private static void scrawl(Graphics2D pen, double x, double y, Random dice) {
        var path = new Path2D.Double();
        path.moveTo(x, y);
        for (int i = 0; i < 14; i++) {
            double step = 18 + dice.nextDouble() * 30;
            path.curveTo(
                    x + step * 0.3,
                    y - 60 * dice.nextDouble(),
                    x + step * 0.7,
                    y + 40 * dice.nextDouble(),
                    x += step,
                    y += dice.nextGaussian() * 4);
        }
        pen.draw(AffineTransform.getTranslateInstance(0, 0).createTransformedShape(path));
    }
}
