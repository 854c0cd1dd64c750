package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.honorsdue.determination.crosscheck.points.PointsSheet;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Deferred;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Ground;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.reference.Citation;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.unit.UnitTables;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.ServiceFacts;

/**
 * All cross-checks together. Immutable; safe for any number of threads; the same facts give the same results in the same
 * order.
 */
public final class Crosschecks {
    private final PointsScoreCheck points;
    private final List<Check> checks;

    private Crosschecks(Reference reference, Supplier<UnitTables> units) {
        points = new PointsScoreCheck(reference);
        checks = List.of(
                points,
                new CriticalScoreCheck(reference),
                new OverseasBarsCheck(),
                new ServiceStripesCheck(),
                new ServiceTotalCheck(),
                new ForeignPlusContinentalCheck(),
                new MusteringOutPayCheck(),
                new StarCountCheck(reference),
                new CampaignDatesCheck(reference),
                new CampaignUnitCheck(reference, units),
                new ArrowheadCheck(reference),
                new OrderReferenceCheck(reference),
                new BadgeSpecialtyCheck(reference),
                new QualificationsAgainstDecorationsCheck(),
                new GoodConductCheck(),
                new AgeCheck(),
                new WoundDatesCheck(reference),
                new PrisonerDatesCheck(reference),
                new WoundsAgainstHeartsCheck(),
                new LongevityCheck(),
                new DateOrderCheck(),
                new TheaterRibbonCheck(reference),
                new PaperAgainstPaperCheck());
    }

    /** With the tables of units that come with the program, which are read when a unit is first asked about. */
    public static Crosschecks of(Reference reference) {
        return new Crosschecks(reference, UnitTables::published);
    }

    public static Crosschecks of(Reference reference, UnitTables units) {
        return new Crosschecks(reference, () -> units);
    }

    /** The ids of every check, in the order in which they run. */
    public List<String> ids() {
        return checks.stream().map(Check::id).toList();
    }

    /** What every check finds; a check with nothing to compare is silent. */
    public List<Crosscheck> run(ServiceFacts facts) {
        var results = new ArrayList<Crosscheck>();
        for (var check : checks) {
            results.addAll(check.compare(facts));
        }
        return List.copyOf(results);
    }

    /** The points score of a paper worked backwards; empty when the dates it needs are not there. */
    public Optional<PointsSheet> pointsSheet(ServiceFacts facts, PointsScore score) {
        return points.sheet(facts, score);
    }

    /**
     * The disagreements that touch an award, as grounds of its proof. They decide nothing, so their verdict is
     * {@link Verdict#UNKNOWN}.
     */
    public static List<Ground> touching(List<Crosscheck> results, String award) {
        return results.stream()
                .filter(result -> result.outcome() == Crosscheck.Outcome.DISAGREES)
                .filter(result -> result.awards().contains(award))
                .map(Crosschecks::asGround)
                .toList();
    }

    /**
     * The finding with the disagreements that touch its award added to its grounds. Neither the results nor the grounds are
     * looked at before somebody looks at the grounds.
     */
    public static Finding touching(List<Crosscheck> results, Finding finding) {
        return new Finding(
                finding.award(),
                finding.name(),
                finding.standing(),
                finding.onPaper(),
                finding.count(),
                finding.devices(),
                Deferred.list(() -> {
                    var grounds = new ArrayList<>(finding.grounds());
                    grounds.addAll(touching(results, finding.award()));
                    return grounds;
                }),
                finding.needs(),
                finding.cautions(),
                finding.whyNotOnPaper());
    }

    private static Ground asGround(Crosscheck result) {
        var rule = result.rule();
        return new Ground(
                result.check(),
                result.says(),
                new Citation(rule.source(), "", "", rule.grade()),
                Verdict.UNKNOWN,
                result.origins());
    }
}
