package org.honorsdue.determination.crosscheck.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.honorsdue.determination.crosscheck.points.RatingDate.SECOND;

import java.util.List;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class PointsSolverPropertiesTest {
    private static final Children NO_ENTRY = new Children(OptionalInt.empty());

    @Property
    void every_solution_adds_up_to_the_score(
            @ForAll @IntRange(min = 0, max = 200) int score,
            @ForAll @IntRange(min = 0, max = 60) int months,
            @ForAll @IntRange(min = 0, max = 29) int days,
            @ForAll @IntRange(min = 0, max = 40) int abroad) {
        var life = new TimeServed(SECOND, new MonthsAndDays(months, days), new MonthsAndDays(abroad, days), false);
        assertThat(PointsSolver.solve(score, Listed.exactly(2), NO_ENTRY, List.of(life))
                        .solutions())
                .allSatisfy(solution -> assertThat(solution.serviceMonths()
                                + solution.overseasMonths()
                                + 5 * solution.items()
                                + 12 * solution.children())
                        .isEqualTo(score));
    }

    @Property
    void the_true_life_is_always_among_the_solutions(
            @ForAll @IntRange(min = 0, max = 60) int months,
            @ForAll @IntRange(min = 0, max = 29) int days,
            @ForAll @IntRange(min = 0, max = 40) int abroad,
            @ForAll @IntRange(min = 0, max = 9) int items,
            @ForAll @IntRange(min = 0, max = 3) int children,
            @ForAll MonthRounding rounding) {
        var service = new MonthsAndDays(months, days);
        var overseas = new MonthsAndDays(abroad, 7);
        int score = service.counted(rounding) + overseas.counted(rounding) + 5 * items + 12 * children;
        var sheet = PointsSolver.solve(
                score,
                Listed.exactly(items),
                new Children(OptionalInt.of(children)),
                List.of(new TimeServed(SECOND, service, overseas, false)));
        assertThat(sheet.fits()).isTrue();
        assertThat(sheet.solutions()).anyMatch(one -> one.items() == items && one.children() == children);
    }
}
