package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.Comparator;
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
 * Each typed total against the dates: foreign service against the crossings, continental service against what is left
 * of the time from entry to separation.
 *
 * <p>{@value #SLACK} days either way pass: months were counted as thirty days by some and by the calendar by others,
 * and the day of sailing falls on either side.
 */
final class ServiceTotalCheck implements Check {
    static final int SLACK = 10;
    private static final Provenance RULE = new Provenance(
            "WD AGO Form 53-55, the two totals of service: arithmetic of the paper's own dates (common practice)",
            Grade.MEMORY);
    private static final Set<String> TOUCHED = Set.of("american-campaign-medal");

    @Override
    public String id() {
        return "service-total";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            paper.total(ServiceTotal.Kind.FOREIGN).ifPresent(total -> foreign(paper, total, comparison));
            paper.total(ServiceTotal.Kind.CONTINENTAL).ifPresent(total -> continental(paper, total, comparison));
        }
        return comparison.results();
    }

    private static void foreign(OnePaper paper, ServiceTotal total, Comparison comparison) {
        var absences = PortToPort.of(paper);
        if (absences.isEmpty()) {
            comparison.cannotTell(
                    "Foreign service of %s is typed; the crossings are not all there to add up."
                            .formatted(Wording.total(total)),
                    Set.of(),
                    List.of(total),
                    Entry.SERVICE_OUTSIDE_US);
            return;
        }
        var abroad = TimeAbroad.of(absences.get());
        var restsOn = new ArrayList<ServiceFact>(abroad.restsOn());
        restsOn.add(total);
        judge(
                "Foreign service",
                "the crossings",
                total,
                new ServiceSpan(abroad.fewest(), abroad.most()),
                restsOn,
                comparison);
    }

    private static void continental(OnePaper paper, ServiceTotal total, Comparison comparison) {
        var absences = PortToPort.of(paper);
        var spans = ServiceSpan.of(paper);
        if (absences.isEmpty() || spans.isEmpty()) {
            comparison.cannotTell(
                    "Continental service of %s is typed; the dates it should follow from are not all there."
                            .formatted(Wording.total(total)),
                    TOUCHED,
                    List.of(total),
                    Entry.ENTERED_ACTIVE_SERVICE,
                    Entry.SEPARATED,
                    Entry.SERVICE_OUTSIDE_US);
            return;
        }
        var abroad = TimeAbroad.of(absences.get());
        var restsOn = new ArrayList<ServiceFact>(abroad.restsOn());
        paper.tour().ifPresent(restsOn::add);
        restsOn.add(total);
        long typed = TimeAbroad.days(total);
        var nearest = spans.stream()
                .map(span -> new ServiceSpan(
                        Math.max(0, span.fewestDays() - abroad.most()), Math.max(0, span.mostDays() - abroad.fewest())))
                .min(Comparator.comparingLong(span -> Math.abs(span.off(typed))))
                .orElseThrow();
        judge(
                "Continental service",
                "the dates of entry, crossings and separation",
                total,
                nearest,
                restsOn,
                comparison);
    }

    private static void judge(
            String what,
            String against,
            ServiceTotal total,
            ServiceSpan span,
            List<ServiceFact> restsOn,
            Comparison comparison) {
        long off = span.off(TimeAbroad.days(total));
        if (Math.abs(off) <= SLACK) {
            comparison.agrees(
                    "%s of %s follows from %s.".formatted(what, Wording.total(total), against), TOUCHED, restsOn);
        } else {
            comparison.disagrees(
                    "%s of %s is typed, but %s make %s: %s too %s."
                            .formatted(
                                    what,
                                    Wording.total(total),
                                    against,
                                    Wording.days(off > 0 ? span.mostDays() : span.fewestDays()),
                                    Wording.days(Math.abs(off)),
                                    off > 0 ? "long" : "short"),
                    TOUCHED,
                    restsOn);
        }
    }
}
