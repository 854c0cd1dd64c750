package org.honorsdue.determination.award;

import static org.honorsdue.determination.award.OrderedAward.inOrders;

import java.util.List;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;

/**
 * The decorations that come by order and by nothing else: Medal of Honor, Distinguished Service Cross, Distinguished
 * Service Medal, Silver Star, Legion of Merit, Distinguished Flying Cross, Soldier's Medal, Air Medal. How a paper's
 * word for one is taken: {@link OrderedAward}.
 */
final class Decorations {
    private static final String THE_COMMANDER_DECIDED =
            "The commander who issued the order decided it; the program does not weigh acts.";

    private Decorations() {}

    static List<Rule> rules(Statutes law) {
        return List.of(
                medalOfHonor(law),
                byOrder(law, "distinguished-service-cross", "Distinguished Service Cross", "heroism")
                        .rule(),
                byOrder(law, "distinguished-service-medal", "Distinguished Service Medal", "service")
                        .rule(),
                byOrder(law, "silver-star", "Silver Star", "gallantry")
                        .told("merit-alone", THE_COMMANDER_DECIDED)
                        .rule(),
                withoutV(law, "legion-of-merit", "Legion of Merit", "service", "no-v"),
                flying(law, "distinguished-flying-cross", "Distinguished Flying Cross", "no-v"),
                byOrder(law, "soldiers-medal", "Soldier's Medal", "heroism")
                        .told("in-combat", THE_COMMANDER_DECIDED)
                        .rule(),
                airMedal(law));
    }

    private static Rule medalOfHonor(Statutes law) {
        String award = "medal-of-honor";
        var draft = law.award(award);
        var clusters = draft.law("oak-leaf-cluster");
        return draft.route(
                        "By order",
                        draft.clause("order", soldier -> onTheRoll(inOrders(soldier, award, "Medal of Honor"))))
                .told("gallantry", THE_COMMANDER_DECIDED)
                .device("oak-leaf-cluster")
                .counted((soldier, tally) -> {
                    OrderedAward.count(soldier, award, tally, clusters);
                    tally.caution(() -> "Look him up in the public roll of recipients before anything else.");
                })
                .rule();
    }

    /** A bare entry on the paper is not presumed: the roll of recipients is public. */
    private static Answer onTheRoll(Answer answer) {
        return answer.isUnknown()
                ? Answer.open(FactKind.AWARD_ORDER, () -> "the Medal of Honor, and that the public roll names him")
                : answer;
    }

    private static Statutes.Draft byOrder(Statutes law, String award, String name, String ground) {
        var draft = law.award(award);
        var clusters = draft.law("oak-leaf-cluster");
        return draft.route("By order", draft.clause("order", soldier -> inOrders(soldier, award, name)))
                .told(ground, THE_COMMANDER_DECIDED)
                .device("oak-leaf-cluster")
                .counted((soldier, tally) -> OrderedAward.count(soldier, award, tally, clusters));
    }

    private static Rule withoutV(Statutes law, String award, String name, String ground, String noV) {
        var draft = byOrder(law, award, name, ground).device(noV);
        var clusters = draft.law("oak-leaf-cluster");
        var refused = draft.law(noV);
        return draft.counted((soldier, tally) -> {
                    OrderedAward.count(soldier, award, tally, clusters);
                    OrderedAward.refuseV(soldier, award, tally, refused);
                })
                .rule();
    }

    private static Rule flying(Statutes law, String award, String name, String noV) {
        var draft = byOrder(law, award, name, "flight")
                .told("no-mission-count", "No count of missions is read as an award, so nothing has to be barred.")
                .device(noV);
        var clusters = draft.law("oak-leaf-cluster");
        var refused = draft.law(noV);
        return draft.counted((soldier, tally) -> {
                    OrderedAward.count(soldier, award, tally, clusters);
                    OrderedAward.refuseV(soldier, award, tally, refused);
                })
                .rule();
    }

    private static Rule airMedal(Statutes law) {
        String award = "air-medal";
        var draft = byOrder(law, award, "Air Medal", "flight")
                .told("no-mission-count", "No count of missions is read as an award, so nothing has to be barred.")
                .device("no-numerals")
                .device("v-after-1964");
        var clusters = draft.law("oak-leaf-cluster");
        var noNumerals = draft.law("no-numerals");
        var noV = draft.law("v-after-1964");
        return draft.counted((soldier, tally) -> {
                    int awards = OrderedAward.count(soldier, award, tally, clusters);
                    if (awards > 1) {
                        tally.because(noNumerals, Answer.met(() -> "clusters are worn, not figures"));
                    }
                    OrderedAward.refuseV(soldier, award, tally, noV);
                })
                .rule();
    }
}
