package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;

/**
 * Each wound against the dates of service, the days abroad, the theatre of the place named, the end of the fighting,
 * and the campaigns the paper names: a man wounded in action was in a campaign that day, unless he was bombed in England
 * or hit at sea.
 */
final class WoundDatesCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "Campaign dates: Center of Military History; a wound in action lies inside the service and the theatre (common practice)",
            Grade.TEXT);
    private static final Set<String> TOUCHED = Set.of("purple-heart");
    private static final DateSpan WAR = new DateSpan(LocalDate.of(1941, 12, 7), LocalDate.of(1945, 9, 2));
    /** Places where the enemy reached men who were in no campaign. */
    private static final List<String> AWAY_FROM_THE_FRONT = List.of(
            "england",
            "scotland",
            "ireland",
            "wales",
            "britain",
            "united kingdom",
            "u k",
            "uk",
            "london",
            "at sea",
            "australia",
            "hawaii",
            "pearl",
            "english channel",
            "atlantic",
            "pacific ocean",
            "india",
            "egypt");

    private final Reference reference;

    WoundDatesCheck(Reference reference) {
        this.reference = reference;
    }

    @Override
    public String id() {
        return "wound-dates";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var wound : facts.every(Wound.class)) {
            wound.date()
                    .ifPresentOrElse(
                            date -> compare(facts, wound, date, comparison),
                            () -> comparison.cannotTell(
                                    "A wound is typed without a date (%s).".formatted(wound.asTyped()),
                                    TOUCHED,
                                    List.of(wound)));
        }
        return comparison.results();
    }

    private void compare(ServiceFacts facts, Wound wound, PartialDate date, Comparison comparison) {
        var day = new DateSpan(date.earliest(), date.latest());
        var when = "The wound of " + Wording.date(date);
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(wound);
        if (!day.overlaps(WAR)) {
            var stays = Abroad.of(facts);
            boolean home = !stays.isEmpty()
                    && stays.stream().noneMatch(stay -> stay.days().overlaps(day));
            stays.forEach(stay -> restsOn.add(stay.fact()));
            comparison.disagrees(
                    "%s lies %s outside the war (%s)%s."
                            .formatted(
                                    when,
                                    Wording.days(Abroad.gap(day, WAR)),
                                    Wording.span(WAR),
                                    home ? ", and outside the days he was abroad" : ""),
                    TOUCHED,
                    restsOn);
            return;
        }
        var tours = facts.every(Tour.class);
        if (!tours.isEmpty() && tours.stream().noneMatch(tour -> mayHold(tour, day))) {
            restsOn.addAll(tours);
            comparison.disagrees(when + " lies outside his dates of service.", TOUCHED, restsOn);
            return;
        }
        abroad(facts, wound, day, when, restsOn, comparison);
    }

    private void abroad(
            ServiceFacts facts,
            Wound wound,
            DateSpan day,
            String when,
            List<ServiceFact> restsOn,
            Comparison comparison) {
        boolean crossingsKnown = OnePaper.crossingsShown(facts);
        var stays = Abroad.of(facts);
        var then = stays.stream().filter(stay -> stay.days().overlaps(day)).toList();
        if (then.isEmpty()) {
            if (!crossingsKnown) {
                comparison.cannotTell(
                        when + " cannot be held against the crossings: they were not all supplied or read.",
                        TOUCHED,
                        restsOn,
                        Entry.SERVICE_OUTSIDE_US);
                return;
            }
            stays.forEach(stay -> restsOn.add(stay.fact()));
            comparison.disagrees(
                    stays.isEmpty()
                            ? when + " is typed, but the paper shows no service outside the United States."
                            : "%s lies %s outside the days he was abroad."
                                    .formatted(when, Wording.days(nearest(stays, day))),
                    TOUCHED,
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US);
            return;
        }
        then.forEach(stay -> restsOn.add(stay.fact()));
        var where = wound.place().flatMap(reference::place);
        if (where.isPresent() && !where.get().theaters().isEmpty()) {
            boolean possible = then.stream()
                    .anyMatch(stay -> where.get().theaters().stream().anyMatch(stay::mayLieIn));
            if (!possible) {
                comparison.disagrees(
                        "%s is placed at %s, but he was at %s then."
                                .formatted(
                                        when,
                                        where.get().name(),
                                        Wording.list(then.stream()
                                                .map(Abroad::destination)
                                                .toList())),
                        TOUCHED,
                        restsOn,
                        Entry.SERVICE_OUTSIDE_US);
                return;
            }
        }
        campaigns(facts, wound, day, when, then, restsOn, comparison);
    }

    private void campaigns(
            ServiceFacts facts,
            Wound wound,
            DateSpan day,
            String when,
            List<Abroad> then,
            List<ServiceFact> restsOn,
            Comparison comparison) {
        var running = reference.campaigns().stream()
                .filter(campaign -> then.stream().anyMatch(stay -> stay.mayLieIn(campaign.theater())))
                .filter(campaign -> !campaign.blanket())
                .filter(campaign -> runs(campaign, day))
                .toList();
        var claims = facts.every(CampaignClaim.class);
        boolean listed = claims.stream()
                .flatMap(claim -> reference.campaign(claim.campaign()).stream())
                .anyMatch(campaign -> campaign.blanket() || runs(campaign, day));
        boolean away = awayFromTheFront(wound.asTyped());
        if (listed) {
            comparison.agrees(when + " lies in a campaign the paper names.", TOUCHED, restsOn);
        } else if (running.isEmpty() && !away && !reference.campaigns().isEmpty()) {
            comparison.disagrees(
                    when + " lies outside every campaign of that theatre: no fighting is known there that day.",
                    TOUCHED,
                    restsOn);
        } else if (away || !campaignsShown(facts)) {
            comparison.agrees(when + " lies in the days he was abroad.", TOUCHED, restsOn);
        } else {
            restsOn.addAll(claims);
            comparison.disagrees(
                    "%s lies in none of the campaigns the paper names; %s ran that day."
                            .formatted(when, names(running)),
                    Stream.concat(
                                    TOUCHED.stream(),
                                    running.stream()
                                            .flatMap(campaign -> CampaignStars.medal(campaign.theater()).stream()))
                            .collect(Collectors.toSet()),
                    restsOn,
                    Entry.BATTLES_AND_CAMPAIGNS);
        }
    }

    private static boolean campaignsShown(ServiceFacts facts) {
        return OnePaper.readWhole(facts, Entry.BATTLES_AND_CAMPAIGNS);
    }

    private static String names(List<Campaign> campaigns) {
        return Wording.list(campaigns.stream()
                .sorted(Comparator.comparing(campaign -> campaign.ground().first()))
                .map(Campaign::name)
                .toList());
    }

    private static boolean runs(Campaign campaign, DateSpan day) {
        return campaign.ground().overlaps(day) || campaign.air().overlaps(day);
    }

    private static long nearest(List<Abroad> stays, DateSpan day) {
        return stays.stream()
                .mapToLong(stay -> Abroad.gap(stay.days(), day))
                .min()
                .orElseThrow();
    }

    private static boolean mayHold(Tour tour, DateSpan day) {
        var first = tour.entered().or(tour::inducted).map(PartialDate::earliest).orElse(LocalDate.MIN);
        var last = tour.separated().map(PartialDate::latest).orElse(LocalDate.MAX);
        return !first.isAfter(day.last()) && !last.isBefore(day.first());
    }

    private static boolean awayFromTheFront(String typed) {
        var words = " " + typed.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ") + " ";
        return AWAY_FROM_THE_FRONT.stream().anyMatch(place -> words.contains(" " + place + " "));
    }
}
