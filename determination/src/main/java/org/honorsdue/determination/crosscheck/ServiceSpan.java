package org.honorsdue.determination.crosscheck;

import static java.time.temporal.ChronoUnit.DAYS;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.PartialDate;

/**
 * The length of service on one paper, from one of the dates it may have been counted from to the separation.
 *
 * @param fewestDays the fewest days, with lost time taken off
 * @param mostDays the most days, both ends counted and nothing taken off
 */
record ServiceSpan(long fewestDays, long mostDays) {
    /**
     * One span for each date service may have been counted from: entry into active service, and also induction and
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
        tour.get().entered().ifPresent(begin -> spans.add(span(begin, end, lost)));
        if (!spans.isEmpty()) {
            tour.get().inducted().ifPresent(begin -> spans.add(span(begin, end, lost)));
            tour.get().enlisted().ifPresent(begin -> spans.add(span(begin, end, lost)));
        }
        return List.copyOf(spans);
    }

    private static ServiceSpan span(PartialDate begin, PartialDate end, int lost) {
        long fewest = DAYS.between(begin.latest(), end.earliest()) - lost;
        long most = DAYS.between(begin.earliest(), end.latest()) + 1;
        return new ServiceSpan(Math.max(0, fewest), Math.max(0, most));
    }
}
