package org.honorsdue.insignia.ribbon;

import java.util.List;
import org.honorsdue.insignia.drawing.Paint;

/** A metal as it looks: the lit side, the body, the shaded side and the edge. Our own estimates of worn metal. */
public enum Metal {
    BRONZE(0xD7A866, 0xA97A3F, 0x75502A, 0x3B2612),
    SILVER(0xF4F6F8, 0xC3C8CE, 0x8B929B, 0x3F454D),
    GOLD(0xF6DC8C, 0xD0A33C, 0x96701F, 0x4D3609),
    /** Darker, for the pendants of medals. */
    OLD_BRONZE(0xB98E58, 0x8A6436, 0x5B3F20, 0x2E1D0C);

    private final int light;
    private final int body;
    private final int shade;
    private final int edge;

    Metal(int light, int body, int shade, int edge) {
        this.light = light;
        this.body = body;
        this.shade = shade;
        this.edge = edge;
    }

    public int light() {
        return light;
    }

    public int body() {
        return body;
    }

    public int shade() {
        return shade;
    }

    public int edge() {
        return edge;
    }

    /** Light from the upper left over a part with these bounds. */
    public Paint lit(double x, double y, double width, double height) {
        return new Paint.Along(
                x,
                y,
                x + width,
                y + height,
                List.of(new Paint.Stop(0, light), new Paint.Stop(0.45, body), new Paint.Stop(1, shade)));
    }

    /** A colour between two, as {@code 0xRRGGBB}; 0 is the first, 1 the second. */
    public static int mixed(int first, int second, double part) {
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            double from = first >> shift & 0xFF;
            double to = second >> shift & 0xFF;
            rgb |= (int) Math.round(from + (to - from) * part) << shift;
        }
        return rgb;
    }
}
