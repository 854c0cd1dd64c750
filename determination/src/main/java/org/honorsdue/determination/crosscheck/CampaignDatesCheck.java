package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * Each campaign named against the days he was in its theatre: he must have been there on at least one day of it.
 *
 * <p>Ground and air dates differ for five campaigns. The air column counts for the Air Forces, the ground column for
 * the arms that never served with them; for the services, which did both, either column will do. Worked case: a
 * rifleman who left the Mediterranean on 30 June 1943 was there during the air dates of Sicily only.
 */
final class CampaignDatesCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "32 CFR 578.48(c), 2006 edition (present for duty during the campaign); "
                    + "campaign dates: Center of Military History",
            Grade.TEXT);
    private static final Set<String> GROUND_ONLY = Set.of("Infantry", "Field Artillery", "Cavalry", "Armored Force");

    private final Reference reference;

    CampaignDatesCheck(Reference reference) {
        this.reference = reference;
    }

    @Override
    public String id() {
        return "campaign-dates";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        var claims = facts.every(CampaignClaim.class);
        if (claims.isEmpty()) {
            return List.of();
        }
        var abroad = Abroad.of(facts);
        for (var claim : claims) {
            reference
                    .campaign(claim.campaign())
                    .filter(campaign -> !campaign.blanket())
                    .ifPresent(campaign -> compare(facts, abroad, claim, campaign, comparison));
        }
        return comparison.results();
    }

    private static void compare(
            ServiceFacts facts, List<Abroad> abroad, CampaignClaim claim, Campaign campaign, Comparison comparison) {
        var medal = CampaignStars.medal(campaign.theater()).map(Set::of).orElse(Set.of());
        var dates = datesFor(facts, campaign);
        if (facts.every(OverseasStay.class).isEmpty() && abroad.isEmpty()) {
            withoutCrossings(facts, claim, campaign, dates, medal, comparison);
            return;
        }
        var there = abroad.stream()
                .filter(stay -> stay.mayLieIn(campaign.theater()))
                .toList();
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(claim);
        if (there.isEmpty()) {
            abroad.forEach(stay -> restsOn.add(stay.fact()));
            say(
                    facts,
                    "%s is named, but no crossing to %s is typed (only %s). A transfer between theatres was sometimes left out."
                            .formatted(
                                    campaign.name(),
                                    Wording.theater(campaign.theater()),
                                    Wording.list(abroad.stream()
                                            .map(Abroad::destination)
                                            .distinct()
                                            .toList())),
                    medal,
                    restsOn,
                    comparison);
            return;
        }
        var nearest = there.stream()
                .min(Comparator.comparingLong(stay -> gap(stay, dates)))
                .orElseThrow();
        restsOn.add(nearest.fact());
        long gap = gap(nearest, dates);
        if (gap == 0) {
            comparison.agrees(
                    "%s: he was in %s during it.".formatted(campaign.name(), Wording.theater(campaign.theater())),
                    medal,
                    restsOn);
            return;
        }
        var span = dates.stream()
                .min(Comparator.comparingLong(one -> Abroad.gap(nearest.days(), one)))
                .orElseThrow();
        say(
                facts,
                mismatch(campaign, nearest, span, gap) + otherColumn(campaign, nearest, dates),
                medal,
                restsOn,
                comparison);
    }

    private static void say(
            ServiceFacts facts, String says, Set<String> medal, List<ServiceFact> restsOn, Comparison comparison) {
        boolean all = OnePaper.crossingsShown(facts);
        if (all) {
            comparison.disagrees(says, medal, restsOn, Entry.SERVICE_OUTSIDE_US);
        } else {
            comparison.cannotTell(
                    says + " Not every crossing was supplied or could be read.",
                    medal,
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US);
        }
    }

    private static String mismatch(Campaign campaign, Abroad stay, DateSpan span, long gap) {
        if (span.last().isBefore(stay.days().first())) {
            return "%s ended on %s, %s before he reached %s on %s."
                    .formatted(
                            campaign.name(),
                            Wording.day(span.last()),
                            Wording.days(gap),
                            stay.destination(),
                            Wording.day(stay.days().first()));
        }
        return "%s began on %s, %s after he left %s on %s."
                .formatted(
                        campaign.name(),
                        Wording.day(span.first()),
                        Wording.days(gap),
                        stay.destination(),
                        Wording.day(stay.days().last()));
    }

    private static String otherColumn(Campaign campaign, Abroad stay, List<DateSpan> dates) {
        if (!dates.contains(campaign.air()) && stay.days().overlaps(campaign.air())) {
            return " Only the dates for air units (%s) would fit.".formatted(Wording.span(campaign.air()));
        }
        return "";
    }

    /** Without a crossing to go by, only the dates of service can rule a campaign out. */
    private static void withoutCrossings(
            ServiceFacts facts,
            CampaignClaim claim,
            Campaign campaign,
            List<DateSpan> dates,
            Set<String> medal,
            Comparison comparison) {
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(claim);
        boolean shown = OnePaper.crossingsShown(facts);
        if (shown) {
            comparison.disagrees(
                    "%s is named, but the paper shows no service outside the United States.".formatted(campaign.name()),
                    medal,
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US);
            return;
        }
        var tours = facts.every(Tour.class);
        boolean possible = tours.isEmpty()
                || tours.stream().anyMatch(tour -> dates.stream().anyMatch(span -> mayOverlap(tour, span)));
        if (possible) {
            comparison.cannotTell(
                    "%s is named; the crossings that would show whether he was there were not supplied."
                            .formatted(campaign.name()),
                    medal,
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US);
            return;
        }
        restsOn.addAll(tours);
        comparison.disagrees(
                "%s (%s) lies wholly outside his dates of service."
                        .formatted(campaign.name(), Wording.span(dates.get(0))),
                medal,
                restsOn);
    }

    private static boolean mayOverlap(Tour tour, DateSpan span) {
        var first = tour.entered().map(PartialDate::earliest).orElse(LocalDate.MIN);
        var last = tour.separated().map(PartialDate::latest).orElse(LocalDate.MAX);
        return !first.isAfter(span.last()) && !last.isBefore(span.first());
    }

    private static long gap(Abroad stay, List<DateSpan> dates) {
        return dates.stream()
                .mapToLong(span -> Abroad.gap(stay.days(), span))
                .min()
                .orElseThrow();
    }

    private static List<DateSpan> datesFor(ServiceFacts facts, Campaign campaign) {
        if (campaign.ground().equals(campaign.air())) {
            return List.of(campaign.ground());
        }
        var arms = facts.every(ArmFact.class);
        boolean air = arms.stream().anyMatch(ArmFact::airForces);
        boolean ground = !arms.isEmpty() && arms.stream().allMatch(arm -> GROUND_ONLY.contains(arm.arm()));
        if (ground && !air) {
            return List.of(campaign.ground());
        }
        return List.of(campaign.ground(), campaign.air());
    }
}
