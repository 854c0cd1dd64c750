package org.honorsdue.determination.award;

import static org.honorsdue.determination.award.OrderedAward.inOrders;

import java.time.LocalDate;
import java.util.List;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.Device;

/**
 * Bronze Star Medal: by order, on a combat badge of the war (in effect from 10 September 1947), or as a defender of the
 * Philippines through the unit citation.
 *
 * <p>The award on a badge is separate from one by order unless both rest on the same service (docket AR20170003387: the
 * second award bore the V). An order for heroism is certainly another service; for any other order the wording decides,
 * so the second award is left as an open question.
 */
final class BronzeStarMedal {
    static final String AWARD = "bronze-star-medal";
    private static final String NAME = "Bronze Star Medal";
    private static final long WAR_BEGAN = LocalDate.of(1941, 12, 7).toEpochDay();
    private static final long WAR_ENDED = LocalDate.of(1945, 9, 2).toEpochDay();
    private static final long LUZON_FELL = LocalDate.of(1942, 5, 10).toEpochDay();

    private BronzeStarMedal() {}

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var clusters = draft.law("oak-leaf-cluster");
        var separate = draft.law("badge-award-is-separate");
        var valor = draft.law("v-for-heroism");
        var noV = draft.law("no-v-from-badge");
        return draft.route("By order", draft.clause("order", BronzeStarMedal::ordered))
                .route(
                        "On a combat badge",
                        draft.clause("badge-counts-as-citation", BronzeStarMedal::hasCombatBadge),
                        draft.clause("badge-of-the-war", BronzeStarMedal::badgeOfTheWar))
                .route(
                        "As a defender of the Philippines",
                        draft.clause("philippine-defender", BronzeStarMedal::defender),
                        draft.clause("philippine-unit-citation", BronzeStarMedal::citedThere))
                .told("merit", "The commander who issued the order decided it.")
                .told(
                        "ground-combat-citation",
                        "Asked as the badge that counts as the citation; certificates are rare.")
                .told(
                        "documents-before-july-1947",
                        "A casefile has no kind of evidence for such a document; it is looked for in the family's hands.")
                .told("reused-documents", "Concerns the documents of the application, not the soldier.")
                .told("aerial-flight", "The commander who issued the order decided it.")
                .device("oak-leaf-cluster")
                .device("badge-award-is-separate")
                .device("v-for-heroism")
                .device("no-v-from-badge")
                .counted((soldier, tally) -> {
                    count(soldier, tally, clusters, separate);
                    letterV(soldier, tally, valor, noV);
                    mistakenForCampaignStar(soldier, tally);
                })
                .pointedAtWhen(soldier ->
                        CombatBadges.pointedAt(soldier) || defender(soldier).speaks())
                .rule();
    }

    /** A badge that is not of the war is no reason to look for an order; only a claim or an order is. */
    private static Answer ordered(Dossier soldier) {
        var answer = inOrders(soldier, AWARD, NAME);
        if (soldier.claims(AWARD).any() || !soldier.orders(AWARD).isEmpty()) {
            return answer;
        }
        return hasCombatBadge(soldier).isMet() && badgeOfTheWar(soldier).isNotMet()
                ? Answer.notMet(() -> "no order is shown, and the badge is not of the war")
                : answer;
    }

    private static Answer hasCombatBadge(Dossier soldier) {
        for (var badge : List.of(CombatBadges.INFANTRYMAN, CombatBadges.MEDICAL)) {
            var orders = soldier.orders(badge);
            if (!orders.isEmpty()) {
                return Answer.met(
                        () -> "the badge was given in orders", orders.get(0).basis());
            }
            var claim = soldier.claims(badge).sure();
            if (claim.isPresent()) {
                return Answer.met(() -> "the paper shows the badge", claim.get().basis());
            }
        }
        for (var badge : List.of(CombatBadges.INFANTRYMAN, CombatBadges.MEDICAL)) {
            if (soldier.claims(badge).any()) {
                return Answer.met(() -> "the badge", soldier.claims(badge).bases());
            }
        }
        return CombatBadges.pointedAt(soldier)
                ? Answer.open(
                        FactKind.AWARD_ORDER,
                        () -> CombatBadges.medicalMan(soldier) ? "the Medical Badge" : "the Combat Infantryman Badge")
                : Answer.no();
    }

    /** By the order's or the claim's date; a badge shown without a date is one of the war if he served in it. */
    private static Answer badgeOfTheWar(Dossier soldier) {
        for (var badge : List.of(CombatBadges.INFANTRYMAN, CombatBadges.MEDICAL)) {
            var earned = CombatBadges.earnedInTheWar(soldier, badge);
            if (earned.speaks()) {
                return earned;
            }
        }
        return soldier.maybeOnDuty(WAR_BEGAN, WAR_ENDED)
                ? Answer.met(() -> "his service lies in the war")
                : Answer.notMet(() -> "he was not in the service between 7 December 1941 and 2 September 1945");
    }

    private static Answer defender(Dossier soldier) {
        for (var claim : soldier.campaigns()) {
            if (claim.campaign().equals("AP-PHI")) {
                return Answer.met(() -> "the paper names the campaign Philippine Islands", claim.basis());
            }
        }
        for (var stay : soldier.abroad()) {
            if (stay.inPhilippines() && stay.there().surelyTouches(WAR_BEGAN, LUZON_FELL)) {
                return Answer.usually(
                        FactKind.STATION,
                        () -> "on Luzon or in the harbor defenses between 7 December 1941 and 10 May 1942",
                        stay.basis());
            }
        }
        return Answer.no();
    }

    private static Answer citedThere(Dossier soldier) {
        var best = Answer.open(
                FactKind.UNIT_CREDIT, () -> "the Distinguished Unit Citation for the defense of the Philippines");
        for (var credit : soldier.credits(UnitAwards.DISTINGUISHED)) {
            boolean there = credit.to()
                    .map(date -> date.earliest().toEpochDay()
                            <= LocalDate.of(1942, 6, 30).toEpochDay())
                    .orElse(true);
            var member = Membership.during(soldier, credit);
            if (there && member.isMet()) {
                return member;
            }
            if (there && member.isUnknown()) {
                best = member;
            }
        }
        var claim = soldier.claims(UnitAwards.DISTINGUISHED).sure();
        return claim.isPresent()
                ? Answer.usually(
                        FactKind.UNIT_CREDIT,
                        () -> "the Distinguished Unit Citation for the defense of the Philippines",
                        claim.get().basis())
                : best;
    }

    private static void count(Dossier soldier, Tally tally, LawClause clusters, LawClause separate) {
        int claimed = soldier.claims(AWARD).withOrder().isPresent() || OrderedAward.ordersSeen(soldier, AWARD) > 0
                ? soldier.claims(AWARD).awards()
                : Math.max(0, soldier.claims(AWARD).awards() - 1);
        int byOrder = Math.max(claimed, OrderedAward.ordersSeen(soldier, AWARD));
        boolean byLaterLaw =
                hasCombatBadge(soldier).isMet() && badgeOfTheWar(soldier).isMet()
                        || defender(soldier).isMet() && citedThere(soldier).isMet();
        int awards = Math.max(1, byOrder);
        if (byOrder > 0 && byLaterLaw) {
            if (forHeroism(soldier)) {
                awards = byOrder + 1;
                tally.because(
                        separate, Answer.met(() -> "the order is for heroism, the badge for service in the fight"));
            } else {
                tally.further(
                        FactKind.AWARD_ORDER,
                        () ->
                                "the Bronze Star Medal for other service than the badge rests on, which would add a cluster");
            }
        }
        tally.count(awards);
        OrderedAward.clusters(awards, tally, clusters);
        var typed = soldier.claims(AWARD);
        if (typed.any() && awards > typed.awards()) {
            tally.shortOnPaper();
        }
    }

    private static boolean forHeroism(Dossier soldier) {
        return soldier.orders(AWARD).stream().anyMatch(AwardOrder::heroism)
                || (soldier.orders(AWARD).isEmpty()
                        && soldier.claims(AWARD).withOrder().isPresent()
                        && soldier.claims(AWARD).devices(Device.LETTER_V) > 0);
    }

    private static void letterV(Dossier soldier, Tally tally, LawClause valor, LawClause noV) {
        for (var order : soldier.orders(AWARD)) {
            if (order.heroism()) {
                tally.worn(Device.LETTER_V, 1, List.of());
                tally.because(valor, Answer.met(() -> "the order gives heroism as its ground", order.basis()));
                if (soldier.claims(AWARD).any() && soldier.claims(AWARD).devices(Device.LETTER_V) == 0) {
                    tally.shortOnPaper();
                }
                return;
            }
        }
        var claims = soldier.claims(AWARD);
        if (claims.devices(Device.LETTER_V) == 0) {
            return;
        }
        if (!soldier.orders(AWARD).isEmpty()) {
            tally.because(
                    valor,
                    Answer.notMet(
                            () -> "the paper types a V, the order does not give heroism as its ground",
                            soldier.orders(AWARD).get(0).basis()));
            return;
        }
        var cited = claims.withOrder();
        if (cited.isPresent()) {
            tally.worn(Device.LETTER_V, 1, List.of());
            tally.because(
                    valor,
                    Answer.met(
                            () -> "the paper puts the V beside the order it cites",
                            cited.get().basis()));
        } else {
            tally.because(
                    hasCombatBadge(soldier).isMet() ? noV : valor,
                    Answer.open(FactKind.AWARD_ORDER, () -> "the medal for heroism", claims.bases()));
            tally.further(FactKind.AWARD_ORDER, () -> "the Bronze Star Medal for heroism, without which no V is worn");
        }
    }

    private static void mistakenForCampaignStar(Dossier soldier, Tally tally) {
        if (soldier.claims(AWARD).any()
                && soldier.claims(AWARD).withOrder().isEmpty()
                && soldier.orders(AWARD).isEmpty()) {
            tally.caution(() -> "\"Bronze Star\" without an order can be a campaign star on a theatre ribbon.");
        }
    }
}
