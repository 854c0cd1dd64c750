package org.honorsdue.determination.crosscheck;

import java.util.List;
import java.util.Optional;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceTotal;

/**
 * Days outside the continental United States on one paper, port to port.
 *
 * @param fewest the fewest days the typed dates allow
 * @param most the most days they allow
 */
record TimeAbroad(long fewest, long most, List<? extends ServiceFact> restsOn) {
    private static final double YEAR = 365.25;

    TimeAbroad {
        restsOn = List.copyOf(restsOn);
    }

    /** From the crossings, or failing them from the total of foreign service; empty when neither is there. */
    static Optional<TimeAbroad> of(OnePaper paper) {
        return PortToPort.of(paper)
                .map(TimeAbroad::of)
                .or(() -> paper.total(ServiceTotal.Kind.FOREIGN).map(TimeAbroad::of));
    }

    static TimeAbroad of(List<PortToPort> absences) {
        return new TimeAbroad(
                absences.stream().mapToLong(PortToPort::fewestDays).sum(),
                absences.stream().mapToLong(PortToPort::mostDays).sum(),
                absences.stream().flatMap(absence -> absence.stays().stream()).toList());
    }

    private static TimeAbroad of(ServiceTotal total) {
        long days = days(total);
        return new TimeAbroad(days, days, List.of(total));
    }

    /** The days in a typed total, a year being 365 1/4 days and a month a twelfth of it. */
    static long days(ServiceTotal total) {
        return Math.round(total.years() * YEAR + total.months() * YEAR / 12 + total.days());
    }
}
