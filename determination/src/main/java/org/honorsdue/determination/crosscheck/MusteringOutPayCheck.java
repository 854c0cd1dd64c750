package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.MusteringOutPay;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.paper.Entry;

/**
 * Mustering-out pay against foreign service and length of service: $300 for sixty days and more with some service
 * abroad or in Alaska, $200 for sixty days and more without, $100 for less than sixty days.
 *
 * <p>It goes by the total. Service abroad on an earlier paper counts, because the pay was figured once, at the final
 * discharge.
 */
final class MusteringOutPayCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "Mustering-Out Payment Act of 1944, 58 Stat. 8 (amounts by class: from memory)", Grade.MEMORY);
    private static final int FULL_CLASS_DAYS = 60;
    /** A few days' grace on sixty, for how the ends were counted. */
    private static final int SLACK = 5;

    @Override
    public String id() {
        return "mustering-out-pay";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var pay : facts.every(MusteringOutPay.class)) {
            if (pay.dollars() > 0) {
                compare(new OnePaper(facts, pay.paper()), pay, comparison);
            }
        }
        return comparison.results();
    }

    private static void compare(OnePaper paper, MusteringOutPay pay, Comparison comparison) {
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(pay);
        switch (pay.dollars()) {
            case 300 -> abroad(paper, pay, true, restsOn, comparison);
            case 200 -> abroad(paper, pay, false, restsOn, comparison);
            case 100 -> shortService(paper, restsOn, comparison);
            default ->
                comparison.disagrees(
                        "Mustering-out pay of $%d is typed; the law knew $100, $200 and $300.".formatted(pay.dollars()),
                        Set.of(),
                        restsOn);
        }
    }

    private static void abroad(
            OnePaper paper, MusteringOutPay pay, boolean needed, List<ServiceFact> restsOn, Comparison comparison) {
        var shown = wasAbroad(paper, restsOn);
        if (shown.isEmpty()) {
            comparison.cannotTell(
                    "Mustering-out pay of $%d points to %s; neither the crossings nor the total of foreign service was supplied."
                            .formatted(pay.dollars(), needed ? "service abroad" : "no service abroad"),
                    Set.of(),
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US,
                    Entry.FOREIGN_SERVICE);
        } else if (shown.get() == needed) {
            comparison.agrees(
                    "Mustering-out pay of $%d goes with %s."
                            .formatted(pay.dollars(), needed ? "service abroad" : "service at home only"),
                    Set.of(),
                    restsOn);
        } else {
            comparison.disagrees(
                    needed
                            ? "Mustering-out pay of $300 was for men with service abroad or in Alaska, and the paper shows none."
                            : "Mustering-out pay of $200 was for men without service abroad, and the paper shows service abroad: $100 too little.",
                    Set.of("american-campaign-medal", "asiatic-pacific-campaign-medal", "eame-campaign-medal"),
                    restsOn,
                    Entry.SERVICE_OUTSIDE_US);
        }
    }

    private static void shortService(OnePaper paper, List<ServiceFact> restsOn, Comparison comparison) {
        paper.tour().ifPresent(restsOn::add);
        var spans = ServiceSpan.of(paper);
        if (spans.isEmpty()) {
            comparison.cannotTell(
                    "Mustering-out pay of $100 was for less than sixty days of service; the dates of service were not supplied.",
                    Set.of(),
                    restsOn,
                    Entry.ENTERED_ACTIVE_SERVICE,
                    Entry.SEPARATED);
            return;
        }
        long fewest = spans.stream().mapToLong(ServiceSpan::fewestDays).min().orElseThrow();
        if (fewest > FULL_CLASS_DAYS + SLACK) {
            comparison.disagrees(
                    "Mustering-out pay of $100 was for less than sixty days of service, and he served at least %s, unless $100 is only the first payment."
                            .formatted(Wording.days(fewest)),
                    Set.of(),
                    restsOn);
        } else {
            comparison.agrees(
                    "Mustering-out pay of $100 goes with less than sixty days of service.", Set.of(), restsOn);
        }
    }

    /** Whether this paper or an earlier one shows service abroad; empty when nothing speaks to it. */
    private static Optional<Boolean> wasAbroad(OnePaper paper, List<ServiceFact> restsOn) {
        for (var other : OnePaper.allOf(paper.facts())) {
            if (other.number() <= paper.number() || paper.facts().papers() == 1) {
                var stays = other.stays();
                var total = other.total(ServiceTotal.Kind.FOREIGN).filter(typed -> TimeAbroad.days(typed) > 0);
                if (!stays.isEmpty() || total.isPresent()) {
                    restsOn.addAll(stays);
                    total.ifPresent(restsOn::add);
                    return Optional.of(true);
                }
            }
        }
        var total = paper.total(ServiceTotal.Kind.FOREIGN);
        total.ifPresent(restsOn::add);
        boolean told = total.isPresent() || paper.crossingsShown();
        return told ? Optional.of(false) : Optional.empty();
    }
}
