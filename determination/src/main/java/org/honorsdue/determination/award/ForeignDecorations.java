package org.honorsdue.determination.award;

import static org.honorsdue.determination.award.OrderedAward.inOrders;

import java.util.List;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;

/**
 * Foreign decorations of the man himself. A Croix de Guerre of his unit gives him nothing to wear (DA GO 43, 19 December
 * 1950), so a bare entry on the paper, which may mean the unit's, is never presumed to be his own.
 */
final class ForeignDecorations {
    private ForeignDecorations() {}

    static List<Rule> rules(Statutes law) {
        return List.of(
                croixDeGuerre(law, "french-croix-de-guerre", "French Croix de Guerre"),
                croixDeGuerre(law, "belgian-croix-de-guerre", "Belgian Croix de Guerre"),
                luxembourg(law),
                others(law));
    }

    private static Rule croixDeGuerre(Statutes law, String award, String name) {
        var draft = law.award(award);
        var level = draft.law("level-of-citation");
        return draft.route("By order", draft.clause("order", soldier -> hisOwn(soldier, award, name)))
                .bar("unit-award-gives-nothing", soldier -> onlyTheUnits(soldier, award))
                .device("level-of-citation")
                .expectedWhen(soldier -> !soldier.credits(award).isEmpty())
                .counted((soldier, tally) -> {
                    tally.because(
                            level, Answer.open(FactKind.FOREIGN_AWARD, () -> "him the decoration, and at what level"));
                    tally.count(Math.max(1, soldier.claims(award).awards()));
                })
                .rule();
    }

    private static Answer onlyTheUnits(Dossier soldier, String award) {
        return soldier.credits(award).isEmpty()
                        || soldier.claims(award).any()
                        || !soldier.orders(award).isEmpty()
                ? Answer.no()
                : Answer.met(
                        () -> "only the unit's is shown",
                        soldier.credits(award).get(0).basis());
    }

    private static Rule luxembourg(Statutes law) {
        String award = "luxembourg-croix-de-guerre";
        var draft = law.award(award);
        return draft.route(
                        "By order",
                        draft.clause("order", soldier -> hisOwn(soldier, award, "Luxembourg Croix de Guerre")))
                .told("unit-award-gives-nothing", "Only an order that names him opens the route.")
                .rule();
    }

    private static Rule others(Statutes law) {
        String award = "other-foreign-individual";
        var draft = law.award(award);
        return draft.route("By order", draft.clause("order", soldier -> hisOwn(soldier, award, "foreign decoration")))
                .told(
                        "accepted-under-the-act",
                        "Which country gave it and when it was accepted stands in the order; the program does not know the country.")
                .told("not-approved", "Only an order that names him opens the route.")
                .rule();
    }

    private static Answer hisOwn(Dossier soldier, String award, String name) {
        var answer = inOrders(soldier, award, name, FactKind.FOREIGN_AWARD);
        return answer.isUnknown()
                ? Answer.open(
                        FactKind.FOREIGN_AWARD,
                        () -> "him, and not only his unit, the " + name,
                        soldier.claims(award).bases())
                : answer;
    }
}
