package org.honorsdue.insignia.ribbon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.insignia.print.Png;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A ribbon as dots, measured on the picture")
@DisplayNameGeneration(ReplaceUnderscores.class)
class RibbonPictureTest {
    /** 1024 dots to the inch: a 64th of an inch is 16 dots. */
    private static final int WIDTH = 1408;

    private final InsigniaTables tables = InsigniaTables.published();

    /** Where one colour gives way to the next, in inches, and the colours between, in the middle of the ribbon. */
    private record Measured(List<Double> edges, List<Integer> colors) {}

    private Measured measure(String ribbon, Finish finish, int width) {
        var design = tables.ribbon(ribbon).orElseThrow();
        var svg = Svg.of(RibbonDrawing.of(design, new DeviceRow(List.of()), finish), design.name(), "");
        BufferedImage picture = Png.picture(svg, width, Color.MAGENTA);
        int y = picture.getHeight() / 2;
        var edges = new ArrayList<Double>();
        var colors = new ArrayList<Integer>();
        int run = 0;
        int previous = -1;
        for (int x = 0; x < width; x++) {
            int rgb = picture.getRGB(x, y) & 0xFFFFFF;
            run = rgb == previous ? run + 1 : 1;
            previous = rgb;
            // A colour counts from its third dot on, so that the blended dot of an edge does not.
            if (run == 3 && (colors.isEmpty() || colors.get(colors.size() - 1) != rgb)) {
                if (!colors.isEmpty()) {
                    edges.add((x - 2) * 1.375 / width);
                }
                colors.add(rgb);
            }
        }
        return new Measured(edges, colors);
    }

    @ParameterizedTest
    @EnumSource(PublishedRibbon.class)
    void shows_each_stripe_where_the_publication_has_it(PublishedRibbon published) {
        Measured measured = measure(published.id(), Finish.FLAT, WIDTH);
        Inches edge = Inches.ZERO;
        String[] stripes = published.stripes();
        assertThat(measured.colors()).hasSize(stripes.length);
        for (int i = 0; i < stripes.length; i++) {
            // The colour is what follows the width.
            String color = stripes[i].replaceFirst("^[0-9/ ]+", "");
            assertThat(measured.colors().get(i))
                    .as("colour of stripe %d, %s", i + 1, color)
                    .isEqualTo(tables.color(color).orElseThrow().srgb());
            edge = edge.plus(Inches.parse(stripes[i]
                    .substring(0, stripes[i].length() - color.length())
                    .strip()));
            if (i < stripes.length - 1) {
                assertThat(measured.edges().get(i))
                        .as("right edge of stripe %d, %s", i + 1, color)
                        .isCloseTo(edge.decimal(), within(1.5 * 1.375 / WIDTH));
            }
        }
        assertThat(edge).isEqualTo(Inches.parse("1 3/8"));
    }

    /** The sequence of 32 CFR 578.47(b), 2008 edition: blue, green, yellow, red in the middle, and back. */
    @Test
    void changes_smoothly_through_the_rainbow_of_the_victory_medal() {
        var design = tables.ribbon("ww2-victory-medal").orElseThrow();
        var svg = Svg.of(RibbonDrawing.of(design, new DeviceRow(List.of()), Finish.FLAT), design.name(), "");
        BufferedImage picture = Png.picture(svg, WIDTH, Color.WHITE);
        int y = picture.getHeight() / 2;
        int rainbow = WIDTH * 3 / 11;
        for (int x = 1; x < rainbow - 2; x++) {
            var here = new Color(picture.getRGB(x, y));
            var next = new Color(picture.getRGB(x + 1, y));
            int jump = Math.abs(here.getRed() - next.getRed())
                    + Math.abs(here.getGreen() - next.getGreen())
                    + Math.abs(here.getBlue() - next.getBlue());
            assertThat(jump).as("step at dot %d", x).isLessThan(16);
            var mirrored = new Color(picture.getRGB(WIDTH - 1 - x, y));
            assertThat(Math.abs(here.getRed() - mirrored.getRed()))
                    .as("mirror at %d", x)
                    .isLessThan(16);
        }
        var middle = new Color(picture.getRGB(rainbow / 2, y));
        assertThat(middle.getRed()).isGreaterThan(180);
        assertThat(middle.getGreen()).isLessThan(70);
        assertThat(new Color(picture.getRGB(2, y)).getBlue()).isGreaterThan(110);
    }

    @Test
    void keeps_its_stripes_apart_when_it_is_forty_dots_wide() {
        var design = tables.ribbon("army-of-occupation-medal").orElseThrow();
        var svg = Svg.of(RibbonDrawing.of(design, new DeviceRow(List.of()), Finish.SILK), design.name(), "");
        BufferedImage picture = Png.picture(svg, 40, Color.WHITE);
        int y = picture.getHeight() / 2;
        assertThat(brightness(picture.getRGB(2, y))).isGreaterThan(600);
        assertThat(brightness(picture.getRGB(12, y))).isLessThan(150);
        var red = new Color(picture.getRGB(27, y));
        assertThat(red.getRed()).isGreaterThan(150);
        assertThat(red.getGreen()).isLessThan(80);
        assertThat(brightness(picture.getRGB(37, y))).isGreaterThan(600);
    }

    private static int brightness(int rgb) {
        var color = new Color(rgb);
        return color.getRed() + color.getGreen() + color.getBlue();
    }
}
