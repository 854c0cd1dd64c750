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
        long outside = 0;
        for (var duty : soldier.duties()) {
            rests.add(duty.basis());
            long first = Math.max(duty.days().firstLatest(), window.first());
            long last = Math.min(duty.days().lastEarliest(), window.last());
            sure += Math.max(0, last - first + 1);
            if (!soldier.overseasUnknown()) {
                sure -= covered(soldier, first, last, true);
            }
            long mayFirst = Math.max(duty.days().firstEarliest(), window.first());
            long mayLast = Math.min(duty.days().lastLatest(), window.last());
            possible += Math.max(0, mayLast - mayFirst + 1) - covered(soldier, mayFirst, mayLast, false);
            outside += duty.days().possibleDays(Stretch.LONG_AGO, window.first() - 1)
                    + duty.days().possibleDays(window.last() + 1, Stretch.LONG_AFTER);
        }
        for (var stay : soldier.abroad()) {
            rests.add(stay.basis());
        }
        long served = sure;
        if (soldier.overseasUnknown()) {
            sure = 0;
        }
        long foreign = total(soldier, ServiceTotal.Kind.FOREIGN, rests);
        if (foreign >= 0 && soldier.overseasUnknown()) {
            sure = Math.max(0, served - foreign);
            possible = Math.min(possible, Math.max(0, possible - Math.max(0, foreign - outside)));
        }
        long home = total(soldier, ServiceTotal.Kind.CONTINENTAL, rests);
        if (home >= 0) {
            long least = Math.max(0, home - outside);
            if (soldier.overseasUnknown() && foreign < 0) {
                sure = Math.min(least, served);
                possible = Math.min(possible, home);
            } else {
                sure = Math.min(sure, home);
                possible = Math.max(possible, Math.min(least, possible + outside));
            }
        }
        return new HomeTime(sure, Math.max(sure, possible), rests);
    }

    /** The typed total of all papers, in days; -1 when a paper lacks it. */
    private static long total(Dossier soldier, ServiceTotal.Kind kind, List<Basis> rests) {
        var typed = soldier.every(ServiceTotal.class);
        long days = 0;
        for (var duty : soldier.duties()) {
            boolean found = false;
            for (var total : typed) {
                if (total.kind() == kind && total.paper() == duty.paper()) {
                    long months = (long) (total.months() * MONTH);
                    long inPaper = total.years() * 365L + months + total.days();
                    days += total.years() == 0 ? Math.min(364, inPaper) : inPaper;
                    rests.add(total.basis());
                    found = true;
                    break;
                }
            }
            if (!found) {
                return -1;
            }
        }
        return soldier.duties().isEmpty() ? -1 : days;
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
