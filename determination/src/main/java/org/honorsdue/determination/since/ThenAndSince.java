package org.honorsdue.determination.since;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.honorsdue.determination.Examiner;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reference.Citation;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;

/**
 * The same papers under the law of three times: the day he left, each later day on which the law changed something for
 * him, today.
 *
 * <p>The milestones are not a fixed list. Every day on which the tables have an award begin or a clause come into force
 * or go out of it is tried, and only those that change a finding about this soldier are kept.
 *
 * @param clocks in order of time; the last is today. Without a day of separation the first clock is missing
 */
public record ThenAndSince(List<Clock> clocks) {
    public ThenAndSince {
        clocks = List.copyOf(clocks);
    }

    /** @param today the last day asked about; nothing here reads a clock */
    public static ThenAndSince of(Examiner examiner, ServiceFacts facts, Reference reference, LocalDate today) {
        var clocks = new ArrayList<Clock>();
        var separation = separation(facts).filter(day -> !day.isAfter(today));
        var from = separation.orElse(today);
        Optional<Findings> before = Optional.empty();
        for (var day : days(reference, from, today)) {
            var findings = examiner.examine(facts, day, Set.of());
            var changes = changes(before, findings, reference, day);
            boolean first = separation.filter(day::equals).isPresent();
            boolean last = day.equals(today);
            if (first || last || !changes.isEmpty()) {
                var kind = first ? Clock.Kind.SEPARATION : last ? Clock.Kind.TODAY : Clock.Kind.MILESTONE;
                clocks.add(new Clock(day, kind, findings, changes));
                before = Optional.of(findings);
            }
        }
        return new ThenAndSince(clocks);
    }

    public Optional<Clock> separation() {
        return clocks.stream()
                .filter(clock -> clock.kind() == Clock.Kind.SEPARATION)
                .findFirst();
    }

    public Clock today() {
        return clocks.get(clocks.size() - 1);
    }

    public List<Clock> milestones() {
        return clocks.stream()
                .filter(clock -> clock.kind() == Clock.Kind.MILESTONE)
                .toList();
    }

    /** {@code He came home with 4 on his paper; 6 were due that day, 8 are due today.} */
    public String headline() {
        var now = today();
        return separation()
                .map(then -> "He came home with %d on his paper; %d %s due that day%s, %d %s due today%s."
                        .formatted(
                                then.onPaper(),
                                then.authorized(),
                                then.authorized() == 1 ? "was" : "were",
                                presumed(then),
                                now.authorized(),
                                now.authorized() == 1 ? "is" : "are",
                                presumed(now)))
                .orElseGet(() -> "The day he left the service is not shown; %d %s due today%s."
                        .formatted(now.authorized(), now.authorized() == 1 ? "is" : "are", presumed(now)));
    }

    private static String presumed(Clock clock) {
        return clock.presumed() == 0 ? "" : " and %d more presumed".formatted(clock.presumed());
    }

    private static Optional<LocalDate> separation(ServiceFacts facts) {
        return facts.every(Tour.class).stream()
                .flatMap(tour -> tour.separated().stream())
                .map(PartialDate::latest)
                .max(LocalDate::compareTo)
                .or(() -> facts.every(Death.class).stream()
                        .flatMap(death -> death.date().stream())
                        .map(PartialDate::latest)
                        .max(LocalDate::compareTo));
    }

    /** Every day from the first to the last on which any row of the law begins or has ended the day before. */
    private static SortedSet<LocalDate> days(Reference reference, LocalDate first, LocalDate last) {
        var days = new TreeSet<LocalDate>();
        for (var award : reference.awards()) {
            award.established().ifPresent(days::add);
        }
        for (var clause : reference.clauses()) {
            clause.inForceFrom().ifPresent(days::add);
            clause.inForceUntil().map(day -> day.plusDays(1)).ifPresent(days::add);
        }
        days.removeIf(day -> day.isBefore(first) || day.isAfter(last));
        days.add(first);
        days.add(last);
        return days;
    }

    private static List<Change> changes(Optional<Findings> before, Findings after, Reference reference, LocalDate day) {
        var then = byAward(before);
        var now = byAward(Optional.of(after));
        var awards = new TreeSet<>(then.keySet());
        awards.addAll(now.keySet());
        var changes = new ArrayList<Change>();
        for (var award : awards) {
            var old = Optional.ofNullable(then.get(award));
            var fresh = Optional.ofNullable(now.get(award));
            boolean differs = before.isPresent()
                    ? !weight(old).equals(weight(fresh))
                    : Change.isDue(fresh.map(Finding::standing));
            if (differs) {
                changes.add(change(award, old, fresh, before.isPresent(), reference, day));
            }
        }
        changes.sort(Comparator.comparing((Change change) -> !change.added()));
        return changes;
    }

    private static TreeMap<String, Finding> byAward(Optional<Findings> findings) {
        var byAward = new TreeMap<String, Finding>();
        findings.ifPresent(all -> all.findings().forEach(finding -> byAward.put(finding.award(), finding)));
        return byAward;
    }

    /** What makes a difference to the man. That a finding of no is no longer worth saying does not. */
    private static String weight(Optional<Finding> finding) {
        return finding.filter(one -> one.standing() != Standing.NOT_AUTHORIZED)
                .map(one -> one.standing() + " " + one.count() + " " + one.devices())
                .orElse("");
    }

    private static Change change(
            String award,
            Optional<Finding> old,
            Optional<Finding> fresh,
            boolean later,
            Reference reference,
            LocalDate day) {
        var held = reference.award(award);
        var authorities = new ArrayList<Citation>();
        var why = later ? why(held, reference.clausesOf(award), day, authorities) : "Law, and earned, by that day.";
        return new Change(
                award,
                fresh.or(() -> old).map(Finding::name).orElse(award),
                old.map(Finding::standing),
                fresh.map(Finding::standing),
                old.map(Finding::count).orElse(0),
                fresh.map(Finding::count).orElse(0),
                why,
                authorities);
    }

    private static String why(
            Optional<Award> award, List<LawClause> clauses, LocalDate day, List<Citation> authorities) {
        var reasons = new ArrayList<String>();
        award.filter(one -> one.established().equals(Optional.of(day))).ifPresent(one -> {
            reasons.add("Created that day: %s.".formatted(one.establishedBy().text()));
            authorities.add(one.establishedBy());
        });
        for (var clause : clauses) {
            if (clause.inForceFrom().equals(Optional.of(day))) {
                reasons.add("Law since that day: " + clause.text());
                authorities.add(clause.citation());
            }
            if (clause.inForceUntil().map(until -> until.plusDays(1)).equals(Optional.of(day))) {
                reasons.add("No longer law: " + clause.text());
                authorities.add(clause.citation());
            }
        }
        return reasons.isEmpty() ? "It follows from another award that changed that day." : String.join(" ", reasons);
    }
}
