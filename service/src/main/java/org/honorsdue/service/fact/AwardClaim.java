package org.honorsdue.service.fact;

import java.util.List;
import java.util.Optional;
import org.honorsdue.service.paper.Entry;

/**
 * An award, badge or device named on a paper.
 *
 * @param award award or badge id
 * @param count how many awards of it the words claim, at least 1: a Purple Heart with one cluster is 2
 * @param devices what the words put on it
 * @param orders the orders cited with it
 * @param entry the entry it stands in
 */
public record AwardClaim(
        String award,
        String asTyped,
        int count,
        List<DeviceCount> devices,
        List<OrderReference> orders,
        Optional<PartialDate> date,
        Entry entry,
        Basis basis)
        implements ServiceFact {
    public AwardClaim {
        devices = List.copyOf(devices);
        orders = List.copyOf(orders);
        if (count < 1) {
            throw new IllegalArgumentException("A claim is for at least one award, not " + count + ".");
        }
    }
}
