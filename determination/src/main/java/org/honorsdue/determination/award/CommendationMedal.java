package org.honorsdue.determination.award;

import static org.honorsdue.determination.award.OrderedAward.inOrders;

import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;

/**
 * Army Commendation Ribbon, now Medal. Set up on 18 December 1945 for service that was not in operations against the
 * enemy. A letter of commendation of the war can still be turned into it on application; a casefile has no kind of
 * evidence for such a letter, so that way is told and not tested.
 */
final class CommendationMedal {
    private static final String AWARD = "army-commendation-medal";
    private static final String BY_LETTER =
            "A letter of commendation is looked for in the family's hands; a casefile has no kind of evidence for one.";

    private CommendationMedal() {}

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var clusters = draft.law("oak-leaf-cluster");
        var noV = draft.law("v-after-1964");
        return draft.route(
                        "By order", draft.clause("order", soldier -> inOrders(soldier, AWARD, "Commendation Ribbon")))
                .told("service-not-in-combat", "The commander who issued the order decided it.")
                .told("letter-of-commendation", BY_LETTER)
                .told("letter-signed-by-major-general", BY_LETTER)
                .told("letter-dates", BY_LETTER)
                .told("letter-of-appreciation", BY_LETTER)
                .told("general-officers", "Grades above colonel are outside the forms this program reads.")
                .device("oak-leaf-cluster")
                .device("v-after-1964")
                .counted((soldier, tally) -> {
                    OrderedAward.count(soldier, AWARD, tally, clusters);
                    OrderedAward.refuseV(soldier, AWARD, tally, noV);
                })
                .rule();
    }
}
