package org.honorsdue.determination.nextsteps;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.ProofDocument;

/** A disagreement between two boxes as a question: which of them is right, and what would tell. */
record Doubt(String name, Need need) {
    /** Empty for a check whose boxes no outside document settles, or whose awards ask the same question already. */
    static Optional<Doubt> of(Crosscheck result, Reference reference) {
        if (result.outcome() != Crosscheck.Outcome.DISAGREES) {
            return Optional.empty();
        }
        return switch (result.check()) {
            case "points-score" ->
                Optional.of(new Doubt(
                        "Points score",
                        need("Which decoration or star did the clerk count?", "award-order", result, reference)));
            case "star-count", "campaign-unit" ->
                Optional.of(new Doubt(
                        "Campaign stars",
                        need("Which campaigns was the unit credited with?", "unit-credit", result, reference)));
            case "campaign-dates", "theater-ribbon", "overseas-bars" ->
                Optional.of(new Doubt(
                        "Service abroad",
                        need("On which days was he outside the United States?", "overseas-dates", result, reference)));
            case "service-total", "foreign-plus-continental", "date-order", "paper-against-paper" ->
                Optional.of(new Doubt(
                        "Length of service",
                        need("Which dates of service are right?", "service-dates", result, reference)));
            default -> Optional.empty();
        };
    }

    private static Need need(String question, String kind, Crosscheck result, Reference reference) {
        List<Set<String>> ways = reference.documents().stream()
                .filter(document -> document.proves().contains(kind))
                .map(ProofDocument::id)
                .<Set<String>>map(Set::of)
                .toList();
        return new Need(question, Set.of(new FactWanted(kind, result.says())), ways);
    }
}
