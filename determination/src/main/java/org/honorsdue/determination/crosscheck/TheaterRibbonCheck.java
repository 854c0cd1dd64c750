package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.TheaterWindow;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;

/**
 * A ribbon of a theatre overseas against the crossings: he must have been there inside its dates. The American ribbon is
 * left alone, because a year at home earns it too.
 */
final class TheaterRibbonCheck implements Check {
    private static final Set<String> OVERSEAS = Set.of("eame-campaign-medal", "asiatic-pacific-campaign-medal");

    private final Reference reference;

    TheaterRibbonCheck(Reference reference) {
        this.reference = reference;
    }

    @Override
    public String id() {
        return "theater-ribbon";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var results = new ArrayList<Crosscheck>();
        for (var window : reference.theaters()) {
            if (OVERSEAS.contains(window.medal())) {
                var comparison = new Comparison(id(), window.provenance());
                facts.every(AwardClaim.class).stream()
                        .filter(claim -> claim.award().equals(window.medal()))
                        .findFirst()
                        .ifPresent(claim -> compare(facts, claim, window, comparison));
                results.addAll(comparison.results());
            }
        }
        return List.copyOf(results);
    }

    private static void compare(ServiceFacts facts, AwardClaim claim, TheaterWindow window, Comparison comparison) {
        var stays = Abroad.of(facts);
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(claim);
        stays.forEach(stay -> restsOn.add(stay.fact()));
        var medal = Set.of(window.medal());
        var there = stays.stream()
                .filter(stay -> stay.mayLieIn(window.theater()))
                .map(Abroad::days)
                .toList();
        if (there.stream().anyMatch(window.dates()::overlaps)) {
            comparison.agrees(
                    "The ribbon of %s goes with the crossings.".formatted(Wording.theater(window.theater())),
                    medal,
                    restsOn);
            return;
        }
        boolean known = OnePaper.crossingsShown(facts);
        if (!known) {
            comparison.cannotTell(
                    "The ribbon of %s is typed; the crossings were not all supplied or read."
                            .formatted(Wording.theater(window.theater())),
                    medal,
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US);
            return;
        }
        comparison.disagrees(
                there.isEmpty()
                        ? "The ribbon of %s is typed, but no crossing to it is."
                                .formatted(Wording.theater(window.theater()))
                        : "The ribbon of %s is typed, but he was there %s outside its dates (%s)."
                                .formatted(
                                        Wording.theater(window.theater()),
                                        Wording.days(nearest(there, window.dates())),
                                        Wording.span(window.dates())),
                medal,
                restsOn,
                Entry.SERVICE_OUTSIDE_US);
    }

    private static long nearest(List<DateSpan> there, DateSpan dates) {
        return there.stream().mapToLong(span -> Abroad.gap(span, dates)).min().orElseThrow();
    }
}
