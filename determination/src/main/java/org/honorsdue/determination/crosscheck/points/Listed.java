package org.honorsdue.determination.crosscheck.points;

/**
 * How many items of five points the paper lists: decorations with their further awards, and campaign stars. Two numbers
 * where the paper itself leaves it open (a star typed and not named, an award of doubtful standing).
 */
public record Listed(int fewest, int most) {
    public Listed {
        if (fewest < 0 || most < fewest) {
            throw new IllegalArgumentException("Not a count of items: %d to %d.".formatted(fewest, most));
        }
    }

    public static Listed exactly(int items) {
        return new Listed(items, items);
    }

    /** How many of the given items the paper does not list: positive for a surplus, negative for a shortage, 0 fits. */
    int missing(int items) {
        if (items > most) {
            return items - most;
        }
        return items < fewest ? items - fewest : 0;
    }
}
