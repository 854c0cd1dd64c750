package org.honorsdue.scanning.evaluation;

/** The plane mapping through four point pairs; written apart from the reader's own, so that one checks the other. */
record Perspective(double[] h) {
    double[] apply(double x, double y) {
        double w = h[6] * x + h[7] * y + 1;
        return new double[] {(h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w};
    }

    static Perspective mapping(double[][] from, double[][] to) {
        var a = new double[8][9];
        for (int i = 0; i < 4; i++) {
            double x = from[i][0];
            double y = from[i][1];
            double u = to[i][0];
            double v = to[i][1];
            a[2 * i] = new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y, u};
            a[2 * i + 1] = new double[] {0, 0, 0, x, y, 1, -v * x, -v * y, v};
        }
        for (int c = 0; c < 8; c++) {
            int best = c;
            for (int r = c + 1; r < 8; r++) {
                if (Math.abs(a[r][c]) > Math.abs(a[best][c])) {
                    best = r;
                }
            }
            var swap = a[c];
            a[c] = a[best];
            a[best] = swap;
            for (int r = 0; r < 8; r++) {
                if (r != c) {
                    double factor = a[r][c] / a[c][c];
                    for (int k = c; k < 9; k++) {
                        a[r][k] -= factor * a[c][k];
                    }
                }
            }
        }
        var h = new double[8];
        for (int i = 0; i < 8; i++) {
            h[i] = a[i][8] / a[i][i];
        }
        return new Perspective(h);
    }
}
