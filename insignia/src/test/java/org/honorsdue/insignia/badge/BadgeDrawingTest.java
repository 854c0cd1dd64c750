package org.honorsdue.insignia.badge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.honorsdue.insignia.Overhang;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Badges and sleeve bars")
@DisplayNameGeneration(ReplaceUnderscores.class)
class BadgeDrawingTest {
    private static final InsigniaTables TABLES = InsigniaTables.published();
    private final BadgeDrawing badges = new BadgeDrawing(TABLES);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "combat-infantryman-badge",
                "expert-infantryman-badge",
                "combat-medical-badge",
                "parachutist-badge",
                "glider-badge",
                "driver-and-mechanic-badge",
                "honorable-service-lapel-button",
                "honorable-discharge-emblem",
                "meritorious-service-wreath"
            })
    void fill_the_width_of_the_table_and_stay_within_it(String badge) {
        var drawing = badges.of(badge).orElseThrow();
        double width = TABLES.badge(badge).orElseThrow().width().decimal();
        double[] ink = Overhang.ink(drawing);
        assertThat(Overhang.of(drawing)).isLessThan(0.03);
        assertThat(ink[2] - ink[0]).isCloseTo(width, within(width * 0.08));
    }

    @ParameterizedTest
    @EnumSource(AviationRating.class)
    void wings_are_three_inches_wide_whatever_the_rating(AviationRating rating) {
        double[] ink = Overhang.ink(badges.aviation(rating));
        assertThat(ink[2] - ink[0]).isCloseTo(3, within(0.1));
        assertThat(AviationRating.named("Aviation badge: " + rating.words())).contains(rating);
    }

    @Test
    void a_rating_is_read_from_words_by_its_longest_name() {
        assertThat(AviationRating.named("Aviation badge: Senior Pilot")).contains(AviationRating.SENIOR_PILOT);
        assertThat(AviationRating.named("Aircrew wings")).contains(AviationRating.AIR_CREW);
        assertThat(AviationRating.named("Aviation badge")).isEmpty();
    }

    @Test
    void a_marksmanship_badge_grows_with_its_bars() {
        double bare = badges.marksmanship(MarksmanshipClass.MARKSMAN, List.of()).height();
        double barred = badges.marksmanship(MarksmanshipClass.EXPERT, List.of("RIFLE", "CARBINE"))
                .height();
        // Two bars of 1/4 inch, each 1/16 below the last: hand arithmetic.
        assertThat(barred - bare).isCloseTo(0.625, within(1e-9));
        assertThat(MarksmanshipClass.named("Expert: Rifle")).isEqualTo(Optional.of(MarksmanshipClass.EXPERT));
    }

    /** One bar for six months (WD Circular 268, 1944, as cited in an encyclopedia): 1/4 inch each, ours 1/16 apart. */
    @Test
    void overseas_bars_stand_above_one_another() {
        assertThat(badges.overseasBars(4).height() - badges.overseasBars(1).height())
                .isCloseTo(3 * (0.25 + 0.0625), within(1e-9));
    }

    @Test
    void a_badge_that_is_not_known_is_not_drawn() {
        assertThat(badges.of("no-such-badge")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(EnlistedGrade.class)
    void chevrons_stay_on_their_cloth_and_are_read_from_the_words_for_the_grade(EnlistedGrade grade) {
        var drawing = badges.chevrons(grade);
        assertThat(Overhang.of(drawing)).isLessThan(0.03);
        assertThat(drawing.width()).isEqualTo(3.125);
        assertThat(EnlistedGrade.named(grade.words())).contains(grade);
    }

    @Test
    void a_grade_is_read_as_papers_type_it() {
        assertThat(EnlistedGrade.named("Tec 5")).contains(EnlistedGrade.TECHNICIAN_FIFTH_GRADE);
        assertThat(EnlistedGrade.named("S/Sgt")).contains(EnlistedGrade.STAFF_SERGEANT);
        assertThat(EnlistedGrade.named("Pvt")).isEmpty();
    }
}
