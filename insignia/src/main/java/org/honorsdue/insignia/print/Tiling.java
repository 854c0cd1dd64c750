package org.honorsdue.insignia.print;

import java.util.ArrayList;
import java.util.List;

/**
 * How a large plan is cut into sheets at true size. Neighbouring sheets share a strip; its middle is where they are
 * trimmed and joined.
 *
 * @param field width and height of what a sheet can show, inches
 */
record Tiling(double planWidth, double planHeight, double fieldWidth, double fieldHeight) {
    /** Width of the strip two sheets share, inches. */
    static final double SHARED = 0.5;

    /**
     * One sheet.
     *
     * @param x of the plan at the left edge of its field
     */
    record Tile(int column, int row, double x, double y, double width, double height) {
        /** {@code B2}: the second column, the second row. */
        String name() {
            return (char) ('A' + column) + Integer.toString(row + 1);
        }
    }

    int columns() {
        return count(planWidth, fieldWidth);
    }

    int rows() {
        return count(planHeight, fieldHeight);
    }

    private static int count(double plan, double field) {
        return Math.max(1, (int) Math.ceil((plan - SHARED) / (field - SHARED) - 1e-9));
    }

    /** Row by row from the upper left. */
    List<Tile> tiles() {
        var tiles = new ArrayList<Tile>();
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                double x = column * (fieldWidth - SHARED);
                double y = row * (fieldHeight - SHARED);
                tiles.add(new Tile(
                        column, row, x, y, Math.min(fieldWidth, planWidth - x), Math.min(fieldHeight, planHeight - y)));
            }
        }
        return tiles;
    }
}
