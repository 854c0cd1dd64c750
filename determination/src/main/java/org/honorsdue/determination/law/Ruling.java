package org.honorsdue.determination.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.finding.Deferred;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Ground;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.Verdict;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.paper.Entry;
import org.jspecify.annotations.Nullable;

/**
 * One rule asked of one soldier as the law stood on one day. The standing and the devices are decided at once; grounds,
 * needs and cautions are written when somebody looks.
 *
 * <p>A route whose every clause is met makes the award due. A route with no failed clause and exactly one unknown, and
 * that the usual case, makes it presumed. Any other route without a failed clause leaves it open. A bar that applies
 * decides against it; a bar that may apply counts as one more unknown on every route.
 */
public final class Ruling {
    private final Rule rule;
    private final Dossier soldier;
    private final LocalDate asOf;
    private final boolean datesMatter;

    private Standing standing = Standing.NOT_AUTHORIZED;
    private @Nullable Route best;
    private int fewestOpen = Integer.MAX_VALUE;
    private int fewestBlind = Integer.MAX_VALUE;
    private boolean skippedForDate;

    private Ruling(Rule rule, Dossier soldier, LocalDate asOf, boolean datesMatter) {
        this.rule = rule;
        this.soldier = soldier;
        this.asOf = asOf;
        this.datesMatter = datesMatter;
    }

    /**
     * The finding on one award; empty when there is nothing worth saying.
     *
     * @param asked the award must be answered even if nothing points to it
     */
    public static Optional<Finding> on(
            Rule rule, Dossier soldier, LocalDate asOf, boolean asked, Settlement settlement) {
        boolean shown = rule.shown().test(soldier);
        boolean notYetCreated = rule.award().established().map(asOf::isBefore).orElse(false);
        if (!notYetCreated) {
            var ruling = new Ruling(rule, soldier, asOf, true);
            ruling.decide();
            boolean due = ruling.standing == Standing.AUTHORIZED || ruling.standing == Standing.PRESUMED;
            boolean stillOpen = ruling.standing == Standing.UNSETTLED && shown;
            if (due || stillOpen || !ruling.skippedForDate) {
                return ruling.worthSaying(shown, asked)
                        ? Optional.of(ruling.finding(shown, settlement))
                        : Optional.empty();
            }
        }
        var later = new Ruling(rule, soldier, asOf, false);
        later.decide();
        boolean dueLater = later.standing == Standing.AUTHORIZED || later.standing == Standing.PRESUMED;
        if (!dueLater && !notYetCreated) {
            var now = new Ruling(rule, soldier, asOf, true);
            now.decide();
            return now.worthSaying(shown, asked) ? Optional.of(now.finding(shown, settlement)) : Optional.empty();
        }
        return dueLater || shown || asked ? Optional.of(later.notLawThatDay(shown, notYetCreated)) : Optional.empty();
    }

    private void decide() {
        int openBars = 0;
        boolean usualBars = true;
        for (var bar : rule.bars()) {
            if (bar.dated() && !inForce(bar.law())) {
                continue;
            }
            var answer = bar.about(soldier);
            if (answer.isMet()) {
                return;
            }
            if (answer.isUnknown()) {
                openBars++;
                usualBars &= answer.usual();
            }
        }
        for (var route : rule.routes()) {
            decide(route, openBars, usualBars);
            if (standing == Standing.AUTHORIZED) {
                return;
            }
        }
    }

    private void decide(Route route, int openBars, boolean usualBars) {
        for (var clause : route.clauses()) {
            if (clause.dated() && !inForce(clause.law())) {
                skippedForDate = true;
                return;
            }
        }
        int open = openBars;
        int blind = 0;
        boolean usual = usualBars;
        for (var clause : route.clauses()) {
            var answer = clause.about(soldier);
            if (answer.isNotMet()) {
                return;
            }
            if (answer.isUnknown()) {
                open++;
                usual &= answer.usual();
                blind += answer.hasEvidence() ? 0 : 1;
            }
        }
        var here = open == 0 ? Standing.AUTHORIZED : open == 1 && usual ? Standing.PRESUMED : Standing.UNSETTLED;
        // Among routes as good as each other the one that something points to is shown.
        boolean better = here.compareTo(standing) < 0
                || (here == standing && (open < fewestOpen || (open == fewestOpen && blind < fewestBlind)));
        if (better) {
            standing = here;
            best = route;
            fewestOpen = open;
            fewestBlind = blind;
        }
    }

    private boolean inForce(LawClause law) {
        return !datesMatter || law.inForceOn(asOf);
    }

    private boolean worthSaying(boolean shown, boolean asked) {
        return switch (standing) {
            case AUTHORIZED, PRESUMED -> true;
            case UNSETTLED -> shown || asked || rule.pointedAt().test(soldier);
            case NOT_AUTHORIZED -> shown || asked || rule.expected().test(soldier);
        };
    }

    private Finding finding(boolean shown, Settlement settlement) {
        var tally = new Tally();
        boolean due = standing == Standing.AUTHORIZED || standing == Standing.PRESUMED;
        if (due) {
            rule.tally().accept(soldier, tally);
        }
        var onPaper = !shown ? OnPaper.NO : due && tally.isShortOnPaper() ? OnPaper.INCOMPLETE : OnPaper.YES;
        return new Finding(
                rule.award().id(),
                tally.name().isEmpty() ? rule.award().name() : tally.name(),
                standing,
                onPaper,
                due ? tally.count() : 0,
                tally.devices(),
                Deferred.list(() -> grounds(tally)),
                Deferred.list(() -> needs(tally, settlement)),
                Deferred.list(() -> cautions(tally)),
                due && !shown ? soldier.spokenOf(whyNotOnPaper()) : "");
    }

    // The proof

    private List<Ground> grounds(Tally tally) {
        var grounds = new ArrayList<Ground>();
        for (var bar : rule.bars()) {
            if (inForce(bar.law())) {
                var answer = bar.about(soldier);
                if (answer.isMet()) {
                    grounds.add(ground(bar.law(), answer.reversed()));
                } else if (answer.isUnknown()) {
                    grounds.add(ground(bar.law(), answer));
                }
            }
        }
        if (best != null) {
            for (var clause : best.clauses()) {
                grounds.add(ground(clause.law(), clause.about(soldier)));
            }
        } else if (grounds.isEmpty()) {
            var seen = new HashSet<String>();
            for (var route : rule.routes()) {
                for (var clause : route.clauses()) {
                    if (!inForce(clause.law())) {
                        if (seen.add(clause.law().id())) {
                            grounds.add(notInForce(clause.law()));
                        }
                        continue;
                    }
                    var answer = clause.about(soldier);
                    if (answer.isNotMet()
                            && answer.speaks()
                            && seen.add(clause.law().id())) {
                        grounds.add(ground(clause.law(), answer));
                    }
                }
            }
            if (grounds.isEmpty()) {
                addSilent(grounds);
            }
        }
        for (var step : tally.steps()) {
            if (inForce(step.law())) {
                grounds.add(ground(step.law(), step.answer()));
            }
        }
        return grounds;
    }

    /** Nothing was found for any way to it: each way's first clause that fails. */
    private void addSilent(List<Ground> grounds) {
        for (var route : rule.routes()) {
            for (var clause : route.clauses()) {
                var answer = clause.about(soldier);
                if (answer.isNotMet()) {
                    grounds.add(ground(clause.law(), answer));
                    break;
                }
            }
        }
    }

    private Ground ground(LawClause law, Answer answer) {
        String found = soldier.spokenOf(answer.says());
        String says = found.isEmpty() ? law.text() : law.text() + " Here: " + found + ".";
        return new Ground(law.id(), says, law.citation(), answer.verdict(), answer.origins());
    }

    private Ground notInForce(LawClause law) {
        String when = law.inForceFrom().filter(asOf::isBefore).isPresent()
                ? " Not law on %s: it dates from %s."
                        .formatted(
                                InWords.day(asOf), InWords.day(law.inForceFrom().get()))
                : " No longer law on %s.".formatted(InWords.day(asOf));
        return new Ground(law.id(), law.text() + when, law.citation(), Verdict.NOT_MET, List.of());
    }

    // What is open

    private List<Need> needs(Tally tally, Settlement settlement) {
        var needs = new ArrayList<Need>();
        if (standing == Standing.PRESUMED || standing == Standing.UNSETTLED) {
            needs.addAll(settlement.needs(missing(), soldier));
        }
        for (var fact : tally.furtherWanted()) {
            needs.add(settlement.need(Set.of(fact.get()), soldier));
        }
        return needs;
    }

    private List<Set<FactWanted>> missing() {
        var always = new LinkedHashSet<FactWanted>();
        for (var bar : rule.bars()) {
            if (inForce(bar.law())) {
                bar.about(soldier).wanted().ifPresent(always::add);
            }
        }
        var missing = new ArrayList<Set<FactWanted>>();
        for (var route : rule.routes()) {
            var wanted = new LinkedHashSet<>(always);
            boolean stillPossible = true;
            for (var clause : route.clauses()) {
                if (!inForce(clause.law())) {
                    stillPossible = false;
                    break;
                }
                var answer = clause.about(soldier);
                stillPossible &= !answer.isNotMet();
                answer.wanted().ifPresent(wanted::add);
            }
            if (stillPossible) {
                missing.add(wanted);
            }
        }
        return missing;
    }

    private List<String> cautions(Tally tally) {
        var cautions = new ArrayList<String>();
        if (best != null) {
            for (var clause : best.clauses()) {
                if (clause.law().citation().grade() == Grade.MEMORY) {
                    cautions.add("Rests on a clause whose text was not read, only known from memory: "
                            + clause.law().citation().text() + ".");
                }
            }
        }
        for (var words : tally.cautions()) {
            cautions.add(words.get());
        }
        cautions.replaceAll(soldier::spokenOf);
        return List.copyOf(new LinkedHashSet<>(cautions));
    }

    // What the paper could not say

    private String whyNotOnPaper() {
        var kind = rule.award().kind();
        if (soldier.facts().papers() == 0) {
            return "No separation paper was shown.";
        }
        if (!soldier.facts().supplied(Entry.DECORATIONS_AND_CITATIONS)
                && !(kind == Award.Kind.BADGE && soldier.facts().supplied(Entry.QUALIFICATIONS))) {
            return "The entry where it would stand was not shown.";
        }
        if (kind == Award.Kind.INSIGNE) {
            return "Papers seldom list it.";
        }
        var last = soldier.lastDay();
        if (last.isEmpty()) {
            return "";
        }
        var left = LocalDate.ofEpochDay(last.get());
        String after = soldier.death().isPresent() ? ", after he died on " : ", after he left the service on ";
        var created = rule.award().established();
        if (created.isPresent() && created.get().isAfter(left)) {
            return "Created on " + InWords.day(created.get()) + after + InWords.day(left) + ".";
        }
        if (best != null) {
            for (var clause : best.clauses()) {
                var from = clause.law().inForceFrom();
                if (from.isPresent() && from.get().isAfter(left)) {
                    return "The rule that gives it dates from " + InWords.day(from.get()) + after + InWords.day(left)
                            + ".";
                }
            }
        }
        for (var order : soldier.orders(rule.award().id())) {
            if (order.date().isPresent() && order.date().get().earliest().isAfter(left)) {
                return "The order is dated " + InWords.date(order.date().get()) + after + InWords.day(left) + ".";
            }
        }
        return standing == Standing.AUTHORIZED
                ? "Left off by the clerk: it was law, and earned, by " + InWords.day(left) + "."
                : "It was law by " + InWords.day(left) + "; if it was earned by then, the clerk left it off.";
    }

    /** The same soldier would have it under a later law; on the day asked about it was not law. */
    private Finding notLawThatDay(boolean shown, boolean notYetCreated) {
        return new Finding(
                rule.award().id(),
                rule.award().name(),
                Standing.NOT_AUTHORIZED,
                shown ? OnPaper.YES : OnPaper.NO,
                0,
                List.of(),
                Deferred.list(() -> laterLaw(notYetCreated)),
                List.of(),
                List.of(),
                "");
    }

    private List<Ground> laterLaw(boolean notYetCreated) {
        var grounds = new ArrayList<Ground>();
        var award = rule.award();
        if (notYetCreated && award.established().isPresent()) {
            grounds.add(new Ground(
                    award.id() + "/established",
                    "Not law on %s: created on %s."
                            .formatted(
                                    InWords.day(asOf),
                                    InWords.day(award.established().get())),
                    award.establishedBy(),
                    Verdict.NOT_MET,
                    List.of()));
        } else if (best != null) {
            for (var clause : best.clauses()) {
                grounds.add(
                        clause.law().inForceOn(asOf)
                                ? ground(clause.law(), clause.about(soldier))
                                : notInForce(clause.law()));
            }
        } else {
            grounds.addAll(new Ruling(rule, soldier, asOf, true).grounds(new Tally()));
        }
        return grounds;
    }
}
