package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;

/** The dates of one paper against each other: each must be possible after the one that comes before it in life. */
final class DateOrderCheck implements Check {
    private static final Provenance RULE =
            new Provenance("The order of dates on one paper (common practice)", Grade.MEMORY);

    @Override
    public String id() {
        return "date-order";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            var steps = steps(paper);
            for (int i = 0; i + 1 < steps.size(); i++) {
                compare(steps.get(i), steps.get(i + 1), comparison);
            }
            induction(paper, comparison);
        }
        return comparison.results();
    }

    private record Step(String what, PartialDate date, ServiceFact fact) {}

    private static void compare(Step one, Step next, Comparison comparison) {
        List<ServiceFact> both = List.of(one.fact(), next.fact());
        if (next.date().latest().isBefore(one.date().earliest())) {
            long days =
                    one.date().earliest().toEpochDay() - next.date().latest().toEpochDay();
            comparison.disagrees(
                    "The %s on %s lies %s before the %s on %s."
                            .formatted(
                                    next.what(),
                                    Wording.date(next.date()),
                                    Wording.days(days),
                                    one.what(),
                                    Wording.date(one.date())),
                    Set.of(),
                    both);
        } else {
            comparison.agrees("The dates follow in order.", Set.of(), both);
        }
    }

    private static List<Step> steps(OnePaper paper) {
        var steps = new ArrayList<Step>();
        paper.tour().ifPresent(tour -> add(steps, "entry into active service", tour.entered(), tour));
        var stays = paper.stays().stream()
                .sorted(Comparator.comparing(
                        stay -> stay.departed().or(stay::arrived), Comparator.comparing(DateOrderCheck::orNever)))
                .toList();
        for (var stay : stays) {
            add(steps, "departure for " + stay.destination(), stay.departed(), stay);
            add(steps, "arrival at " + stay.destination(), stay.arrived(), stay);
            add(steps, "departure from " + stay.destination(), stay.left(), stay);
            add(steps, "return from " + stay.destination(), stay.returned(), stay);
        }
        paper.tour().ifPresent(tour -> add(steps, "separation", tour.separated(), tour));
        return steps;
    }

    /** Stays without a date go last, where they add no step. */
    private static PartialDate orNever(Optional<PartialDate> date) {
        return date.orElse(PartialDate.year(1999));
    }

    private static void add(List<Step> steps, String what, Optional<PartialDate> date, ServiceFact fact) {
        date.ifPresent(day -> steps.add(new Step(what, day, fact)));
    }

    /** Men were inducted, sent home for some weeks, and entered active service after; never the other way about. */
    private static void induction(OnePaper paper, Comparison comparison) {
        paper.tour()
                .filter(tour -> tour.inducted().isPresent() && tour.entered().isPresent())
                .ifPresent(tour -> compare(
                        new Step("induction", tour.inducted().get(), tour),
                        new Step("entry into active service", tour.entered().get(), tour),
                        comparison));
    }
}
