package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.unit.CampaignCredit;
import org.honorsdue.reference.unit.UnitTables;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;

/**
 * Each campaign named against the credit of the units he is known to have been with.
 *
 * <p>The organization entry often names only the unit he came home with, so a campaign it lacks is not held against the
 * paper. Evidence that puts him with units for the whole time of the campaign, give or take {@value #JOINING} days for
 * joining and leaving, is: then none but the individual routes to the star are left.
 */
final class CampaignUnitCheck implements Check {
    private static final int JOINING = 14;
    private static final Provenance RULE = new Provenance(
            "32 CFR 578.48(c), 2006 edition: the unit took part, and he was present for duty with it", Grade.TEXT);

    private final Reference reference;
    private final Supplier<UnitTables> units;

    CampaignUnitCheck(Reference reference, Supplier<UnitTables> units) {
        this.reference = reference;
        this.units = units;
    }

    @Override
    public String id() {
        return "campaign-unit";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var known = facts.every(Assignment.class).stream()
                .filter(assignment -> credit(assignment).isPresent())
                .toList();
        if (known.isEmpty()) {
            return List.of();
        }
        var comparison = new Comparison(id(), RULE);
        for (var claim : facts.every(CampaignClaim.class)) {
            reference
                    .campaign(claim.campaign())
                    .filter(campaign -> !campaign.blanket())
                    .ifPresent(campaign -> compare(facts, known, claim, campaign, comparison));
        }
        return comparison.results();
    }

    private void compare(
            ServiceFacts facts, List<Assignment> known, CampaignClaim claim, Campaign campaign, Comparison comparison) {
        var medal = CampaignStars.medal(campaign.theater()).map(Set::of).orElse(Set.of());
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(claim);
        var crediting = known.stream()
                .filter(assignment -> credits(assignment, campaign))
                .filter(assignment -> assignment.atSeparation() || mayOverlap(assignment, whole(campaign)))
                .findFirst();
        if (crediting.isPresent()) {
            restsOn.add(crediting.get());
            comparison.agrees(
                    "%s is credited to %s."
                            .formatted(campaign.name(), crediting.get().designation()),
                    medal,
                    restsOn);
            return;
        }
        var with = known.stream()
                .filter(assignment -> !assignment.atSeparation() && mayOverlap(assignment, whole(campaign)))
                .toList();
        restsOn.addAll(with.isEmpty() ? known : with);
        var names = Wording.list(
                restsOn.stream().skip(1).map(CampaignUnitCheck::name).distinct().toList());
        if (with.isEmpty() || !covered(facts, with, campaign)) {
            comparison.cannotTell(
                    "%s is not among the campaigns of %s, but he may have been with another unit then."
                            .formatted(campaign.name(), names),
                    medal,
                    restsOn,
                    Entry.ORGANIZATION);
            return;
        }
        var credit = credit(with.get(0)).orElseThrow();
        comparison.disagrees(
                credit.provenance(),
                "%s is named, but he was with %s all that time, which was not credited with it%s."
                        .formatted(
                                campaign.name(),
                                names,
                                credit.provenance().grade() == Grade.MEMORY
                                        ? " (its list of campaigns is from memory)"
                                        : ""),
                medal,
                restsOn,
                Entry.ORGANIZATION);
    }

    private static String name(ServiceFact fact) {
        return fact instanceof Assignment assignment ? assignment.designation() : "";
    }

    /** The list that counts for a unit: its own, or else the nearest one above it. */
    private Optional<CampaignCredit> credit(Assignment assignment) {
        return assignment.units().stream()
                .flatMap(unit -> units.get().campaignsOf(unit).stream())
                .findFirst();
    }

    private boolean credits(Assignment assignment, Campaign campaign) {
        return credit(assignment)
                .filter(list -> list.campaigns().contains(campaign.id()))
                .isPresent();
    }

    /** Whether the units leave no more than some days of his time in the campaign uncovered. */
    private static boolean covered(ServiceFacts facts, List<Assignment> with, Campaign campaign) {
        var his = Abroad.of(facts).stream()
                .filter(stay -> stay.mayLieIn(campaign.theater()))
                .flatMap(stay -> stay.days().intersection(whole(campaign)).stream())
                .findFirst()
                .orElse(whole(campaign));
        long uncovered = 0;
        for (var day = his.first(); !day.isAfter(his.last()); day = day.plusDays(1)) {
            var today = new DateSpan(day, day);
            if (with.stream().noneMatch(assignment -> surelyHolds(assignment, today))) {
                uncovered++;
            }
        }
        return uncovered <= JOINING;
    }

    private static boolean surelyHolds(Assignment assignment, DateSpan day) {
        return assignment.from().isPresent()
                && assignment.to().isPresent()
                && !assignment.from().get().latest().isAfter(day.first())
                && !assignment.to().get().earliest().isBefore(day.last());
    }

    private static boolean mayOverlap(Assignment assignment, DateSpan span) {
        var from = assignment.from().map(PartialDate::earliest).orElse(LocalDate.MIN);
        var to = assignment.to().map(PartialDate::latest).orElse(LocalDate.MAX);
        return !from.isAfter(span.last()) && !to.isBefore(span.first());
    }

    private static DateSpan whole(Campaign campaign) {
        var ground = campaign.ground();
        var air = campaign.air();
        return new DateSpan(
                ground.first().isBefore(air.first()) ? ground.first() : air.first(),
                ground.last().isAfter(air.last()) ? ground.last() : air.last());
    }
}
