package org.honorsdue.determination.crosscheck;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.honorsdue.service.fact.NoneTyped;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.paper.Entry;

/**
 * What one paper says, taken out of everything known of the soldier.
 *
 * @param number number of the paper in the casefile, from 1
 */
record OnePaper(ServiceFacts facts, int number) {
    static List<OnePaper> allOf(ServiceFacts facts) {
        return IntStream.rangeClosed(1, facts.papers())
                .mapToObj(number -> new OnePaper(facts, number))
                .toList();
    }

    /** Whether there are papers and every one of them tells of every crossing. */
    static boolean crossingsShown(ServiceFacts facts) {
        return facts.papers() > 0 && allOf(facts).stream().allMatch(OnePaper::crossingsShown);
    }

    /** Whether there are papers and that entry of every one of them was shown and read. */
    static boolean readWhole(ServiceFacts facts, Entry entry) {
        return facts.papers() > 0 && allOf(facts).stream().allMatch(paper -> paper.readWhole(entry));
    }

    /** The facts of one kind that rest on characters of this paper. */
    <T extends ServiceFact> List<T> every(Class<T> kind) {
        return facts.every(kind).stream().filter(this::holds).toList();
    }

    /** The facts of one kind that rest on characters of that entry of this paper. */
    <T extends ServiceFact> List<T> every(Class<T> kind, Entry entry) {
        return facts.every(kind).stream()
                .filter(fact -> fact.basis().origins().stream()
                        .anyMatch(origin -> origin instanceof Origin.OnPaper typed
                                && typed.paper() == number
                                && typed.entry() == entry))
                .toList();
    }

    <T extends ServiceFact> Optional<T> first(Class<T> kind) {
        return facts.every(kind).stream().filter(this::holds).findFirst();
    }

    Optional<Tour> tour() {
        return facts.every(Tour.class).stream()
                .filter(tour -> tour.paper() == number)
                .findFirst();
    }

    List<OverseasStay> stays() {
        return facts.every(OverseasStay.class).stream()
                .filter(stay -> stay.paper() == number)
                .toList();
    }

    Optional<ServiceTotal> total(ServiceTotal.Kind kind) {
        return facts.every(ServiceTotal.class).stream()
                .filter(total -> total.paper() == number && total.kind() == kind)
                .findFirst();
    }

    boolean shows(Entry entry) {
        return facts.supplied(number, entry);
    }

    /** Whether something stands in that entry that nobody could read: what is missing may be there. */
    boolean unreadIn(Entry entry) {
        return facts.unread().stream().anyMatch(bit -> bit.paper() == number && bit.entry() == entry);
    }

    /** Whether the entry was shown to us and all of it was read. */
    boolean readWhole(Entry entry) {
        return shows(entry) && !unreadIn(entry);
    }

    /**
     * Whether the paper tells of every crossing there was: the entry was shown and read, or the total of foreign service
     * is typed as nothing.
     */
    boolean crossingsShown() {
        return readWhole(Entry.SERVICE_OUTSIDE_US)
                || stays().isEmpty()
                        && total(ServiceTotal.Kind.FOREIGN)
                                .filter(total -> TimeAbroad.days(total) == 0)
                                .isPresent();
    }

    /** The word None in that entry, if the clerk typed it. */
    Optional<NoneTyped> none(Entry entry) {
        return facts.every(NoneTyped.class).stream()
                .filter(none -> none.paper() == number && none.entry() == entry)
                .findFirst();
    }

    private boolean holds(ServiceFact fact) {
        for (var origin : fact.basis().origins()) {
            if (origin instanceof Origin.OnPaper typed && typed.paper() == number) {
                return true;
            }
        }
        return false;
    }
}
