package org.honorsdue.determination.finding;

import java.util.List;
import java.util.Set;

/**
 * An open question and what would settle it, computed from the structure of the rule.
 *
 * @param question in plain words
 * @param wanted the missing facts which, taken together, decide it
 * @param settledBy the smallest sets of documents (ids) that prove all of them; any one set is enough
 */
public record Need(String question, Set<FactWanted> wanted, List<Set<String>> settledBy) {
    public Need {
        wanted = Set.copyOf(wanted);
        settledBy = settledBy.stream().<Set<String>>map(Set::copyOf).toList();
    }
}
