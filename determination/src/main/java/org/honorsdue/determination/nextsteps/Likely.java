package org.honorsdue.determination.nextsteps;

import java.util.Locale;
import java.util.Set;
import org.honorsdue.reference.paper.ProofDocument;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.NoneTyped;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/** Whether a kind of document can exist for this man, and how much harder than its effort it is to rely on. */
final class Likely {
    /** Added to the effort of asking for a file of which the fire left one in five. */
    static final int BURNED = 2;

    /** Added for papers that support an award and seldom settle it. */
    static final int WEAK = 3;

    /** About four Army files in five burned (National Archives, on the fire of 12 July 1973). */
    static final double LEFT_BY_THE_FIRE = 0.2;

    private static final Set<String> SUPPORT_ONLY = Set.of("family-letters", "unit-history", "sworn-statements");

    private final ServiceFacts facts;

    Likely(ServiceFacts facts) {
        this.facts = facts;
    }

    static int effort(ProofDocument document) {
        return document.effort() + (document.burned() ? BURNED : 0) + (SUPPORT_ONLY.contains(document.id()) ? WEAK : 0);
    }

    /** False for a paper we have in hand already and for papers that only other men had. */
    boolean exists(String document) {
        return switch (document) {
            case "separation-paper", "county-recorded-discharge" -> facts.papers() == 0;
            case "second-paper" -> anotherService();
            case "report-of-death", "deceased-personnel-file" ->
                !facts.every(Death.class).isEmpty();
            case "flight-records" ->
                facts.every(ArmFact.class).isEmpty()
                        || facts.every(ArmFact.class).stream().anyMatch(ArmFact::airForces);
            case "court-martial-records" ->
                facts.every(Conduct.class).stream()
                        .anyMatch(conduct -> conduct.convictions().orElse(0) > 0);
            default -> true;
        };
    }

    /** Something tells of service beyond the paper at hand: earlier time, a commission, a re-enlistment. */
    private boolean anotherService() {
        return facts.every(Tour.class).stream()
                        .anyMatch(tour -> tour.category() == Tour.Category.OFFICER
                                || tour.category() == Tour.Category.WARRANT_OFFICER)
                || facts.every(SeparationReason.class).stream()
                        .anyMatch(reason -> tellsOfMore(reason.reason().toLowerCase(Locale.ROOT)))
                || facts.all().stream()
                        .filter(fact -> !(fact instanceof NoneTyped))
                        .flatMap(fact -> fact.basis().origins().stream())
                        .anyMatch(origin ->
                                origin instanceof Origin.OnPaper typed && typed.entry() == Entry.PRIOR_SERVICE);
    }

    private static boolean tellsOfMore(String reason) {
        return reason.contains("enlist") || reason.contains("commission") || reason.contains("appoint");
    }
}
