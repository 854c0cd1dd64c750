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
import org.honorsdue.service.paper.Entry;

/**
 * Continental and foreign service together against the whole time from entry to separation. Needs no crossing, so it
 * still speaks when that entry is missing. {@link ServiceTotalCheck#SLACK} days either way pass.
 */
final class ForeignPlusContinentalCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "WD AGO Form 53-55, the two totals of service: arithmetic of the paper's own dates (common practice)",
            Grade.MEMORY);

    @Override
    public String id() {
        return "foreign-plus-continental";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            compare(paper, comparison);
        }
        return comparison.results();
    }

    private static void compare(OnePaper paper, Comparison comparison) {
        var foreign = paper.total(ServiceTotal.Kind.FOREIGN);
        var continental = paper.total(ServiceTotal.Kind.CONTINENTAL);
        if (foreign.isEmpty() && continental.isEmpty()) {
            return;
        }
        var restsOn = new ArrayList<ServiceFact>();
        foreign.ifPresent(restsOn::add);
        continental.ifPresent(restsOn::add);
        paper.tour().ifPresent(restsOn::add);
        var spans = ServiceSpan.of(paper);
        if (foreign.isEmpty() || continental.isEmpty() || spans.isEmpty()) {
            comparison.cannotTell(
                    "Only part of the totals and dates of service is there, so they cannot be added up.",
                    Set.of(),
                    restsOn,
                    Entry.LENGTH_OF_SERVICE,
                    Entry.ENTERED_ACTIVE_SERVICE,
                    Entry.SEPARATED);
            return;
        }
        long typed = TimeAbroad.days(foreign.get()) + TimeAbroad.days(continental.get());
        long off = spans.stream()
                .map(span -> span.off(typed))
                .min((one, other) -> Long.compare(Math.abs(one), Math.abs(other)))
                .orElseThrow();
        if (Math.abs(off) <= ServiceTotalCheck.SLACK) {
            comparison.agrees(
                    "Continental and foreign service together are the time from entry to separation.",
                    Set.of(),
                    restsOn);
            return;
        }
        comparison.disagrees(
                "Continental service (%s) and foreign service (%s) together are %s %s than the time from entry to separation."
                        .formatted(
                                Wording.total(continental.get()),
                                Wording.total(foreign.get()),
                                Wording.days(Math.abs(off)),
                                off > 0 ? "longer" : "shorter"),
                Set.of("american-campaign-medal"),
                restsOn);
    }
}
