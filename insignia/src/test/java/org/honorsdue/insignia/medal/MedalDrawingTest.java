package org.honorsdue.insignia.medal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.honorsdue.insignia.Found.worn;

import java.util.List;
import java.util.stream.Stream;
import org.honorsdue.insignia.Overhang;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.reference.insignia.MedalDesign;
import org.honorsdue.service.fact.Device;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Full-size medals")
@DisplayNameGeneration(ReplaceUnderscores.class)
class MedalDrawingTest {
    private static final InsigniaTables TABLES = InsigniaTables.published();

    static Stream<String> awards() {
        return TABLES.medals().stream().map(MedalDesign::award);
    }

    @ParameterizedTest
    @MethodSource("awards")
    void are_all_drawn_and_stay_within_the_size_they_say(String award) {
        var drawing = MedalDrawing.of(award, List.of(), TABLES).orElseThrow();
        assertThat(Overhang.of(drawing)).isLessThan(0.05);
    }

    /** The pendant alone, against the published width: measured on the picture. */
    @ParameterizedTest
    @MethodSource("awards")
    void have_pendants_of_the_published_width(String award) {
        double width = TABLES.medal(award).orElseThrow().width().decimal();
        var pendant = new Drawing(
                width,
                width,
                List.of(Mark.group(
                        Placement.scaled(width / 100).then(Placement.at(width / 2, width / 2)),
                        Pendants.of(award).orElseThrow().marks())));
        double[] ink = Overhang.ink(pendant);
        // A five-pointed star is 0.951 of the circle it is measured by.
        double least = List.of("silver-star", "bronze-star-medal").contains(award) ? 0.951 * width : width;
        assertThat(ink[2] - ink[0]).isCloseTo(least, within(0.08));
    }

    /** 32 CFR 578.52, 2008 edition: the clasp is 1 1/2 inches wide and reaches beyond the ribbon of 1 3/8. */
    @Test
    void are_as_wide_as_a_clasp_that_reaches_beyond_the_ribbon() {
        assertThat(MedalDrawing.width(
                        "american-defense-service-medal", List.of(worn(1, Device.FOREIGN_SERVICE_CLASP)), TABLES))
                .isEqualTo(Inches.of(3, 2));
        assertThat(MedalDrawing.width("american-defense-service-medal", List.of(), TABLES))
                .isEqualTo(Inches.of(11, 8));
    }

    @Test
    void do_not_exist_for_unit_awards() {
        assertThat(MedalDrawing.of("distinguished-unit-citation", List.of(), TABLES))
                .isEmpty();
    }
}
