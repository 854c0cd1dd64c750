package org.honorsdue.determination.crosscheck;

import static java.time.temporal.ChronoUnit.DAYS;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.PartialDate;

/**
 * The length of service on one paper, from one of the dates it may have been counted from to the separation.
 *
 * @param fewestDays the fewest days the typed dates allow
 * @param mostDays the most days, both ends counted
 */
record ServiceSpan(long fewestDays, long mostDays) {
    /**
     * The spans for each date service may have been counted from: entry into active service, and also induction and
     * enlistment, because clerks used those for men held on inactive duty in between. Empty when the paper has no date of
     * entry or none of separation.
     */
    static List<ServiceSpan> of(OnePaper paper) {
        var tour = paper.tour();
        if (tour.isEmpty() || tour.get().separated().isEmpty()) {
            return List.of();
        }
        int lost = paper.every(Conduct.class).stream()
                .mapToInt(conduct -> conduct.lostDays().orElse(0))
                .max()
                .orElse(0);
        var end = tour.get().separated().get();
        var spans = new ArrayList<ServiceSpan>();
        tour.get().entered().ifPresent(begin -> add(spans, begin, end, lost));
        if (!spans.isEmpty()) {
            tour.get().inducted().ifPresent(begin -> add(spans, begin, end, lost));
            tour.get().enlisted().ifPresent(begin -> add(spans, begin, end, lost));
        }
        return List.copyOf(spans);
    }

    /** How many days a typed length is off: positive when it is too long, negative when too short, 0 inside. */
    long off(long typed) {
        return typed > mostDays ? typed - mostDays : Math.min(0, typed - fewestDays);
    }

    /** With lost time counted, and with it taken off: clerks did either. */
    private static void add(List<ServiceSpan> spans, PartialDate begin, PartialDate end, int lost) {
        spans.add(span(begin, end, 0));
        if (lost > 0) {
            spans.add(span(begin, end, lost));
        }
    }

    private static ServiceSpan span(PartialDate begin, PartialDate end, int lost) {
        long fewest = DAYS.between(begin.latest(), end.earliest()) - lost;
        long most = DAYS.between(begin.earliest(), end.latest()) + 1 - lost;
        return new ServiceSpan(Math.max(0, fewest), Math.max(0, most));
    }
}
