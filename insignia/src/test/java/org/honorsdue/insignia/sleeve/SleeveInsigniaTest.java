package org.honorsdue.insignia.sleeve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.honorsdue.insignia.Overhang;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.insignia.print.Png;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.reference.insignia.SleeveDesign;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Shoulder sleeve insignia")
@DisplayNameGeneration(ReplaceUnderscores.class)
class SleeveInsigniaTest {
    private static final InsigniaTables TABLES = InsigniaTables.published();

    static Stream<String> drawn() {
        return TABLES.sleeves().stream().map(SleeveDesign::unit).filter(SleeveInsignia::isDrawn);
    }

    @Test
    void are_drawn_for_at_least_eighty_commands_and_outlined_for_the_rest() {
        assertThat(drawn()).hasSizeGreaterThanOrEqualTo(80);
        var wolf = SleeveInsignia.of("infantry-division-104", TABLES);
        assertThat(wolf.drawn()).isFalse();
        assertThat(Svg.of(wolf.drawing(), wolf.name(), wolf.blazon()).text()).contains("104th", "2 1/2 x 2 3/4 in");
    }

    @Test
    void of_an_unknown_unit_are_an_outline_of_the_usual_size() {
        var unknown = SleeveInsignia.of("infantry-division-999", TABLES);
        assertThat(unknown.drawn()).isFalse();
        assertThat(unknown.width().text()).isEqualTo("2 1/2");
    }

    /** The thread reaches the edges it says it has and none beyond, measured on the picture to a fiftieth of an inch. */
    @ParameterizedTest
    @MethodSource("drawn")
    void fill_their_size_and_do_not_reach_beyond_it(String unit) {
        var insigne = SleeveInsignia.of(unit, TABLES);
        double[] ink = Overhang.ink(insigne.drawing());
        assertThat(Overhang.of(insigne.drawing())).as("beyond its sheet").isLessThan(0.021);
        assertThat(ink[2] - ink[0])
                .as("width")
                .isCloseTo(insigne.width().decimal(), within(insigne.width().decimal() * 0.16));
        assertThat(ink[3] - ink[1])
                .as("height")
                .isCloseTo(insigne.height().decimal(), within(insigne.height().decimal() * 0.16));
    }

    /**
     * Colours at places of the insigne, parts of width and height from the viewer's upper left. Blazons: Institute of
     * Heraldry descriptions for the 1st, 7th, 28th and 29th Divisions, I Corps, Third Army and Army Ground Forces;
     * division history for the 3rd; United States Holocaust Memorial Museum catalogue for the 12th Army Group.
     */
    @ParameterizedTest
    @CsvSource({
        "infantry-division-1, 0.54, 0.4, red",
        "infantry-division-1, 0.2, 0.3, olive",
        "infantry-division-3, 0.5, 0.5, white",
        "infantry-division-3, 0.05, 0.05, blue",
        "infantry-division-7, 0.5, 0.2, black",
        "infantry-division-7, 0.2, 0.5, red",
        "infantry-division-28, 0.5, 0.5, red",
        "infantry-division-29, 0.2, 0.5, blue",
        "infantry-division-29, 0.8, 0.5, gray",
        "corps-1, 0.5, 0.5, black",
        "corps-1, 0.5, 0.11, white",
        "army-3, 0.5, 0.1, red",
        "army-group-12, 0.5, 0.1, red",
        "army-group-12, 0.5, 0.4, white",
        "army-group-12, 0.5, 0.7, blue",
        "army-ground-forces, 0.5, 0.2, blue",
        "army-ground-forces, 0.5, 0.8, red",
        "armored-division-4, 0.5, 0.12, yellow",
        "armored-division-4, 0.15, 0.93, blue",
        "armored-division-4, 0.85, 0.93, red"
    })
    void show_the_colours_of_the_blazon(String unit, double across, double down, String color) {
        var insigne = SleeveInsignia.of(unit, TABLES);
        BufferedImage picture = Png.picture(Svg.of(insigne.drawing(), insigne.name(), ""), 400, new Color(0, 0, 0, 0));
        int rgb = picture.getRGB((int) (across * picture.getWidth()), (int) (down * picture.getHeight())) & 0xFFFFFF;
        assertThat(rgb).isEqualTo(shade(color));
    }

    private static int shade(String color) {
        return switch (color) {
            case "red" -> Cloth.RED;
            case "blue" -> Cloth.BLUE;
            case "olive" -> Cloth.OLIVE;
            case "white" -> Cloth.WHITE;
            case "black" -> Cloth.BLACK;
            case "gray" -> Cloth.GRAY;
            case "yellow" -> Cloth.YELLOW;
            default -> throw new IllegalArgumentException(color);
        };
    }

    /** Division history of the World War, p. 364: three white stripes 5/16 wide and 5/16 apart on a side of 2 1/4. */
    @Test
    void of_the_third_division_have_stripes_of_five_sixteenths_of_an_inch() {
        var insigne = SleeveInsignia.of("infantry-division-3", TABLES);
        BufferedImage picture = Png.picture(Svg.of(insigne.drawing(), "3", ""), 2250, Color.MAGENTA);
        // Across the stripes, from the upper left corner to the lower right one.
        int run = 0;
        int blue = 0;
        boolean white = false;
        var widths = new ArrayList<Double>();
        for (int i = 0; i < 2250; i++) {
            boolean now = (picture.getRGB(i, i) & 0xFF) > 0xB0 && (picture.getRGB(i, i) >> 16 & 0xFF) > 0xB0;
            if (now != white) {
                if (white) {
                    widths.add(run * Math.sqrt(2) / 1000);
                } else if (!widths.isEmpty()) {
                    widths.add(-run * Math.sqrt(2) / 1000);
                }
                run = 0;
                white = now;
            }
            run++;
            blue += now ? 0 : 1;
        }
        assertThat(blue).isPositive();
        assertThat(widths).hasSizeGreaterThanOrEqualTo(5);
        for (double width : List.copyOf(widths.subList(0, 5))) {
            assertThat(Math.abs(width)).isCloseTo(5.0 / 16, within(0.01));
        }
    }
}
