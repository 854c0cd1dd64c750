package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;

/**
 * Overseas service bars typed against months abroad, port to port: one for each six months, shorter absences added up,
 * a fraction lost.
 *
 * <p>Six months are taken as 183 days, with {@value #SLACK} days' grace on either side of each step, because texts
 * differ on whether both ends count and clerks counted months, not days. When the crossings are not all there, the
 * total of foreign service stands in for them.
 */
final class OverseasBarsCheck implements Check {
    static final String BARS = "overseas-service-bars";
    private static final Provenance RULE = new Provenance(
            "War Department Circular 268, 30 June 1944, as quoted in descriptions of the bar", Grade.SECONDARY);
    private static final double HALF_YEAR = 365.25 / 2;
    private static final int SLACK = 8;

    @Override
    public String id() {
        return "overseas-bars";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            var claims = paper.every(AwardClaim.class).stream()
                    .filter(claim -> claim.award().equals(BARS))
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
        var days = TimeAbroad.of(paper);
        if (days.isEmpty()) {
            comparison.cannotTell(
                    "%s typed; the crossings and the total of foreign service that would bear them out are missing."
                            .formatted(barsAre(typed)),
                    Set.of(BARS),
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US,
                    Entry.FOREIGN_SERVICE);
            return;
        }
        var abroad = days.get();
        restsOn.addAll(abroad.restsOn());
        long least = (long) Math.floor(Math.max(0, abroad.fewest() - SLACK) / HALF_YEAR);
        long most = (long) Math.floor((abroad.most() + SLACK) / HALF_YEAR);
        if (typed >= least && typed <= most) {
            comparison.agrees(
                    "%s typed for %s abroad.".formatted(barsAre(typed), Wording.days(abroad.most())),
                    Set.of(BARS),
                    restsOn);
            return;
        }
        boolean tooMany = typed > most;
        long away = tooMany
                ? (long) Math.ceil(typed * HALF_YEAR) - abroad.most()
                : abroad.fewest() - (long) Math.ceil((typed + 1) * HALF_YEAR);
        comparison.disagrees(
                "%s typed, but %s abroad make %s: %s."
                        .formatted(
                                barsAre(typed),
                                Wording.days(abroad.most()),
                                least == most ? Long.toString(least) : least + " or " + most,
                                tooMany
                                        ? "the last would need " + Wording.days(away) + " more"
                                        : "another was reached " + Wording.days(away) + " before the end"),
                Set.of(BARS),
                restsOn);
    }

    private static String barsAre(int typed) {
        return typed == 1 ? "1 overseas bar is" : typed + " overseas bars are";
    }
}
