package org.honorsdue.determination;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.determination.award.TheLaw;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.reference.Reference;

/** The law as held: every rule with its routes and clauses in order, their citations, grades and dates. */
public final class LawBook {
    private final List<Rule> rules;
    private final Map<String, Rule> byAward = new HashMap<>();

    /**
     * @throws IllegalStateException when a rule names an award or a clause that the tables do not hold
     */
    public LawBook(Reference reference) {
        rules = TheLaw.rules(new Statutes(reference)).stream()
                .sorted(Comparator.<Rule>comparingInt(
                                rule -> rule.award().precedence().orElse(Integer.MAX_VALUE))
                        .thenComparing(rule -> rule.award().id()))
                .toList();
        rules.forEach(rule -> byAward.put(rule.award().id(), rule));
    }

    /** Every rule, in the order in which awards are worn; what is not worn among ribbons comes last. */
    public List<Rule> rules() {
        return rules;
    }

    public Optional<Rule> rule(String award) {
        return Optional.ofNullable(byAward.get(award));
    }
}
