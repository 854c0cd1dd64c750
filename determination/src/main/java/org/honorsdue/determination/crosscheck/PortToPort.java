package org.honorsdue.determination.crosscheck;

import static java.time.temporal.ChronoUnit.DAYS;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;

/**
 * One absence from the continental United States, from leaving a home port to reaching one, however many stays lay
 * between. The sea voyages count.
 */
record PortToPort(PartialDate departed, PartialDate back, List<OverseasStay> stays) {
    PortToPort {
        stays = List.copyOf(stays);
    }

    /** The fewest days the two dates allow, not counting the day of departure. */
    long fewestDays() {
        return Math.max(0, DAYS.between(departed.latest(), back.earliest()));
    }

    /** The most days the two dates allow, counting both ends. */
    long mostDays() {
        return Math.max(0, DAYS.between(departed.earliest(), back.latest()) + 1);
    }

    /**
     * The absences a paper shows; an empty list when it shows that there was none.
     *
     * @return empty when a needed date is missing, the entry was not supplied, or part of it could not be read
     */
    static Optional<List<PortToPort>> of(OnePaper paper) {
        if (!paper.crossingsShown()) {
            return Optional.empty();
        }
        var sailed = paper.stays();
        if (sailed.stream().anyMatch(stay -> stay.departed().isEmpty())) {
            return Optional.empty();
        }
        var stays = sailed.stream()
                .sorted(Comparator.comparing(stay -> stay.departed().orElseThrow()))
                .toList();
        var absences = new ArrayList<PortToPort>();
        var under = new ArrayList<OverseasStay>();
        for (var stay : stays) {
            under.add(stay);
            if (stay.returned().isPresent()) {
                absences.add(new PortToPort(
                        under.get(0).departed().orElseThrow(), stay.returned().get(), under));
                under.clear();
            }
        }
        return under.isEmpty() ? Optional.of(List.copyOf(absences)) : Optional.empty();
    }
}
