package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.law.Award;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;

/**
 * The year of each order cited against the award, the entry into service and the separation: no order before there was
 * such an award or such a soldier, none cited on a paper older than the order.
 *
 * <p>Which order credits which campaign is not checked: the number on a paper is the list the clerk used, and those
 * lists were amended again and again.
 */
final class OrderReferenceCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "An order is younger than the award and older than the paper that cites it (common practice); "
                    + "dates of establishment: table of awards",
            Grade.SECONDARY);

    private final Reference reference;

    OrderReferenceCheck(Reference reference) {
        this.reference = reference;
    }

    @Override
    public String id() {
        return "order-reference";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            for (var claim : paper.every(AwardClaim.class)) {
                for (var order : claim.orders()) {
                    compare(paper, claim, order, comparison);
                }
                claim.date().ifPresent(date -> dated(claim, date, comparison));
            }
        }
        return comparison.results();
    }

    private void dated(AwardClaim claim, PartialDate date, Comparison comparison) {
        reference
                .award(claim.award())
                .filter(award -> award.kind() == Award.Kind.DECORATION)
                .flatMap(Award::established)
                .filter(date.latest()::isBefore)
                .ifPresent(established -> comparison.disagrees(
                        "%s is dated %s, but the award was set up on %s only."
                                .formatted(claim.asTyped(), Wording.date(date), Wording.day(established)),
                        Set.of(claim.award()),
                        List.of(claim)));
    }

    private void compare(OnePaper paper, AwardClaim claim, OrderReference order, Comparison comparison) {
        if (order.year().isEmpty()) {
            return;
        }
        int year = order.year().getAsInt();
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(claim);
        var established =
                reference.award(claim.award()).flatMap(Award::established).map(LocalDate::getYear);
        if (established.filter(set -> year < set).isPresent()) {
            comparison.disagrees(
                    "%s cites an order of %d, but the award was set up in %d only: %s too early."
                            .formatted(
                                    claim.asTyped(),
                                    year,
                                    established.get(),
                                    Wording.many(established.get() - year, "year")),
                    Set.of(claim.award()),
                    restsOn);
            return;
        }
        paper.tour().ifPresent(restsOn::add);
        var entered = firstYear(paper.facts());
        var separated =
                paper.tour().flatMap(Tour::separated).map(date -> date.latest().getYear());
        if (entered.isPresent() && year < entered.getAsInt()) {
            comparison.disagrees(
                    "%s cites an order of %d, before he entered service in %d."
                            .formatted(claim.asTyped(), year, entered.getAsInt()),
                    Set.of(claim.award()),
                    restsOn);
        } else if (separated.filter(out -> year > out).isPresent()) {
            comparison.disagrees(
                    "%s cites an order of %d, but the paper was made out in %d."
                            .formatted(claim.asTyped(), year, separated.get()),
                    Set.of(claim.award()),
                    restsOn);
        } else {
            comparison.agrees(
                    "The order cited with %s lies inside his service.".formatted(claim.asTyped()),
                    Set.of(claim.award()),
                    restsOn);
        }
    }

    private static OptionalInt firstYear(ServiceFacts facts) {
        return facts.every(Tour.class).stream()
                .flatMap(tour -> tour.entered().stream())
                .flatMapToInt(date -> IntStream.of(date.earliest().getYear()))
                .min();
    }
}
