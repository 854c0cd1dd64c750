package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.Sex;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Dependents;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.SexFact;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * The score against the one at which men were let go that week. A lower score needs another reason: age, children,
 * disability, dependency, captivity, re-enlistment. Only a plain demobilization without any of them is held against the
 * paper.
 */
final class CriticalScoreCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "War Department readjustment plan, critical scores as reported in Time, 1945; later steps from memory",
            Grade.MEMORY);
    /** Released at 38; at 35 to 37 with two years of service (Time, 17 September 1945). Captives were let go early. */
    private static final int RELEASED_AT = 35;

    private static final int CHILDREN_ENOUGH = 3;
    /** Three children were a ground of their own late in 1945 only; before, children counted through the score. */
    private static final LocalDate CHILDREN_FROM = LocalDate.of(1945, 11, 1);

    private final CriticalScores figures;

    CriticalScoreCheck(Reference reference) {
        figures = new CriticalScores(reference);
    }

    @Override
    public String id() {
        return "critical-score";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var score : facts.every(PointsScore.class)) {
            compare(new OnePaper(facts, score.paper()), score, comparison);
        }
        return comparison.results();
    }

    private void compare(OnePaper paper, PointsScore score, Comparison comparison) {
        var restsOn = new ArrayList<ServiceFact>();
        restsOn.add(score);
        paper.tour().ifPresent(restsOn::add);
        var separated = paper.tour().flatMap(Tour::separated).filter(PartialDate::isDay);
        if (separated.isEmpty()) {
            comparison.cannotTell(
                    "The score of %d cannot be held against the critical score: the day of separation is missing."
                            .formatted(score.points()),
                    Set.of(),
                    restsOn,
                    Entry.SEPARATED);
            return;
        }
        var day = separated.get().earliest();
        boolean officer = paper.tour()
                .filter(tour ->
                        tour.category() == Tour.Category.OFFICER || tour.category() == Tour.Category.WARRANT_OFFICER)
                .isPresent();
        boolean woman = paper.facts()
                .first(SexFact.class)
                .filter(fact -> fact.sex() == Sex.FEMALE)
                .isPresent();
        var critical = figures.lowest(day, woman);
        if (officer || critical.isEmpty()) {
            return;
        }
        var step = critical.get();
        if (score.points() >= step.points()) {
            comparison.agrees(
                    "A score of %d was enough on %s, when the figure stood at %d or was about to."
                            .formatted(score.points(), Wording.day(day), step.points()),
                    Set.of(),
                    restsOn);
            return;
        }
        var reasons = paper.every(SeparationReason.class);
        restsOn.addAll(reasons);
        var below = "A score of %d on %s is %s below the lowest figure for release then (%d)"
                .formatted(
                        score.points(),
                        Wording.day(day),
                        Wording.many(step.points() - score.points(), "point"),
                        step.points());
        if (reasons.isEmpty()) {
            comparison.cannotTell(
                    below + "; the reason for separation, which would explain it, was not supplied.",
                    Set.of(),
                    restsOn,
                    Entry.REASON);
        } else if (reasons.stream().anyMatch(SeparationReasons::isSpecial)
                || !reasons.stream().allMatch(SeparationReasons::isDemobilization)) {
            comparison.agrees(below + ", and the reason typed is another than points.", Set.of(), restsOn);
        } else if (otherGround(paper, day, restsOn)) {
            comparison.agrees(below + ", and age, children or captivity explain an early release.", Set.of(), restsOn);
        } else if (!paper.shows(Entry.DATE_OF_BIRTH)
                || !paper.shows(Entry.DEPENDENTS) && !day.isBefore(CHILDREN_FROM)) {
            comparison.cannotTell(
                    below + "; age or children may explain it and were not supplied.",
                    Set.of(),
                    restsOn,
                    Entry.DATE_OF_BIRTH,
                    Entry.DEPENDENTS);
        } else {
            comparison.disagrees(
                    step.provenance(),
                    below + ", and neither the reason typed nor age nor children explain an early release.",
                    Set.of(),
                    restsOn);
        }
    }

    private static boolean otherGround(OnePaper paper, LocalDate day, List<ServiceFact> restsOn) {
        var births = paper.every(BirthDate.class);
        boolean oldEnough = births.stream()
                .anyMatch(birth -> Period.between(birth.born().earliest(), day).getYears() >= RELEASED_AT);
        var dependents = paper.every(Dependents.class);
        boolean children =
                !day.isBefore(CHILDREN_FROM) && dependents.stream().anyMatch(fact -> fact.number() >= CHILDREN_ENOUGH);
        var captivity = paper.facts().every(Captivity.class);
        restsOn.addAll(births);
        restsOn.addAll(dependents);
        restsOn.addAll(captivity);
        return oldEnough || children || !captivity.isEmpty();
    }
}
