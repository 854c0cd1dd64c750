package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.AssaultLanding;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.paper.Entry;

/**
 * An arrowhead typed on a theatre ribbon against the assault landings, jumps and glider landings of the campaigns named,
 * on days when he was in the theatre. One arrowhead a ribbon, however many assaults.
 *
 * <p>The list of assaults is from memory. Where only a landing whose credit was refused or is disputed would fit, one cannot
 * tell; and such a jump or glider landing counts only for a man whose paper shows anything airborne.
 */
final class ArrowheadCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "Arrowhead: one on each theatre ribbon, for an assault named in orders; list of assaults from memory",
            Grade.MEMORY);

    private final Reference reference;

    ArrowheadCheck(Reference reference) {
        this.reference = reference;
    }

    @Override
    public String id() {
        return "arrowhead";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var claim : facts.every(AwardClaim.class)) {
            int arrowheads = claim.devices().stream()
                    .filter(worn -> worn.device() == Device.ARROWHEAD)
                    .mapToInt(worn -> worn.count())
                    .sum();
            if (arrowheads > 0) {
                theater(claim).ifPresent(theater -> compare(facts, claim, theater, arrowheads, comparison));
            }
        }
        return comparison.results();
    }

    private void compare(ServiceFacts facts, AwardClaim claim, Theater theater, int arrowheads, Comparison comparison) {
        var medal = Set.of(claim.award());
        if (arrowheads > 1) {
            comparison.disagrees(
                    "%d arrowheads are typed on one ribbon; one is worn however many the assaults."
                            .formatted(arrowheads),
                    medal,
                    List.of(claim));
        }
        var claims = facts.every(CampaignClaim.class).stream()
                .filter(named ->
                        campaign(named).filter(one -> one.theater() == theater).isPresent())
                .toList();
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(claim);
        restsOn.addAll(claims);
        var evidence = facts.every(Assault.class);
        var named = claims.stream().map(CampaignClaim::campaign).toList();
        boolean shown = OnePaper.readWhole(facts, Entry.BATTLES_AND_CAMPAIGNS);
        if (!evidence.isEmpty()) {
            restsOn.addAll(evidence);
            comparison.agrees("An assault is in evidence for the arrowhead typed.", medal, restsOn);
            return;
        }
        if (!shown || named.isEmpty() && !campaignsBlank(facts)) {
            comparison.cannotTell(
                    "An arrowhead is typed; the campaigns it could belong to were not all supplied or read.",
                    medal,
                    restsOn,
                    Entry.BATTLES_AND_CAMPAIGNS);
            return;
        }
        boolean airborne = airborne(facts);
        var landings = reference.assaults().stream()
                .filter(landing -> named.contains(landing.campaign()))
                .filter(landing ->
                        landing.credited() || airborne || landing.means().equals("amphibious"))
                .toList();
        if (landings.isEmpty()) {
            comparison.disagrees(
                    named.isEmpty()
                            ? "An arrowhead is typed, but no campaign of that theatre is named."
                            : "An arrowhead is typed, but no assault landing, jump or glider landing is known in %s."
                                    .formatted(Wording.list(claims.stream()
                                            .flatMap(one -> campaign(one).stream())
                                            .map(Campaign::name)
                                            .distinct()
                                            .toList())),
                    medal,
                    restsOn,
                    Entry.BATTLES_AND_CAMPAIGNS);
            return;
        }
        presence(facts, theater, landings, medal, restsOn, comparison);
    }

    private static void presence(
            ServiceFacts facts,
            Theater theater,
            List<AssaultLanding> landings,
            Set<String> medal,
            List<ServiceFact> restsOn,
            Comparison comparison) {
        var there =
                Abroad.of(facts).stream().filter(stay -> stay.mayLieIn(theater)).toList();
        boolean crossings = OnePaper.crossingsShown(facts);
        if (there.isEmpty() || !crossings) {
            comparison.cannotTell(
                    "An arrowhead is typed; the crossings do not tell whether he was there in time.",
                    medal,
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US);
            return;
        }
        there.forEach(stay -> restsOn.add(stay.fact()));
        var possible = landings.stream()
                .filter(landing -> there.stream().anyMatch(stay -> stay.days().overlaps(landing.dates())))
                .min(Comparator.comparing(landing -> !landing.credited()));
        if (possible.isPresent() && possible.get().credited()) {
            comparison.agrees(
                    "An arrowhead is typed, and he was in the theatre at the time of a landing (%s)."
                            .formatted(possible.get().place()),
                    medal,
                    restsOn);
            return;
        }
        if (possible.isPresent()) {
            comparison.cannotTell(
                    "An arrowhead is typed; the only landing that would fit (%s) is one whose credit was refused or is disputed."
                            .formatted(possible.get().place()),
                    medal,
                    restsOn);
            return;
        }
        var nearest = landings.stream()
                .min(Comparator.comparingLong(landing -> gap(there, landing)))
                .orElseThrow();
        comparison.disagrees(
                "An arrowhead is typed, but he was not in the theatre at any landing of the campaigns named; the nearest, %s on %s, is %s away."
                        .formatted(
                                nearest.place(),
                                Wording.day(nearest.dates().first()),
                                Wording.days(gap(there, nearest))),
                medal,
                restsOn,
                Entry.SERVICE_OUTSIDE_US);
    }

    /** Wings, a glider badge, an airborne specialty: something that a man who jumped or rode a glider would have. */
    private boolean airborne(ServiceFacts facts) {
        return facts.every(AwardClaim.class).stream()
                        .anyMatch(claim -> claim.award().equals("parachutist-badge")
                                || claim.award().equals("glider-badge")
                                || claim.award().equals("aviation-badge"))
                || facts.every(Specialty.class).stream()
                        .flatMap(specialty -> specialty.number().stream())
                        .flatMap(number -> reference.specialty(number).stream())
                        .anyMatch(specialty -> specialty.airborne() != MilitarySpecialty.Leaning.NO);
    }

    private static long gap(List<Abroad> there, AssaultLanding landing) {
        return there.stream()
                .mapToLong(stay -> Abroad.gap(stay.days(), landing.dates()))
                .min()
                .orElseThrow();
    }

    private static boolean campaignsBlank(ServiceFacts facts) {
        return facts.papers() > 0 && OnePaper.readWhole(facts, Entry.BATTLES_AND_CAMPAIGNS);
    }

    private Optional<Campaign> campaign(CampaignClaim claim) {
        return reference.campaign(claim.campaign());
    }

    private static Optional<Theater> theater(AwardClaim claim) {
        return List.of(Theater.EAME, Theater.ASIATIC_PACIFIC, Theater.AMERICAN).stream()
                .filter(theater -> CampaignStars.medal(theater).equals(Optional.of(claim.award())))
                .findFirst();
    }
}
