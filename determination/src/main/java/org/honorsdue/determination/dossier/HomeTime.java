package org.honorsdue.determination.dossier;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.ServiceTotal;

/**
 * Days on active service inside the continental United States within the dates of the American Theater.
 *
 * @param sure so many at least
 * @param possible so many at most
 * @param rests what the count rests on
 */
public record HomeTime(long sure, long possible, List<Basis> rests) {
    /** Days in an average month, to turn a typed total of years, months and days into days. */
    private static final double MONTH = 30.4375;

    static HomeTime of(Dossier soldier, History.Days window) {
        var rests = new ArrayList<Basis>();
        long sure = 0;
        long possible = 0;
        for (var duty : soldier.duties()) {
            rests.add(duty.basis());
            var here = under(duty, soldier, window, rests);
            sure += here[0];
            possible += Math.max(here[0], here[1]);
        }
        for (var stay : soldier.abroad()) {
            if (stay.kind() == Abroad.Kind.DESTINATION) {
                rests.add(stay.basis());
            }
        }
        return new HomeTime(sure, possible, rests);
    }

    /** Days at home under one paper: at least, and at most. */
    private static long[] under(Duty duty, Dossier soldier, History.Days window, List<Basis> rests) {
        var days = duty.days();
        long first = Math.max(days.firstLatest(), window.first());
        long last = Math.min(days.lastEarliest(), window.last());
        long served = Math.max(0, last - first + 1);
        long mayFirst = Math.max(days.firstEarliest(), window.first());
        long mayLast = Math.min(days.lastLatest(), window.last());
        long mayServe = Math.max(0, mayLast - mayFirst + 1);
        long outside = days.possibleDays(Stretch.LONG_AGO, window.first() - 1)
                + days.possibleDays(window.last() + 1, Stretch.LONG_AFTER);
        boolean unknown = soldier.overseasUnknown(duty.paper());
        long foreign = typed(soldier, duty.paper(), ServiceTotal.Kind.FOREIGN, rests);
        long home = typed(soldier, duty.paper(), ServiceTotal.Kind.CONTINENTAL, rests);

        long sure;
        long possible = mayServe - covered(soldier, mayFirst, mayLast, false);
        if (!unknown) {
            sure = served - covered(soldier, first, last, true);
        } else if (foreign >= 0) {
            sure = Math.max(0, served - foreign);
            possible = Math.min(possible, mayServe - Math.max(0, foreign - outside));
        } else {
            sure = 0;
        }
        if (home >= 0) {
            long least = Math.min(mayServe, Math.max(0, home - outside));
            if (unknown) {
                sure = Math.min(least, served);
                possible = Math.min(possible, home);
            } else {
                // Where crossings and typed total disagree, neither decides alone.
                sure = Math.min(sure, home);
                possible = Math.max(possible, least);
            }
        }
        return new long[] {Math.max(0, sure), possible};
    }

    private static long typed(Dossier soldier, int paper, ServiceTotal.Kind kind, List<Basis> rests) {
        for (var total : soldier.every(ServiceTotal.class)) {
            if (total.kind() == kind && total.paper() == paper) {
                rests.add(total.basis());
                return days(total);
            }
        }
        return -1;
    }

    /** A typed total in days; less than a year in months and days is never a year of days. */
    static long days(ServiceTotal total) {
        long months = (long) (total.months() * MONTH);
        long days = total.years() * 365L + months + total.days();
        return total.years() == 0 ? Math.min(364, days) : days;
    }

    /** How many of the days from first to last he was away: at most, or at least. */
    private static long covered(Dossier soldier, long first, long last, boolean atMost) {
        if (last < first || soldier.abroad().isEmpty()) {
            return 0;
        }
        var away = new ArrayList<long[]>(soldier.abroad().size());
        for (var stay : soldier.abroad()) {
            var days = stay.portToPort();
            long from = Math.max(first, atMost ? days.firstEarliest() : days.firstLatest());
            long to = Math.min(last, atMost ? days.lastLatest() : days.lastEarliest());
            if (to >= from) {
                away.add(new long[] {from, to});
            }
        }
        away.sort(Comparator.comparingLong(span -> span[0]));
        long sum = 0;
        long reached = first - 1;
        for (var span : away) {
            long from = Math.max(span[0], reached + 1);
            if (span[1] >= from) {
                sum += span[1] - from + 1;
                reached = span[1];
            }
        }
        return sum;
    }
}
