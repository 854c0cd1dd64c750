package org.honorsdue.determination.award;

import java.util.List;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.unit.SoldierUnits;

/**
 * French and Belgian fourragere and the Netherlands Orange Lanyard. Authority: DA GO 43, 19 December 1950. The
 * fourragere needs its own decree and, to be worn for good, the man's presence in both cited actions; so two credits
 * with presence are asked for. A unit's decree in evidence is a unit credit with the award's id.
 */
final class ForeignUnitAwards {
    private ForeignUnitAwards() {}

    static List<Rule> rules(Statutes law) {
        return List.of(
                french(law),
                fourragere(law.award("belgian-fourragere"), "belgian-fourragere")
                        .rule(),
                lanyard(law));
    }

    private static Rule french(Statutes law) {
        String award = "french-fourragere";
        return fourragere(law.award(award), award)
                .told("four-citations", "The colors follow from the unit's citations and not from the man.")
                .rule();
    }

    private static Statutes.Draft fourragere(Statutes.Draft draft, String award) {
        return draft.route(
                        "In both cited actions",
                        draft.clause("decree", soldier -> decreed(soldier, award)),
                        draft.clause("in-both-actions", soldier -> inBoth(soldier, award)))
                .told("two-citations", "A condition of the unit, decided by the decree.")
                .told("later-member", "Asked as presence in both actions.")
                .told("own-decoration-gives-none", "Only the unit's decree opens the route.")
                .pointedAtWhen(soldier -> !soldier.credits(award).isEmpty() || TableCitation.any(soldier, award))
                .expectedWhen(soldier -> !soldier.credits(award).isEmpty());
    }

    private static Rule lanyard(Statutes law) {
        String award = "netherlands-orange-lanyard";
        var draft = law.award(award);
        return draft.route(
                        "In the cited action",
                        draft.clause("decree", soldier -> decreed(soldier, award)),
                        draft.clause("in-the-cited-action", soldier -> UnitAwards.present(soldier, award)))
                .told("later-member", "Asked as presence in the cited action.")
                .pointedAtWhen(soldier -> !soldier.credits(award).isEmpty() || TableCitation.any(soldier, award))
                .expectedWhen(soldier -> !soldier.credits(award).isEmpty())
                .rule();
    }

    private static Answer decreed(Dossier soldier, String award) {
        var cited = UnitAwards.cited(soldier, award);
        return cited.isUnknown() && !TableCitation.any(soldier, award)
                ? Answer.open(
                        FactKind.FOREIGN_AWARD,
                        () -> "his unit this award",
                        soldier.claims(award).bases())
                : cited;
    }

    private static Answer inBoth(Dossier soldier, String award) {
        int present = 0;
        var credits = soldier.credits(award);
        for (var credit : credits) {
            var member = Membership.during(soldier, credit);
            if (member.isNotMet()) {
                return member;
            }
            if (member.isMet()) {
                present++;
            }
        }
        if (present >= 2) {
            return UnitAwards.present(soldier, award);
        }
        if (credits.isEmpty() && soldier.claims(award).sure().isEmpty()) {
            var table = SoldierUnits.of(soldier).surest(award);
            if (table.isPresent()) {
                return table.get().present();
            }
        }
        var bases = soldier.claims(award).bases();
        return soldier.claims(award).sure().isPresent()
                ? Answer.usually(FactKind.UNIT_PRESENCE, () -> "the unit in both cited actions", bases)
                : Answer.open(FactKind.UNIT_PRESENCE, () -> "the unit in both cited actions", bases);
    }
}
