package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.Sex;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Tour;

/**
 * Age at entry against the ages the Army took: 17 for a volunteer with consent, 18 to 44 for a man inducted, 20 for a
 * woman. Only whole years outside those bounds are held against the paper; an officer or an old soldier may be older.
 */
final class AgeCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "Selective Training and Service Act of 1940 as amended; enlistment ages from memory", Grade.MEMORY);
    private static final int YOUNGEST = 17;
    private static final int YOUNGEST_WOMAN = 20;
    private static final int OLDEST_INDUCTED = 45;
    private static final int OLDEST = 64;

    @Override
    public String id() {
        return "age";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            for (var birth : paper.every(BirthDate.class)) {
                paper.tour().ifPresent(tour -> compare(facts, birth, tour, comparison));
            }
        }
        return comparison.results();
    }

    private static void compare(ServiceFacts facts, BirthDate birth, Tour tour, Comparison comparison) {
        var entry = tour.entered().or(tour::inducted).or(tour::enlisted);
        if (entry.isEmpty()) {
            comparison.cannotTell(
                    "The date of birth is there, but no date of entry to hold it against.", Set.of(), List.of(birth));
            return;
        }
        var restsOn = List.of(birth, tour);
        int oldest = years(birth.born().earliest(), entry.get().latest());
        int youngest = years(birth.born().latest(), entry.get().earliest());
        boolean woman = facts.first(SexFact.class)
                .filter(fact -> fact.sex() == Sex.FEMALE)
                .isPresent();
        int least = woman ? YOUNGEST_WOMAN : YOUNGEST;
        var born = Wording.date(birth.born());
        var entered = Wording.date(entry.get());
        if (birth.born().earliest().isAfter(entry.get().latest())) {
            comparison.disagrees(
                    "Born %s, after the entry into service on %s.".formatted(born, entered), Set.of(), restsOn);
        } else if (oldest < least) {
            comparison.disagrees(
                    "Born %s, so aged %d on entry on %s: %s younger than the Army took."
                            .formatted(born, oldest, entered, Wording.many(least - oldest, "year")),
                    Set.of(),
                    restsOn);
        } else if (youngest >= OLDEST
                || youngest >= OLDEST_INDUCTED && inducted(tour).isPresent()) {
            comparison.disagrees(
                    "Born %s, so aged %d on entry on %s: older than men were taken.".formatted(born, youngest, entered),
                    Set.of(),
                    restsOn);
        } else {
            comparison.agrees("Aged %d on entry.".formatted(youngest), Set.of(), restsOn);
        }
    }

    /** The induction, when it opened this service. An old soldier's recall is no induction. */
    private static Optional<PartialDate> inducted(Tour tour) {
        return tour.enlisted().isPresent() ? Optional.empty() : tour.inducted();
    }

    private static int years(LocalDate born, LocalDate day) {
        return born.isAfter(day) ? 0 : Period.between(born, day).getYears();
    }
}
