package org.honorsdue.determination;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.honorsdue.determination.crosscheck.Crosschecks;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.History;
import org.honorsdue.determination.finding.Deferred;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.law.Ruling;
import org.honorsdue.determination.law.Settlement;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.ServiceFacts;

/** Asks every rule of the law book about one soldier. Thread-safe; one for all soldiers is enough. */
public final class LawExaminer implements Examiner {
    private final LawBook book;
    private final History history;
    private final Settlement settlement;
    private final Crosschecks crosschecks;

    /**
     * @throws IllegalStateException when a rule names an award or a clause that the tables do not hold
     */
    public LawExaminer(Reference reference) {
        book = new LawBook(reference);
        history = new History(reference);
        settlement = new Settlement(reference);
        crosschecks = Crosschecks.of(reference);
    }

    public LawBook book() {
        return book;
    }

    /**
     * {@inheritDoc}
     *
     * @throws IllegalArgumentException when an award is asked for that no rule is held on
     */
    @Override
    public Findings examine(ServiceFacts facts, LocalDate asOf, Set<String> asked) {
        for (var award : asked) {
            if (book.rule(award).isEmpty()) {
                throw new IllegalArgumentException(
                        "No rule is held on \"%s\". Ask for one of the award ids of the law book.".formatted(award));
            }
        }
        var soldier = new Dossier(facts, history);
        var findings = new ArrayList<Finding>(24);
        for (var rule : book.rules()) {
            Ruling.on(rule, soldier, asOf, asked.contains(rule.award().id()), settlement)
                    .ifPresent(findings::add);
        }
        for (var award : new TreeSet<>(soldier.claimed())) {
            if (book.rule(award).isEmpty()) {
                findings.add(withoutRule(award));
            }
        }
        var results = Deferred.list(() -> crosschecks.run(soldier.inPlace()));
        findings.replaceAll(finding -> Crosschecks.touching(results, finding));
        return new Findings(asOf, findings, results, facts.conflicts(), facts.unread());
    }

    /** Named on the paper, and no rule is held on it: it stays visible. */
    private static Finding withoutRule(String award) {
        return new Finding(
                award,
                award,
                Standing.UNSETTLED,
                OnPaper.YES,
                0,
                List.of(),
                List.of(),
                List.of(),
                List.of("The paper names it; no rule on it is held here."),
                "");
    }

    /** The finding on one award among many. */
    public static Optional<Finding> on(Findings findings, String award) {
        return findings.findings().stream()
                .filter(finding -> finding.award().equals(award))
                .findFirst();
    }
}
