package org.honorsdue.determination.crosscheck;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Station;
import org.honorsdue.service.fact.Tour;

/**
 * The widest span of days on which he may have been at one destination: from the arrival there to the departure from
 * it, both inclusive. A missing or partial date widens the span; it never narrows it.
 *
 * @param theaters where it lay; empty when the word on the paper does not tell
 * @param fact the crossing or the station it rests on
 */
record Abroad(DateSpan days, Set<Theater> theaters, String destination, ServiceFact fact) {
    private static final LocalDate BEFORE_ALL = LocalDate.of(1900, 1, 1);
    private static final LocalDate AFTER_ALL = LocalDate.of(1999, 12, 31);

    boolean mayLieIn(Theater theater) {
        return theaters.isEmpty() || theaters.contains(theater);
    }

    /** How many days lie between the two spans: 0 when they share a day, 1 when they touch. */
    static long gap(DateSpan one, DateSpan other) {
        if (one.overlaps(other)) {
            return 0;
        }
        return one.last().isBefore(other.first())
                ? other.first().toEpochDay() - one.last().toEpochDay()
                : one.first().toEpochDay() - other.last().toEpochDay();
    }

    /** Every stay of every paper and every station in evidence, earliest first. */
    static List<Abroad> of(ServiceFacts facts) {
        var all = new ArrayList<Abroad>();
        for (var paper : OnePaper.allOf(facts)) {
            var stays = paper.stays().stream()
                    .sorted(Comparator.comparing(stay -> begin(stay).orElse(PartialDate.day(BEFORE_ALL))))
                    .toList();
            for (int i = 0; i < stays.size(); i++) {
                var next = i + 1 < stays.size() ? stays.get(i + 1).departed() : Optional.<PartialDate>empty();
                all.add(of(stays.get(i), next, paper.tour()));
            }
        }
        for (var station : facts.every(Station.class)) {
            var first = station.from().map(PartialDate::earliest).orElse(BEFORE_ALL);
            var last = station.to().map(PartialDate::latest).orElse(AFTER_ALL);
            all.add(new Abroad(ordered(first, last), station.theaters(), station.place(), station));
        }
        return List.copyOf(all);
    }

    private static Abroad of(OverseasStay stay, Optional<PartialDate> next, Optional<Tour> tour) {
        var first = begin(stay)
                .or(() -> tour.flatMap(Tour::entered))
                .map(PartialDate::earliest)
                .orElse(BEFORE_ALL);
        var last = Stream.of(stay.left(), stay.returned(), next, tour.flatMap(Tour::separated))
                .flatMap(Optional::stream)
                .findFirst()
                .map(PartialDate::latest)
                .orElse(AFTER_ALL);
        return new Abroad(ordered(first, last), stay.theaters(), stay.destination(), stay);
    }

    private static Optional<PartialDate> begin(OverseasStay stay) {
        return stay.arrived().or(stay::departed);
    }

    /** Swapped dates are another check's business; here they must not lose the days between. */
    private static DateSpan ordered(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? new DateSpan(other, one) : new DateSpan(one, other);
    }
}
