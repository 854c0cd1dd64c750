package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.determination.unit.SoldierUnits;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.UnitCredit;

/**
 * Emblems of unit awards: the unit's order and the man's presence must both be shown.
 *
 * <p>A later member wore the emblem only while with the unit and lost it on leaving. An emblem on a separation paper is
 * therefore taken as the permanent kind, presumed: that he was in the cited action is the usual case and is the one
 * fact still to be shown.
 */
final class UnitAwards {
    static final String DISTINGUISHED = "distinguished-unit-citation";
    static final String MERITORIOUS = "meritorious-unit-commendation";
    static final String PHILIPPINE = "philippine-presidential-unit-citation";

    private static final long MERITORIOUS_BEGAN = LocalDate.of(1944, 1, 1).toEpochDay();
    private static final long MERITORIOUS_ENDED = LocalDate.of(1946, 9, 15).toEpochDay();

    private UnitAwards() {}

    static List<Rule> rules(Statutes law) {
        return List.of(distinguished(law), meritorious(law), philippine(law));
    }

    private static Rule distinguished(Statutes law) {
        var draft = law.award(DISTINGUISHED);
        var clusters = draft.law("oak-leaf-cluster");
        return draft.route(
                        "Member in the cited action",
                        draft.clause("unit-cited", soldier -> cited(soldier, DISTINGUISHED)),
                        draft.clause("in-the-cited-action", soldier -> present(soldier, DISTINGUISHED)))
                .told("later-member", "Asked as presence in the cited action.")
                .device("oak-leaf-cluster")
                .counted((soldier, tally) -> {
                    int citations = citations(soldier, DISTINGUISHED, tally);
                    OrderedAward.clusters(citations, tally, clusters);
                })
                .pointedAtWhen(soldier ->
                        (!soldier.credits(DISTINGUISHED).isEmpty() || TableCitation.any(soldier, DISTINGUISHED))
                                && !present(soldier, DISTINGUISHED).isNotMet())
                .expectedWhen(soldier -> !soldier.credits(DISTINGUISHED).isEmpty())
                .rule();
    }

    private static Rule meritorious(Statutes law) {
        var draft = law.award(MERITORIOUS);
        var wreath = draft.law("sleeve-wreath");
        var numeral = draft.law("numeral-in-wreath");
        return draft.route(
                        "Member in the cited period",
                        draft.clause("unit-cited", soldier -> cited(soldier, MERITORIOUS)),
                        draft.clause("window", UnitAwards::inMeritoriousWindow),
                        draft.clause("member-in-the-period", soldier -> present(soldier, MERITORIOUS)))
                .told("service-unit", "A condition of the unit, decided by the order that gives it the award.")
                .told("six-months", "A condition of the unit, decided by the order that gives it the award.")
                .told("later-member", "Asked as membership in the cited period.")
                .device("sleeve-wreath")
                .device("numeral-in-wreath")
                .counted((soldier, tally) -> {
                    int citations = citations(soldier, MERITORIOUS, tally);
                    tally.because(
                            wreath, Answer.met(() -> "the wreath of the war and the emblem of today are one award"));
                    if (citations > 1) {
                        tally.worn(Device.BRONZE_OAK_LEAF_CLUSTER, citations - 1, List.of());
                        tally.because(numeral, Answer.met(() -> citations + " awards to units he was in"));
                    }
                })
                .pointedAtWhen(soldier -> !soldier.credits(MERITORIOUS).isEmpty()
                        && !present(soldier, MERITORIOUS).isNotMet())
                .expectedWhen(soldier -> !soldier.credits(MERITORIOUS).isEmpty())
                .rule();
    }

    private static Rule philippine(Statutes law) {
        var draft = law.award(PHILIPPINE);
        var noCluster = draft.law("no-cluster");
        return draft.route(
                        "In the first period",
                        draft.clause("unit-listed", soldier -> cited(soldier, PHILIPPINE)),
                        draft.clause("first-period", PhilippineAwards::inFirstCitationPeriod),
                        draft.clause("with-the-unit", soldier -> present(soldier, PHILIPPINE)))
                .route(
                        "In the second period",
                        draft.clause("unit-listed", soldier -> cited(soldier, PHILIPPINE)),
                        draft.clause("second-period", PhilippineAwards::inSecondCitationPeriod),
                        draft.clause("with-the-unit", soldier -> present(soldier, PHILIPPINE)))
                .device("no-cluster")
                .counted((soldier, tally) -> {
                    if (soldier.claims(PHILIPPINE).awards() > 1) {
                        tally.because(
                                noCluster,
                                Answer.notMet(
                                        () -> "the paper types a cluster; none is worn",
                                        soldier.claims(PHILIPPINE).bases()));
                    }
                })
                .pointedAtWhen(soldier -> !PhilippineAwards.inFirstCitationPeriod(soldier)
                                .isNotMet()
                        || !PhilippineAwards.inSecondCitationPeriod(soldier).isNotMet())
                .rule();
    }

    private static String nameOf(String award) {
        return switch (award) {
            case DISTINGUISHED -> "the Distinguished Unit Citation";
            case MERITORIOUS -> "the Meritorious Service Unit Plaque or Commendation";
            case PHILIPPINE -> "the Philippine Republic Presidential Unit Citation";
            default -> "this award";
        };
    }

    /** Whether orders cite the unit: an order in evidence, or the paper's own entry. */
    static Answer cited(Dossier soldier, String award) {
        var credits = soldier.credits(award);
        if (!credits.isEmpty()) {
            return Answer.met(
                    () -> "orders credit " + names(credits),
                    credits.stream().map(UnitCredit::basis).toList());
        }
        var claim = soldier.claims(award).sure();
        if (claim.isPresent()) {
            return Answer.met(() -> "the paper names it", claim.get().basis());
        }
        var table = SoldierUnits.of(soldier).surest(award);
        if (table.isPresent()) {
            return TableCitation.cited(table.get());
        }
        return Answer.open(
                FactKind.UNIT_CREDIT, () -> nameOf(award), soldier.claims(award).bases());
    }

    /** Whether he was there: with a credited unit in the time of its credit. */
    static Answer present(Dossier soldier, String award) {
        var best = Answer.no();
        for (var credit : soldier.credits(award)) {
            var answer = Membership.during(soldier, credit);
            if (answer.isMet()) {
                return answer;
            }
            if (answer.isUnknown() || !best.speaks()) {
                best = answer;
            }
        }
        var claim = soldier.claims(award).sure();
        if (claim.isPresent() && !best.isNotMet() || claim.isPresent() && !best.speaks()) {
            return Answer.usually(
                    FactKind.UNIT_PRESENCE,
                    () -> "the cited unit in the cited action",
                    claim.get().basis());
        }
        if (!best.speaks()) {
            var table = SoldierUnits.of(soldier).surest(award);
            if (table.isPresent()) {
                return table.get().present();
            }
        }
        return best.speaks() ? best : Answer.open(FactKind.UNIT_PRESENCE, () -> "the cited unit in the cited action");
    }

    private static Answer inMeritoriousWindow(Dossier soldier) {
        for (var credit : soldier.credits(MERITORIOUS)) {
            long from = credit.from().map(date -> date.earliest().toEpochDay()).orElse(MERITORIOUS_BEGAN);
            long to = credit.to().map(date -> date.latest().toEpochDay()).orElse(MERITORIOUS_ENDED);
            if (from <= MERITORIOUS_ENDED && to >= MERITORIOUS_BEGAN) {
                return Answer.met(() -> "the credit lies in these dates", credit.basis());
            }
        }
        if (!soldier.credits(MERITORIOUS).isEmpty()) {
            return Answer.notMet(
                    () -> "the credit lies outside these dates",
                    soldier.credits(MERITORIOUS).get(0).basis());
        }
        return soldier.maybeOnDuty(MERITORIOUS_BEGAN, MERITORIOUS_ENDED)
                ? Answer.met(() -> "he served in these dates")
                : Answer.notMet(() -> "he did not serve between 1 January 1944 and 15 September 1946");
    }

    /** Citations in which he was present, or what the paper claims if that is more. */
    private static int citations(Dossier soldier, String award, Tally tally) {
        int shown = 0;
        for (var credit : distinct(soldier.credits(award))) {
            if (Membership.during(soldier, credit).isMet()) {
                shown++;
            }
        }
        int claimed = soldier.claims(award).awards();
        int inTables = TableCitation.counted(soldier, award, tally);
        int citations = Math.max(1, Math.max(Math.max(shown, inTables), claimed));
        tally.count(citations);
        if (claimed > 0 && shown > claimed) {
            tally.shortOnPaper();
        }
        if (claimed > shown && claimed > 1) {
            int proven = shown;
            tally.caution(() -> "The paper claims %d citations; the orders and his presence are shown for %d."
                    .formatted(claimed, proven));
        }
        return citations;
    }

    /** A battalion and its regiment cited for the same days is one citation. */
    private static List<UnitCredit> distinct(List<UnitCredit> credits) {
        var kept = new ArrayList<UnitCredit>();
        for (var credit : credits) {
            boolean known = kept.stream()
                    .anyMatch(other -> other.from().equals(credit.from())
                            && other.to().equals(credit.to())
                            && (other.from().isPresent() || other.reference().equals(credit.reference())));
            if (!known) {
                kept.add(credit);
            }
        }
        return kept;
    }

    private static String names(List<UnitCredit> credits) {
        var words = new ArrayList<String>();
        for (var credit : credits) {
            String dates = credit.from()
                    .map(from -> ", " + InWords.date(from)
                            + credit.to().map(to -> " to " + InWords.date(to)).orElse(""))
                    .orElse("");
            words.add(credit.designation()
                    + dates
                    + credit.reference().map(order -> " (" + order + ")").orElse(""));
        }
        return String.join("; ", words);
    }
}
