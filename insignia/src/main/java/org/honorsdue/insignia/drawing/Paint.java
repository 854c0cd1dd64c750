package org.honorsdue.insignia.drawing;

import java.util.List;
import java.util.stream.IntStream;

/** What an area is filled with. Colours are {@code 0xRRGGBB}. */
public sealed interface Paint {
    static Paint plain(int rgb) {
        return new Plain(rgb);
    }

    /** One colour. */
    record Plain(int rgb) implements Paint {}

    /** A smooth change along a line, in the coordinates of the area. */
    record Along(double x1, double y1, double x2, double y2, List<Stop> stops) implements Paint {
        public Along {
            stops = List.copyOf(stops);
        }
    }

    /** A smooth change outwards from a centre, in the coordinates of the area. */
    record Outward(double cx, double cy, double radius, List<Stop> stops) implements Paint {
        public Outward {
            stops = List.copyOf(stops);
        }
    }

    /** A colour at a part of the way, from 0 to 1. */
    record Stop(double at, int rgb) {}

    /** Colours evenly spaced along the way. */
    static List<Stop> evenly(List<Integer> colors) {
        int last = colors.size() - 1;
        return IntStream.rangeClosed(0, last)
                .mapToObj(index -> new Stop(last == 0 ? 0 : (double) index / last, colors.get(index)))
                .toList();
    }
}
