package org.honorsdue.determination.award;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.dossier.Claims;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.AwardOrder;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.OrderReference;

/**
 * Awards that exist only by an order, and how the program takes a paper's word for one.
 *
 * <p>The separation paper is itself an official record. Three cases are told apart:
 *
 * <ul>
 *   <li>The order was seen, or the paper cites it well enough to be looked up (number, and headquarters or year): the
 *       condition "announced in orders" is met on the face of an official record, and a caution asks for a copy.
 *   <li>The paper names the award without an order: presumed. A records office would look for the order; the staff of
 *       a correction board did not take a bare entry as proof (docket BC-2012-05447).
 *   <li>Nothing on the paper: open, and listed only when asked for.
 * </ul>
 *
 * <p>The Medal of Honor is never presumed: its roll is public.
 */
final class OrderedAward {
    private OrderedAward() {}

    /** Whether orders give him the award. */
    static Answer inOrders(Dossier soldier, String award, String name) {
        return inOrders(soldier, award, name, FactKind.AWARD_ORDER);
    }

    static Answer inOrders(Dossier soldier, String award, String name, FactKind kind) {
        var orders = soldier.orders(award);
        if (!orders.isEmpty()) {
            var read = sure(orders);
            return Answer.met(
                    () -> "the order was seen" + describe(read),
                    read.stream().map(AwardOrder::basis).toList());
        }
        var claims = soldier.claims(award);
        var cited = claims.withOrder();
        if (cited.isPresent()) {
            var claim = cited.get();
            return Answer.met(() -> "the paper cites " + reference(claim), claim.basis());
        }
        var sure = claims.sure();
        if (sure.isPresent()) {
            return Answer.usually(kind, () -> the(name), sure.get().basis());
        }
        if (claims.any()) {
            return Answer.open(kind, () -> the(name), claims.bases());
        }
        return Answer.open(kind, () -> the(name));
    }

    /** The orders read surely; all of them when none was. */
    private static List<AwardOrder> sure(List<AwardOrder> orders) {
        var sure = orders.stream()
                .filter(order -> order.basis().certainty() != Basis.Certainty.DOUBTFUL)
                .toList();
        return sure.isEmpty() ? orders : sure;
    }

    static String the(String name) {
        return "the " + name;
    }

    private static String describe(List<AwardOrder> orders) {
        var words = new StringBuilder();
        for (var order : orders) {
            words.append(words.isEmpty() ? " (" : "; ").append(order.reference().orElse("number not given"));
            order.date().ifPresent(date -> words.append(", ").append(InWords.date(date)));
        }
        return words.append(')').toString();
    }

    private static String reference(AwardClaim claim) {
        return Claims.orderOf(claim).map(OrderReference::asTyped).orElse(claim.asTyped());
    }

    /** Different orders seen for the award. */
    static int ordersSeen(Dossier soldier, String award) {
        var seen = new ArrayList<AwardOrder>();
        for (var order : soldier.orders(award)) {
            if (seen.stream().noneMatch(known -> same(known, order))) {
                seen.add(order);
            }
        }
        return seen.size();
    }

    private static boolean same(AwardOrder one, AwardOrder other) {
        return one.reference().isPresent()
                ? one.reference().equals(other.reference())
                : one.date().equals(other.date());
    }

    /** Counts awards and oak leaf clusters: what the paper claims or what orders show, whichever is more. */
    static int count(Dossier soldier, String award, Tally tally, LawClause clusters) {
        int claimed = soldier.claims(award).awards();
        int seen = ordersSeen(soldier, award);
        int awards = Math.max(1, Math.max(claimed, seen));
        tally.count(awards);
        clusters(awards, tally, clusters);
        if (claimed > 0 && awards > claimed) {
            tally.shortOnPaper();
        }
        if (seen == 0) {
            soldier.claims(award)
                    .withOrder()
                    .ifPresent(claim -> tally.caution(() -> "The order itself was not seen: get a copy of "
                            + reference(claim) + " before the award is claimed or engraved."));
        }
        if (claimed > Math.max(1, seen) && seen > 0) {
            tally.caution(() -> "The paper claims %d awards, orders were seen for %d.".formatted(claimed, seen));
        }
        return awards;
    }

    /** One bronze cluster for each further award, one silver for five of them. */
    static void clusters(int awards, Tally tally, LawClause law) {
        int further = awards - 1;
        if (further < 1) {
            return;
        }
        tally.worn(Device.SILVER_OAK_LEAF_CLUSTER, further / 5, List.of());
        tally.worn(Device.BRONZE_OAK_LEAF_CLUSTER, further % 5, List.of());
        tally.because(law, Answer.met(() -> further == 1 ? "one further award" : further + " further awards"));
    }

    /** A letter V that the paper puts on an award which takes none in the war. */
    static void refuseV(Dossier soldier, String award, Tally tally, LawClause law) {
        if (soldier.claims(award).devices(Device.LETTER_V) > 0) {
            tally.because(
                    law,
                    Answer.notMet(
                            () -> "the paper types a V; none is worn",
                            soldier.claims(award).bases()));
        }
    }

    /** The first order or cited order date of the award, where known. */
    static Optional<Long> earliestOrder(Dossier soldier, String award) {
        long earliest = Long.MAX_VALUE;
        for (var order : soldier.orders(award)) {
            if (order.date().isPresent()) {
                earliest = Math.min(earliest, order.date().get().latest().toEpochDay());
            }
        }
        for (var claim : soldier.claims(award).all()) {
            if (claim.date().isPresent()) {
                earliest = Math.min(earliest, claim.date().get().latest().toEpochDay());
            }
        }
        return earliest == Long.MAX_VALUE ? Optional.empty() : Optional.of(earliest);
    }
}
