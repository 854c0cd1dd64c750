package org.honorsdue.scanning.preparation;

import org.honorsdue.scanning.picture.Gray;

/**
 * A mapping of one plane to another that keeps straight lines straight, as a photograph of a flat sheet does. The nine
 * numbers are the rows of its matrix.
 */
public record Homography(double a, double b, double c, double d, double e, double f, double g, double h, double i) {

    /** A point of the picture plane. */
    public record Point(double x, double y) {}

    public Point apply(double x, double y) {
        double w = g * x + h * y + i;
        return new Point((a * x + b * y + c) / w, (d * x + e * y + f) / w);
    }

    public Point apply(Point point) {
        return apply(point.x, point.y);
    }

    public static Homography scaling(double alongX, double alongY, double moveX, double moveY) {
        return new Homography(alongX, 0, moveX, 0, alongY, moveY, 0, 0, 1);
    }

    /** First the other, then this. */
    public Homography after(Homography first) {
        return new Homography(
                a * first.a + b * first.d + c * first.g,
                a * first.b + b * first.e + c * first.h,
                a * first.c + b * first.f + c * first.i,
                d * first.a + e * first.d + f * first.g,
                d * first.b + e * first.e + f * first.h,
                d * first.c + e * first.f + f * first.i,
                g * first.a + h * first.d + i * first.g,
                g * first.b + h * first.e + i * first.h,
                g * first.c + h * first.f + i * first.i);
    }

    /** The way back. */
    public Homography inverse() {
        double det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
        if (Math.abs(det) < 1e-300) {
            throw new ArithmeticException("This mapping folds the sheet onto a line.");
        }
        return new Homography(
                (e * i - f * h) / det,
                (c * h - b * i) / det,
                (b * f - c * e) / det,
                (f * g - d * i) / det,
                (a * i - c * g) / det,
                (c * d - a * f) / det,
                (d * h - e * g) / det,
                (b * g - a * h) / det,
                (a * e - b * d) / det);
    }

    /** The mapping that takes the unit square's corners, clockwise from the origin, to four points. */
    public static Homography fromUnitSquare(Point p0, Point p1, Point p2, Point p3) {
        double dx1 = p1.x - p2.x;
        double dx2 = p3.x - p2.x;
        double dx3 = p0.x - p1.x + p2.x - p3.x;
        double dy1 = p1.y - p2.y;
        double dy2 = p3.y - p2.y;
        double dy3 = p0.y - p1.y + p2.y - p3.y;
        double det = dx1 * dy2 - dx2 * dy1;
        if (Math.abs(det) < 1e-12) {
            throw new ArithmeticException("Three of the four corners stand in one line.");
        }
        double g = (dx3 * dy2 - dx2 * dy3) / det;
        double h = (dx1 * dy3 - dx3 * dy1) / det;
        return new Homography(
                p1.x - p0.x + g * p1.x,
                p3.x - p0.x + h * p3.x,
                p0.x,
                p1.y - p0.y + g * p1.y,
                p3.y - p0.y + h * p3.y,
                p0.y,
                g,
                h,
                1);
    }

    /**
     * Draws the picture as seen through this mapping, which leads from the new picture to the old one.
     *
     * @param outside the value where the old picture has nothing
     */
    public Gray draw(Gray from, int width, int height, int outside) {
        var made = new byte[Math.multiplyExact(width, height)];
        var pixels = from.pixels();
        int w = from.width();
        int last = from.height() - 1;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double px = x + 0.5;
                double py = y + 0.5;
                double depth = g * px + h * py + i;
                double sx = (a * px + b * py + c) / depth - 0.5;
                double sy = (d * px + e * py + f) / depth - 0.5;
                int x0 = (int) Math.floor(sx);
                int y0 = (int) Math.floor(sy);
                if (x0 < 0 || y0 < 0 || x0 >= w - 1 || y0 >= last) {
                    made[y * width + x] = (byte) outside;
                    continue;
                }
                int fx = (int) ((sx - x0) * 256);
                int fy = (int) ((sy - y0) * 256);
                int at = y0 * w + x0;
                int upper = (pixels[at] & 255) * (256 - fx) + (pixels[at + 1] & 255) * fx;
                int lower = (pixels[at + w] & 255) * (256 - fx) + (pixels[at + w + 1] & 255) * fx;
                made[y * width + x] = (byte) ((upper * (256 - fy) + lower * fy + 32768) >> 16);
            }
        }
        return new Gray(width, height, made);
    }
}
