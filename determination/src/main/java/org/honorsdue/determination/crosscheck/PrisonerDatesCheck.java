package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * Time as a prisoner against the dates of service, the days abroad, the surrender of the captor, and the campaigns: days
 * in captivity earn no campaign star, so a campaign that ran wholly inside them cannot be his.
 */
final class PrisonerDatesCheck implements Check {
    private static final Provenance RULE =
            new Provenance("32 CFR 578.48(c), 2006 edition: no credit for time as a prisoner", Grade.TEXT);
    private static final Set<String> TOUCHED = Set.of("prisoner-of-war-medal");
    private static final LocalDate WAR_BEGAN = LocalDate.of(1941, 12, 7);
    /** Liberated men came in for some weeks after the surrender of Japan. */
    private static final LocalDate LAST_FREED = LocalDate.of(1945, 10, 31);

    private final Reference reference;

    PrisonerDatesCheck(Reference reference) {
        this.reference = reference;
    }

    @Override
    public String id() {
        return "prisoner-dates";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var captivity : facts.every(Captivity.class)) {
            compare(facts, captivity, comparison);
        }
        return comparison.results();
    }

    private void compare(ServiceFacts facts, Captivity captivity, Comparison comparison) {
        if (captivity.from().isEmpty() || captivity.to().isEmpty()) {
            comparison.cannotTell(
                    "Captivity is stated without both dates, so it cannot be held against the rest.",
                    TOUCHED,
                    List.of(captivity));
            return;
        }
        var from = captivity.from().get();
        var to = captivity.to().get();
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(captivity);
        if (to.latest().isBefore(from.earliest())) {
            comparison.disagrees(
                    "Captivity ends on %s, before it begins on %s.".formatted(Wording.date(to), Wording.date(from)),
                    TOUCHED,
                    restsOn);
            return;
        }
        var held = new DateSpan(from.earliest(), to.latest());
        if (held.last().isBefore(WAR_BEGAN)
                || to.earliest().isAfter(LAST_FREED)
                || from.latest().isBefore(WAR_BEGAN)) {
            comparison.disagrees(
                    "Captivity from %s to %s lies outside the war.".formatted(Wording.date(from), Wording.date(to)),
                    TOUCHED,
                    restsOn);
            return;
        }
        boolean fits = inService(facts, from, to, restsOn, comparison);
        fits &= abroad(facts, from, to, restsOn, comparison);
        fits &= campaigns(facts, from, to, captivity, comparison);
        if (fits) {
            comparison.agrees(
                    "Captivity from %s to %s fits the dates of service and the days abroad."
                            .formatted(Wording.date(from), Wording.date(to)),
                    TOUCHED,
                    restsOn);
        }
    }

    private static boolean inService(
            ServiceFacts facts, PartialDate from, PartialDate to, List<ServiceFact> restsOn, Comparison comparison) {
        var tours = facts.every(Tour.class);
        if (tours.isEmpty() || tours.stream().anyMatch(tour -> mayHold(tour, from, to))) {
            return true;
        }
        var all = new ArrayList<>(restsOn);
        all.addAll(tours);
        comparison.disagrees(
                "Captivity from %s to %s does not lie inside his dates of service."
                        .formatted(Wording.date(from), Wording.date(to)),
                TOUCHED,
                all);
        return false;
    }

    private static boolean mayHold(Tour tour, PartialDate from, PartialDate to) {
        var entered = tour.entered().map(PartialDate::earliest).orElse(LocalDate.MIN);
        var separated = tour.separated().map(PartialDate::latest).orElse(LocalDate.MAX);
        return !from.latest().isBefore(entered) && !to.earliest().isAfter(separated);
    }

    private static boolean abroad(
            ServiceFacts facts, PartialDate from, PartialDate to, List<ServiceFact> restsOn, Comparison comparison) {
        var stays = Abroad.of(facts);
        boolean known = OnePaper.crossingsShown(facts);
        if (!known) {
            return true;
        }
        boolean capturedAbroad =
                stays.stream().anyMatch(stay -> stay.days().overlaps(new DateSpan(from.earliest(), from.latest())));
        boolean freedAbroad =
                stays.stream().anyMatch(stay -> stay.days().overlaps(new DateSpan(to.earliest(), to.latest())));
        if (capturedAbroad && freedAbroad) {
            return true;
        }
        var all = new ArrayList<>(restsOn);
        stays.forEach(stay -> all.add(stay.fact()));
        comparison.disagrees(
                "He is said to have been %s on %s, when the crossings do not put him abroad."
                        .formatted(capturedAbroad ? "freed" : "captured", Wording.date(capturedAbroad ? to : from)),
                TOUCHED,
                all,
                Entry.SERVICE_OUTSIDE_US);
        return false;
    }

    private boolean campaigns(
            ServiceFacts facts, PartialDate from, PartialDate to, Captivity captivity, Comparison comparison) {
        boolean fits = true;
        for (var claim : facts.every(CampaignClaim.class)) {
            var inside = reference
                    .campaign(claim.campaign())
                    .filter(campaign -> !campaign.blanket())
                    .filter(campaign -> inside(campaign, from, to));
            if (inside.isPresent()) {
                fits = false;
                var medal =
                        CampaignStars.medal(inside.get().theater()).map(Set::of).orElse(Set.of());
                comparison.disagrees(
                        "%s (%s) ran wholly while he was a prisoner (%s to %s); captivity earns no star."
                                .formatted(
                                        inside.get().name(),
                                        Wording.span(inside.get().ground()),
                                        Wording.date(from),
                                        Wording.date(to)),
                        medal,
                        List.of(claim, captivity));
            }
        }
        return fits;
    }

    /** Whether every day of the campaign, by either column, surely lies in the captivity. */
    private static boolean inside(Campaign campaign, PartialDate from, PartialDate to) {
        return campaign.ground().first().isAfter(from.latest())
                && campaign.air().first().isAfter(from.latest())
                && campaign.ground().last().isBefore(to.earliest())
                && campaign.air().last().isBefore(to.earliest());
    }
}
