package org.honorsdue.scanning.evaluation;

import java.awt.image.BufferedImage;

/** A gray picture in floating point, 0 black to 255 white, for drawing wear on. */
final class Plane {
    final int width;
    final int height;
    final float[] value;

    Plane(int width, int height) {
        this.width = width;
        this.height = height;
        this.value = new float[width * height];
    }

    static Plane of(BufferedImage picture) {
        var plane = new Plane(picture.getWidth(), picture.getHeight());
        var raster = picture.getRaster();
        var row = new float[plane.width];
        for (int y = 0; y < plane.height; y++) {
            raster.getSamples(0, y, plane.width, 1, 0, row);
            System.arraycopy(row, 0, plane.value, y * plane.width, plane.width);
        }
        return plane;
    }

    BufferedImage picture() {
        var picture = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        var raster = picture.getRaster();
        var row = new int[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                row[x] = Math.max(0, Math.min(255, Math.round(value[y * width + x])));
            }
            raster.setSamples(0, y, width, 1, 0, row);
        }
        return picture;
    }

    /** Gaussian blur by its two passes. */
    static void blur(float[] pixels, int width, int height, double sigma) {
        if (sigma < 0.2) {
            return;
        }
        int reach = (int) Math.ceil(sigma * 3);
        var kernel = new float[2 * reach + 1];
        float sum = 0;
        for (int i = -reach; i <= reach; i++) {
            kernel[i + reach] = (float) Math.exp(-i * i / (2 * sigma * sigma));
            sum += kernel[i + reach];
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] /= sum;
        }
        var line = new float[Math.max(width, height)];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float total = 0;
                for (int k = -reach; k <= reach; k++) {
                    int at = Math.max(0, Math.min(width - 1, x + k));
                    total += kernel[k + reach] * pixels[y * width + at];
                }
                line[x] = total;
            }
            System.arraycopy(line, 0, pixels, y * width, width);
        }
        // Column pass a row at a time, keeping the memory access in order.
        var copy = pixels.clone();
        for (int y = 0; y < height; y++) {
            int row = y * width;
            for (int x = 0; x < width; x++) {
                pixels[row + x] = 0;
            }
            for (int k = -reach; k <= reach; k++) {
                int from = Math.max(0, Math.min(height - 1, y + k)) * width;
                float weight = kernel[k + reach];
                for (int x = 0; x < width; x++) {
                    pixels[row + x] += weight * copy[from + x];
                }
            }
        }
    }

    float at(double x, double y, float outside) {
        int x0 = (int) Math.floor(x);
        int y0 = (int) Math.floor(y);
        if (x0 < 0 || y0 < 0 || x0 + 1 >= width || y0 + 1 >= height) {
            return outside;
        }
        float fx = (float) (x - x0);
        float fy = (float) (y - y0);
        int at = y0 * width + x0;
        return (value[at] * (1 - fx) + value[at + 1] * fx) * (1 - fy)
                + (value[at + width] * (1 - fx) + value[at + width + 1] * fx) * fy;
    }
}
