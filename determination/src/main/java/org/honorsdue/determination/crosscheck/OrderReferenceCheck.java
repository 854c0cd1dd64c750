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
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.OrderCited;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;

/**
 * The year of each order cited against the award, the wound or the campaign, the entry into service and the separation: no
 * order before there was such an award, such a soldier or such an event, none cited on a paper older than the order.
 *
 * <p>Which number credits which campaign is not checked: the number on a paper is the list the clerk used, and those lists
 * were amended again and again.
 */
final class OrderReferenceCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "An order is younger than the award and older than the paper that cites it (common practice); "
                    + "dates of establishment: table of awards",
            Grade.SECONDARY);

    private static final String PURPLE_HEART = "purple-heart";

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
            campaigns(paper, comparison);
        }
        return comparison.results();
    }

    /** Behind the campaigns: no order is older than what it credits; one order alone credits all that is named. */
    private void campaigns(OnePaper paper, Comparison comparison) {
        var orders = paper.every(OrderCited.class).stream()
                .filter(cited -> cited.entry() == Entry.BATTLES_AND_CAMPAIGNS)
                .filter(cited -> cited.order().year().isPresent())
                .toList();
        var claims = paper.every(CampaignClaim.class);
        var years = claims.stream()
                .flatMap(claim -> reference.campaign(claim.campaign()).stream())
                .filter(campaign -> !campaign.blanket())
                .map(campaign -> earlier(
                                campaign.ground().first(), campaign.air().first())
                        .getYear())
                .sorted()
                .toList();
        if (orders.isEmpty() || years.isEmpty()) {
            return;
        }
        int needed = orders.size() == 1 ? years.get(years.size() - 1) : years.get(0);
        var separated =
                paper.tour().flatMap(Tour::separated).map(date -> date.latest().getYear());
        for (var cited : orders) {
            int year = cited.order().year().getAsInt();
            var restsOn = new ArrayList<ServiceFact>(claims);
            restsOn.add(cited);
            if (year < needed) {
                comparison.disagrees(
                        "%s is of %d, but a campaign it is cited for began in %d."
                                .formatted(cited.order().asTyped(), year, needed),
                        Set.of(),
                        restsOn);
            } else if (separated.filter(out -> year > out).isPresent()) {
                comparison.disagrees(
                        "%s is of %d, but the paper was made out in %d."
                                .formatted(cited.order().asTyped(), year, separated.get()),
                        Set.of(),
                        restsOn);
            } else {
                comparison.agrees(
                        "%s is younger than the campaigns it is cited for."
                                .formatted(cited.order().asTyped()),
                        Set.of(),
                        restsOn);
            }
        }
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    /** The year of the first wound, when every wound is dated. */
    private static OptionalInt firstWound(List<Wound> wounds) {
        return wounds.isEmpty()
                        || wounds.stream().anyMatch(wound -> wound.date().isEmpty())
                ? OptionalInt.empty()
                : wounds.stream()
                        .mapToInt(wound -> wound.date().orElseThrow().earliest().getYear())
                        .min();
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
        if (claim.award().equals(PURPLE_HEART)) {
            var wounds = paper.every(Wound.class, Entry.WOUNDS);
            var wounded = firstWound(wounds);
            if (wounded.isPresent() && year < wounded.getAsInt()) {
                restsOn.addAll(wounds);
                comparison.disagrees(
                        "%s cites an order of %d, but the first wound typed is of %d."
                                .formatted(claim.asTyped(), year, wounded.getAsInt()),
                        Set.of(PURPLE_HEART),
                        restsOn);
                return;
            }
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
