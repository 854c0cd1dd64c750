package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Crosscheck.Outcome;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.paper.Entry;

/**
 * Gathers what one check found. Every disagreement stands by itself; what agrees and what cannot be told is drawn
 * together, so that a clean paper is not buried in good news.
 */
final class Comparison {
    private final String check;
    private final Provenance rule;
    private final List<Crosscheck> disagreements = new ArrayList<>();
    private final Pile agreements = new Pile();
    private final Pile open = new Pile();

    Comparison(String check, Provenance rule) {
        this.check = check;
        this.rule = rule;
    }

    void agrees(String says, Set<String> awards, Collection<? extends ServiceFact> restsOn) {
        agreements.add(says, awards, restsOn, List.of());
    }

    void disagrees(String says, Set<String> awards, Collection<? extends ServiceFact> restsOn, Entry... besides) {
        disagrees(rule, says, awards, restsOn, besides);
    }

    /** A disagreement under a rule of its own, as when one row of a table is better verified than another. */
    void disagrees(
            Provenance under,
            String says,
            Set<String> awards,
            Collection<? extends ServiceFact> restsOn,
            Entry... besides) {
        var pile = new Pile();
        pile.add(says, awards, restsOn, List.of(besides));
        disagreements.add(pile.toCrosscheck(check, Outcome.DISAGREES, under));
    }

    /** @param besides entries that would be needed and hold no fact */
    void cannotTell(String says, Set<String> awards, Collection<? extends ServiceFact> restsOn, Entry... besides) {
        open.add(says, awards, restsOn, List.of(besides));
    }

    List<Crosscheck> results() {
        var results = new ArrayList<>(disagreements);
        if (!open.isEmpty()) {
            results.add(open.toCrosscheck(check, Outcome.CANNOT_TELL, rule));
        }
        if (disagreements.isEmpty() && !agreements.isEmpty()) {
            results.add(agreements.toCrosscheck(check, Outcome.AGREES, rule));
        }
        return List.copyOf(results);
    }

    /** Sentences with the entries, origins and awards behind them. */
    private static final class Pile {
        private final Set<String> sentences = new LinkedHashSet<>();
        private final Set<Entry> entries = new TreeSet<>();
        private final Set<Origin> origins = new LinkedHashSet<>();
        private final Set<String> awards = new TreeSet<>();

        void add(
                String says,
                Set<String> touched,
                Collection<? extends ServiceFact> restsOn,
                Collection<Entry> besides) {
            sentences.add(says);
            awards.addAll(touched);
            entries.addAll(besides);
            for (var fact : restsOn) {
                for (var origin : fact.basis().origins()) {
                    origins.add(origin);
                    if (origin instanceof Origin.OnPaper typed) {
                        entries.add(typed.entry());
                    }
                }
            }
        }

        boolean isEmpty() {
            return sentences.isEmpty();
        }

        Crosscheck toCrosscheck(String check, Outcome outcome, Provenance rule) {
            return new Crosscheck(
                    check,
                    outcome,
                    String.join(" ", sentences),
                    List.copyOf(entries),
                    List.copyOf(origins),
                    awards,
                    rule);
        }
    }
}
