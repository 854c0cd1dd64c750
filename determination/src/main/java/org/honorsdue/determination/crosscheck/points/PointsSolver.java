package org.honorsdue.determination.crosscheck.points;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;

/**
 * Finds every whole number of five-point items that gives a score, over the months as each way of rounding counts them
 * and over no child to three.
 *
 * <p>The sum: a point for each month of service since 16 September 1940, one for each month overseas, five for each
 * counting decoration and campaign star, twelve for each dependent child under 18 up to three (War Department plan of
 * May 1945 as reported in Time, 1945). Worked cases are in the tests.
 */
public final class PointsSolver {
    static final int PER_ITEM = 5;
    static final int PER_CHILD = 12;

    private static final Comparator<PointsSolution> LIKELIEST_FIRST = Comparator.comparing(
                    (PointsSolution solution) -> !solution.fits())
            .thenComparing(solution -> !solution.childrenAllowed())
            .thenComparing(solution -> Math.abs(solution.unlisted()));

    private PointsSolver() {}

    /**
     * @param lives the time served on each rating date in question, the date the paper names first; the same date may
     *     come twice, with and without lost time
     * @return ranked: the paper's own count of items and children first, then the named date, then both kinds of month
     *     rounded alike, then part-months counted whole
     */
    public static PointsSheet solve(int score, Listed listed, Children children, List<TimeServed> lives) {
        var named = lives.isEmpty() ? RatingDate.SECOND : lives.get(0).asOf();
        var found = new ArrayList<PointsSolution>();
        for (var life : lives) {
            for (var serviceRounding : MonthRounding.values()) {
                for (var overseasRounding : MonthRounding.values()) {
                    collect(score, listed, children, life, serviceRounding, overseasRounding, found);
                }
            }
        }
        found.sort(LIKELIEST_FIRST
                .thenComparing(solution -> solution.asOf() != named)
                .thenComparing(solution -> children.distance(solution.children()))
                .thenComparing(solution -> !solution.sameRounding())
                .thenComparing(PointsSolution::lostTimeDeducted)
                .thenComparing(PointsSolution::serviceRounding)
                .thenComparing(PointsSolution::overseasRounding)
                .thenComparing(PointsSolution::children));
        return new PointsSheet(score, listed, children, eachSumOnce(found));
    }

    private static void collect(
            int score,
            Listed listed,
            Children children,
            TimeServed life,
            MonthRounding serviceRounding,
            MonthRounding overseasRounding,
            List<PointsSolution> found) {
        int service = life.service().counted(serviceRounding);
        int overseas = life.overseas().counted(overseasRounding);
        for (int child = 0; child <= Children.MOST_COUNTED; child++) {
            int rest = score - service - overseas - PER_CHILD * child;
            if (rest >= 0 && rest % PER_ITEM == 0) {
                int items = rest / PER_ITEM;
                found.add(new PointsSolution(
                        life.asOf(),
                        serviceRounding,
                        overseasRounding,
                        life.lostTimeDeducted(),
                        service,
                        overseas,
                        child,
                        items,
                        listed.missing(items),
                        children.allow(child)));
            }
        }
    }

    /** The first, which is the likeliest, of those that differ only in how the same months were reached. */
    private static List<PointsSolution> eachSumOnce(List<PointsSolution> ranked) {
        var seen = new HashSet<Sum>();
        return ranked.stream()
                .filter(solution -> seen.add(new Sum(
                        solution.asOf(),
                        solution.serviceMonths(),
                        solution.overseasMonths(),
                        solution.children(),
                        solution.items())))
                .toList();
    }

    private record Sum(RatingDate asOf, int service, int overseas, int children, int items) {}
}
