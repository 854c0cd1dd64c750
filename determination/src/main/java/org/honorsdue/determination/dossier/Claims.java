package org.honorsdue.determination.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.OrderReference;

/** What the papers say of one award, in however many entries. */
public final class Claims {
    static final Claims NONE = new Claims();

    private final List<AwardClaim> all = new ArrayList<>(1);

    Claims() {}

    void add(AwardClaim claim) {
        all.add(claim);
    }

    public boolean any() {
        return !all.isEmpty();
    }

    public List<AwardClaim> all() {
        return all;
    }

    /** A claim that was read surely, if there is one. */
    public Optional<AwardClaim> sure() {
        for (var claim : all) {
            if (claim.basis().certainty() != Basis.Certainty.DOUBTFUL) {
                return Optional.of(claim);
            }
        }
        return Optional.empty();
    }

    /** A surely read claim that cites its order well enough to be looked up: a number, and who issued it or when. */
    public Optional<AwardClaim> withOrder() {
        for (var claim : all) {
            if (claim.basis().certainty() != Basis.Certainty.DOUBTFUL
                    && orderOf(claim).isPresent()) {
                return Optional.of(claim);
            }
        }
        return Optional.empty();
    }

    public static Optional<OrderReference> orderOf(AwardClaim claim) {
        for (var order : claim.orders()) {
            if (order.number().isPresent()
                    && (order.headquarters().isPresent() || order.year().isPresent())) {
                return Optional.of(order);
            }
        }
        return Optional.empty();
    }

    /**
     * How many awards the papers claim: the same award named again in another entry or on another paper is the same
     * award, unless its orders differ.
     */
    public int awards() {
        int most = 0;
        var orders = new ArrayList<OrderReference>(0);
        for (var claim : all) {
            most = Math.max(most, claim.count());
            for (var order : claim.orders()) {
                if (orders.stream().noneMatch(known -> same(known, order))) {
                    orders.add(order);
                }
            }
        }
        return Math.max(most, orders.size());
    }

    private static boolean same(OrderReference one, OrderReference other) {
        return one.number().equals(other.number())
                && (one.year().isEmpty() || other.year().isEmpty() || one.year().equals(other.year()));
    }

    /** The most of one device that a single claim names. */
    public int devices(Device device) {
        int most = 0;
        for (int i = 0; i < all.size(); i++) {
            int here = 0;
            for (var typed : all.get(i).devices()) {
                if (typed.device() == device) {
                    here += typed.count();
                }
            }
            most = Math.max(most, here);
        }
        return most;
    }

    /** What every claim rests on. */
    public List<Basis> bases() {
        return all.stream().map(AwardClaim::basis).toList();
    }
}
