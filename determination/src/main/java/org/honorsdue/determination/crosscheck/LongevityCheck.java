package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;

/**
 * Longevity for pay purposes against active service. It counts inactive and earlier service too, so it may be longer; it
 * cannot be shorter by more than the days lost and {@link ServiceTotalCheck#SLACK} days.
 */
final class LongevityCheck implements Check {
    private static final Provenance RULE =
            new Provenance("Pay Readjustment Act of 1942 as amended: service counted for pay", Grade.SECONDARY);

    @Override
    public String id() {
        return "longevity";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            paper.total(ServiceTotal.Kind.LONGEVITY).ifPresent(total -> compare(paper, total, comparison));
        }
        return comparison.results();
    }

    private static void compare(OnePaper paper, ServiceTotal total, Comparison comparison) {
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(total);
        paper.tour().ifPresent(restsOn::add);
        var spans = ServiceSpan.of(paper);
        if (spans.isEmpty()) {
            comparison.cannotTell(
                    "Longevity of %s is typed; the dates of service were not supplied.".formatted(Wording.total(total)),
                    Set.of(),
                    restsOn);
            return;
        }
        long active = spans.stream().mapToLong(ServiceSpan::fewestDays).min().orElseThrow();
        long shortBy = active - TimeAbroad.days(total);
        if (shortBy > ServiceTotalCheck.SLACK) {
            comparison.disagrees(
                    "Longevity of %s is %s shorter than the active service it includes."
                            .formatted(Wording.total(total), Wording.days(shortBy)),
                    Set.of(),
                    restsOn);
        } else {
            comparison.agrees("Longevity covers the active service.", Set.of(), restsOn);
        }
    }
}
