package org.honorsdue.reading.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.DeviceCount;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.PartialDate;
import org.jspecify.annotations.Nullable;

/** An award on the paper while the words after it may still add to it. */
final class Claim {
    private static final Set<String> WITH_STARS = Set.of(
            "eame-campaign-medal",
            "asiatic-pacific-campaign-medal",
            "american-campaign-medal",
            "philippine-liberation-ribbon",
            "philippine-defense-ribbon",
            "american-defense-service-medal");
    private static final Set<String> WITH_CLUSTERS = Set.of(
            "distinguished-service-cross",
            "distinguished-service-medal",
            "silver-star",
            "legion-of-merit",
            "distinguished-flying-cross",
            "soldiers-medal",
            "bronze-star-medal",
            "purple-heart",
            "air-medal",
            "army-commendation-medal",
            "distinguished-unit-citation");
    private static final int MOST = 99;

    final String award;
    private final Piece first;
    private int end;
    private int awards = 1;
    private final Map<Device, Integer> devices = new LinkedHashMap<>();
    private final List<OrderReference> orders = new ArrayList<>();
    private @Nullable PartialDate date;
    private Certainty certainty;

    Claim(String award, Piece piece) {
        this.award = award;
        first = piece;
        end = piece.end();
        certainty = piece.certainty();
    }

    /** Campaign medals and the Philippine ribbons: those that service stars are worn on. */
    boolean bearsStars() {
        return bearsStars(award);
    }

    static boolean bearsStars(String award) {
        return WITH_STARS.contains(award);
    }

    /** The American medals bear one star at most. */
    boolean mayHaveSeveralStars() {
        return !award.equals("american-campaign-medal") && !award.equals("american-defense-service-medal");
    }

    /** Whether service stars have been given to it already. */
    boolean hasStars() {
        return devices.containsKey(Device.BRONZE_SERVICE_STAR)
                || devices.containsKey(Device.SILVER_SERVICE_STAR)
                || devices.containsKey(Device.STAR_UNSPECIFIED);
    }

    boolean isTheaterMedal() {
        return award.endsWith("campaign-medal");
    }

    boolean bearsClusters() {
        return WITH_CLUSTERS.contains(award);
    }

    /** Medals for service are there once; a number before one belongs to something else. */
    boolean mayBeNumbered() {
        return !award.endsWith("-campaign-medal")
                && !award.equals("ww2-victory-medal")
                && !award.equals("american-defense-service-medal")
                && !award.endsWith("-badge");
    }

    /** Typed with so many of it: {@code 2 Purple Hearts}. */
    void number(int number) {
        if (number >= 1 && number <= MOST) {
            awards = number;
        }
    }

    void add(Device device, int count, Piece piece) {
        int number = Math.min(Math.max(count, 1), MOST);
        devices.merge(device, number, Integer::sum);
        if (!bearsClusters()) {
            extend(piece);
            return;
        }
        if (device == Device.BRONZE_OAK_LEAF_CLUSTER) {
            awards += number;
        } else if (device == Device.SILVER_OAK_LEAF_CLUSTER) {
            awards += 5 * number;
        }
        extend(piece);
    }

    /** So many loops on the Good Conduct clasp, and so many awards. */
    void loops(int loops, Piece piece) {
        int number = Math.min(Math.max(loops, 1), MOST);
        devices.put(Device.GOOD_CONDUCT_CLASP, number);
        awards = number;
        extend(piece);
    }

    void cite(Piece order) {
        orders.addAll(order.orders());
        end = Math.max(end, order.end());
        if (order.certainty() != Certainty.PLAIN) {
            certainty = EntryText.worse(certainty, Certainty.CORRECTED);
        }
    }

    boolean isDated() {
        return date != null;
    }

    void date(Piece typed) {
        date = typed.date();
        extend(typed);
    }

    void extend(Piece piece) {
        end = Math.max(end, piece.end());
        certainty = EntryText.worse(certainty, piece.certainty());
    }

    void doubt() {
        certainty = Certainty.DOUBTFUL;
    }

    int start() {
        return first.start();
    }

    int end() {
        return end;
    }

    AwardClaim fact(EntryText entry) {
        int from = Math.min(first.start(), end);
        var counts = devices.entrySet().stream()
                .map(device -> new DeviceCount(device.getKey(), Math.min(device.getValue(), MOST)))
                .toList();
        return new AwardClaim(
                award,
                entry.typed(from, end),
                Math.min(awards, MOST),
                counts,
                orders,
                Optional.ofNullable(date),
                entry.entry(),
                entry.basis(from, end, certainty));
    }
}
