package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.paper.Entry;

/**
 * Service stripes typed against years of service: one for each three whole years, lost time taken off.
 *
 * <p>Earlier enlistments count, so too many stripes are held against the paper only when it shows that there was no
 * prior service, or when even longevity, which counts inactive time too, is too short. Ten days' grace.
 */
final class ServiceStripesCheck implements Check {
    static final String STRIPES = "service-stripes";
    private static final Provenance RULE =
            new Provenance("Uniform regulations AR 600-35 and AR 600-40, from memory", Grade.MEMORY);
    private static final double THREE_YEARS = 3 * 365.25;
    private static final int SLACK = 10;

    @Override
    public String id() {
        return "service-stripes";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            var claims = paper.every(AwardClaim.class).stream()
                    .filter(claim -> claim.award().equals(STRIPES))
                    .toList();
            if (!claims.isEmpty()) {
                compare(paper, claims, comparison);
            }
        }
        return comparison.results();
    }

    private static void compare(OnePaper paper, List<AwardClaim> claims, Comparison comparison) {
        int typed = claims.stream().mapToInt(AwardClaim::count).max().orElseThrow();
        var restsOn = new ArrayList<ServiceFact>(claims);
        paper.tour().ifPresent(restsOn::add);
        var spans = ServiceSpan.of(paper);
        if (spans.isEmpty()) {
            comparison.cannotTell(
                    stripesAre(typed) + " typed; the dates of service were not supplied.",
                    Set.of(STRIPES),
                    restsOn,
                    Entry.ENTERED_ACTIVE_SERVICE,
                    Entry.SEPARATED);
            return;
        }
        long fewest = spans.stream().mapToLong(ServiceSpan::fewestDays).min().orElseThrow();
        long most = spans.stream().mapToLong(ServiceSpan::mostDays).max().orElseThrow();
        if (paper.number() > 1) {
            most += earlier(paper);
        }
        var longevity = paper.total(ServiceTotal.Kind.LONGEVITY);
        longevity.ifPresent(restsOn::add);
        long ceiling = Math.max(most, longevity.map(TimeAbroad::days).orElse(0L));
        long least = (long) Math.floor(Math.max(0, fewest - SLACK) / THREE_YEARS);
        if (typed < least) {
            comparison.disagrees(
                    "%s typed, but %s of service make %d.".formatted(stripesAre(typed), Wording.days(fewest), least),
                    Set.of(STRIPES),
                    restsOn);
        } else if (typed <= Math.floor((ceiling + SLACK) / THREE_YEARS)) {
            comparison.agrees(
                    "%s typed for %s of service.".formatted(stripesAre(typed), Wording.days(ceiling)),
                    Set.of(STRIPES),
                    restsOn);
        } else if (longevity.isPresent() || noPriorService(paper)) {
            comparison.disagrees(
                    "%s typed, but %s of service are %s short of what the last needs."
                            .formatted(
                                    stripesAre(typed),
                                    Wording.days(ceiling),
                                    Wording.days((long) Math.ceil(typed * THREE_YEARS) - ceiling)),
                    Set.of(STRIPES),
                    restsOn);
        } else {
            comparison.cannotTell(
                    "%s typed, more than this service earns; earlier service would explain it and was not supplied."
                            .formatted(stripesAre(typed)),
                    Set.of(STRIPES),
                    restsOn,
                    Entry.PRIOR_SERVICE);
        }
    }

    private static long earlier(OnePaper paper) {
        return OnePaper.allOf(paper.facts()).stream()
                .filter(other -> other.number() < paper.number())
                .flatMap(other -> ServiceSpan.of(other).stream().limit(1))
                .mapToLong(ServiceSpan::mostDays)
                .sum();
    }

    /** The clerk typed None, or the entry was shown and nothing came of it. */
    private static boolean noPriorService(OnePaper paper) {
        return paper.none(Entry.PRIOR_SERVICE).isPresent()
                || paper.readWhole(Entry.PRIOR_SERVICE)
                        && paper.facts().all().stream().noneMatch(fact -> standsIn(fact, Entry.PRIOR_SERVICE));
    }

    private static boolean standsIn(ServiceFact fact, Entry entry) {
        return fact.basis().origins().stream()
                .anyMatch(origin -> origin instanceof Origin.OnPaper typed && typed.entry() == entry);
    }

    private static String stripesAre(int typed) {
        return typed == 1 ? "1 service stripe is" : typed + " service stripes are";
    }
}
