package org.honorsdue.determination.crosscheck.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.points.RatingDate.FIRST;
import static org.honorsdue.determination.crosscheck.points.RatingDate.SECOND;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("Points score worked backwards")
@DisplayNameGeneration(ReplaceUnderscores.class)
class PointsSolverTest {
    private static final Children NO_ENTRY = new Children(OptionalInt.empty());
    private static final Children NONE = new Children(OptionalInt.of(0));

    /** Time, 21 May 1945: 56 months, 32 overseas, 40 for combat, no children, 128 points. */
    @Test
    void the_infantryman_in_Time_needs_eight_items_of_five_points() {
        var life = new TimeServed(FIRST, new MonthsAndDays(56, 0), new MonthsAndDays(32, 0), false);
        var sheet = PointsSolver.solve(128, Listed.exactly(8), NONE, List.of(life));
        assertThat(sheet.fits()).isTrue();
        assertThat(sheet.likeliest().orElseThrow().sum()).isEqualTo("56 months of service + 32 overseas + 5 x 8");
    }

    /** The same article lists six campaign stars and one Purple Heart, 35 points: one item more is not described. */
    @Test
    void with_six_stars_and_a_Purple_Heart_listed_one_item_is_left_over() {
        var life = new TimeServed(FIRST, new MonthsAndDays(56, 0), new MonthsAndDays(32, 0), false);
        var sheet = PointsSolver.solve(128, Listed.exactly(7), NONE, List.of(life));
        assertThat(sheet.fits()).isFalse();
        assertThat(sheet.likeliest().orElseThrow().unlisted()).isEqualTo(1);
    }

    /**
     * A page on the 558th Field Artillery prints 36 + 24 + 5 + 10 + 12 as 89. Hand arithmetic: 87. With three items and one
     * child, 87 fits; the printed 89 does not by any rounding of whole months.
     */
    @Test
    void the_printed_89_of_a_unit_page_is_87() {
        var life = new TimeServed(FIRST, new MonthsAndDays(36, 0), new MonthsAndDays(24, 0), false);
        var one = new Children(OptionalInt.of(1));
        assertThat(PointsSolver.solve(87, Listed.exactly(3), one, List.of(life)).fits())
                .isTrue();
        assertThat(PointsSolver.solve(89, Listed.exactly(3), one, List.of(life)).fits())
                .isFalse();
    }

    /**
     * A published paper from China-Burma-India: in 6 Oct 1942, overseas 20 Jan 1943 to 20 Jul 1945, two stars, 70 points
     * as of 2 Sep 1945. Hand arithmetic for 12 May: 31 months 6 days and 27 months 22 days, so 31 + 27 + 10 = 68 with
     * part-months dropped, 31 + 28 + 10 = 69 to the nearest, 32 + 28 + 10 = 70 counted whole. For 2 Sep: 34 months
     * 27 days and 30 months 0 days, so 74 or 75.
     */
    @Test
    void a_score_dated_2_September_can_be_the_figure_of_12_May() {
        var entered = LocalDate.of(1942, 10, 6);
        var out = LocalDate.of(1943, 1, 20);
        var back = LocalDate.of(1945, 7, 20);
        var september = new TimeServed(
                SECOND, MonthsAndDays.between(entered, SECOND.day()), MonthsAndDays.between(out, back), false);
        var may = new TimeServed(
                FIRST, MonthsAndDays.between(entered, FIRST.day()), MonthsAndDays.between(out, FIRST.day()), false);
        assertThat(september.service()).isEqualTo(new MonthsAndDays(34, 27));
        assertThat(september.overseas()).isEqualTo(new MonthsAndDays(30, 0));
        assertThat(may.service()).isEqualTo(new MonthsAndDays(31, 6));
        assertThat(may.overseas()).isEqualTo(new MonthsAndDays(27, 22));

        var sheet = PointsSolver.solve(70, Listed.exactly(2), NONE, List.of(september, may));
        var best = sheet.likeliest().orElseThrow();
        assertThat(best.fits()).isTrue();
        assertThat(best.asOf()).isEqualTo(FIRST);
        assertThat(best.serviceRounding()).isEqualTo(MonthRounding.COUNTED_WHOLE);
        assertThat(best.serviceMonths()).isEqualTo(32);
        assertThat(best.overseasMonths()).isEqualTo(28);
        assertThat(PointsSolver.solve(74, Listed.exactly(2), NONE, List.of(september))
                        .fits())
                .isTrue();
        assertThat(PointsSolver.solve(75, Listed.exactly(2), NONE, List.of(september))
                        .fits())
                .isTrue();
    }

    /**
     * Made-up case of the points table: 79 at 2 Sep 1945, service 33 months and some days, overseas 20 and some. Hand
     * arithmetic: 33 + 21 leaves 25, five items, no child; 34 + 20 leaves 25 too; 34 + 21 leaves 24, two children and no
     * item. Exact months, 33 + 20, leave 26: three children would need minus two items.
     */
    @Test
    void very_different_lives_give_one_score_and_all_are_shown() {
        var life = new TimeServed(SECOND, new MonthsAndDays(33, 5), new MonthsAndDays(20, 5), false);
        var sheet = PointsSolver.solve(79, Listed.exactly(5), NO_ENTRY, List.of(life));
        assertThat(sheet.solutions())
                .extracting(PointsSolution::sum)
                .contains(
                        "33 months of service + 21 overseas + 5 x 5",
                        "34 months of service + 20 overseas + 5 x 5",
                        "34 months of service + 21 overseas + 5 x 0 + 12 x 2 children");
        assertThat(sheet.solutions()).noneMatch(solution -> solution.children() == 3);
    }

    @Test
    void the_entry_on_dependents_puts_a_ceiling_on_the_children() {
        var life = new TimeServed(SECOND, new MonthsAndDays(34, 0), new MonthsAndDays(21, 0), false);
        assertThat(PointsSolver.solve(79, Listed.exactly(0), new Children(OptionalInt.of(2)), List.of(life))
                        .fits())
                .isTrue();
        assertThat(PointsSolver.solve(79, Listed.exactly(0), new Children(OptionalInt.of(1)), List.of(life))
                        .fits())
                .isFalse();
    }

    @Test
    void part_months_are_counted_three_ways() {
        var fourteenDays = new MonthsAndDays(10, 14);
        assertThat(fourteenDays.counted(MonthRounding.DROPPED)).isEqualTo(10);
        assertThat(fourteenDays.counted(MonthRounding.NEAREST)).isEqualTo(10);
        assertThat(fourteenDays.counted(MonthRounding.COUNTED_WHOLE)).isEqualTo(11);
        assertThat(new MonthsAndDays(10, 15).counted(MonthRounding.NEAREST)).isEqualTo(11);
        assertThat(new MonthsAndDays(10, 0).counted(MonthRounding.COUNTED_WHOLE))
                .isEqualTo(10);
    }

    @Test
    void short_tours_are_added_before_they_are_rounded() {
        var twice = MonthsAndDays.sum(List.of(new MonthsAndDays(3, 20), new MonthsAndDays(2, 20)));
        assertThat(twice).isEqualTo(new MonthsAndDays(6, 10));
    }

    @Test
    void lost_days_come_off_at_thirty_to_the_month() {
        assertThat(new MonthsAndDays(20, 5).less(40)).isEqualTo(new MonthsAndDays(18, 25));
        assertThat(new MonthsAndDays(0, 5).less(40)).isEqualTo(MonthsAndDays.NONE);
    }
}
