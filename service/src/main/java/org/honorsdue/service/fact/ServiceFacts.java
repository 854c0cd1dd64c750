package org.honorsdue.service.fact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.service.paper.Entry;

/**
 * Everything known of one soldier, ready for the law. Immutable; keeps the order in which facts were added, and what
 * is decided from it must not depend on that order.
 */
public final class ServiceFacts {
    private final Map<Class<? extends ServiceFact>, List<ServiceFact>> byKind;
    private final List<Unread> unread;
    private final List<Conflict> conflicts;
    private final List<Set<Entry>> supplied;

    /**
     * @param supplied per paper, in order, the entries that were supplied (typed, blank or illegible): an award
     *     missing from an entry nobody showed us is not missing from the paper
     */
    public ServiceFacts(
            Collection<? extends ServiceFact> facts,
            Collection<Unread> unread,
            Collection<Conflict> conflicts,
            List<? extends Set<Entry>> supplied) {
        var kinds = new HashMap<Class<? extends ServiceFact>, List<ServiceFact>>();
        for (var fact : facts) {
            kinds.computeIfAbsent(fact.getClass(), kind -> new ArrayList<>()).add(fact);
        }
        kinds.replaceAll((kind, list) -> List.copyOf(list));
        this.byKind = Map.copyOf(kinds);
        this.unread = List.copyOf(unread);
        this.conflicts = List.copyOf(conflicts);
        this.supplied = supplied.stream().<Set<Entry>>map(Set::copyOf).toList();
    }

    /** All facts of one kind, in the order they were read. */
    @SuppressWarnings("unchecked") // each list holds only facts of the class it is filed under
    public <T extends ServiceFact> List<T> every(Class<T> kind) {
        return (List<T>) byKind.getOrDefault(kind, List.of());
    }

    public <T extends ServiceFact> Optional<T> first(Class<T> kind) {
        var all = every(kind);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
    }

    /** All facts of all kinds. */
    public List<ServiceFact> all() {
        return byKind.values().stream().flatMap(List::stream).toList();
    }

    public List<Unread> unread() {
        return unread;
    }

    public List<Conflict> conflicts() {
        return conflicts;
    }

    public int papers() {
        return supplied.size();
    }

    /** Whether that entry of that paper (from 1) was shown to us, even if blank. */
    public boolean supplied(int paper, Entry entry) {
        return supplied.get(paper - 1).contains(entry);
    }

    /** Whether any paper shows that entry. */
    public boolean supplied(Entry entry) {
        return supplied.stream().anyMatch(entries -> entries.contains(entry));
    }

    /** The entries seen on any paper. */
    public Set<Entry> suppliedEntries() {
        var all = EnumSet.noneOf(Entry.class);
        supplied.forEach(all::addAll);
        return all;
    }
}
