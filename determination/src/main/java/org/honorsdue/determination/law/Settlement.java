package org.honorsdue.determination.law;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.finding.FactWanted;
import org.honorsdue.determination.finding.Need;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.paper.ProofDocument;

/**
 * What would settle an open question: from the facts that a rule misses, route by route, to the smallest sets of
 * documents that prove them. Nothing here knows any award.
 */
public final class Settlement {
    /** So many ways are named at most; the least trouble first. */
    private static final int WAYS = 8;

    /** Added to the trouble of papers that support an award and seldom settle it, so that they come last. */
    private static final int SUPPORT_ONLY = 3;

    /** Copies of the same paper: of no use for an entry that was already seen on it. */
    private static final Set<String> THE_PAPER_ITSELF = Set.of("separation-paper", "county-recorded-discharge");

    private final Map<FactKind, List<ProofDocument>> proving = new EnumMap<>(FactKind.class);
    private final Map<String, ProofDocument> byId = new HashMap<>();

    public Settlement(Reference reference) {
        for (var kind : FactKind.values()) {
            proving.put(
                    kind,
                    reference.documents().stream()
                            .filter(document -> document.proves().contains(kind.id()))
                            .toList());
        }
        reference.documents().forEach(document -> byId.put(document.id(), document));
    }

    /** The documents that can prove such a fact. */
    public List<ProofDocument> proving(FactKind kind) {
        return proving.getOrDefault(kind, List.of());
    }

    /** One need for each smallest set of missing facts that would decide, the shortest first. */
    List<Need> needs(List<Set<FactWanted>> missing, Dossier soldier) {
        var needs = new ArrayList<Need>();
        for (var set : smallest(missing)) {
            needs.add(need(set, soldier));
        }
        return needs;
    }

    Need need(Set<FactWanted> facts, Dossier soldier) {
        var sorted = facts.stream()
                .sorted(Comparator.comparing(FactWanted::kind).thenComparing(FactWanted::about))
                .toList();
        String question = sorted.stream()
                .map(fact -> FactKind.ofId(fact.kind())
                        .map(kind -> kind.sentence(fact.about()))
                        .orElse(fact.about()))
                .collect(joining(", and that ", "Can it be shown that ", "?"));
        var told = sorted.stream()
                .map(fact -> new FactWanted(fact.kind(), soldier.spokenOf(fact.about())))
                .collect(toUnmodifiableSet());
        return new Need(soldier.spokenOf(question), told, documents(sorted, soldier));
    }

    /** The sets that contain no other set of the list. */
    static <T> List<Set<T>> smallest(List<Set<T>> sets) {
        var kept = new ArrayList<Set<T>>();
        for (var set : new LinkedHashSet<>(sets)) {
            boolean larger = sets.stream().anyMatch(other -> other.size() < set.size() && set.containsAll(other));
            if (!larger) {
                kept.add(set);
            }
        }
        kept.sort(Comparator.comparingInt(Set::size));
        return kept;
    }

    /** The smallest sets of documents that together prove every fact, the least trouble first. */
    private List<Set<String>> documents(List<FactWanted> facts, Dossier soldier) {
        List<Set<String>> ways = new ArrayList<>();
        ways.add(Set.of());
        for (var fact : facts) {
            var kind = FactKind.ofId(fact.kind());
            if (kind.isEmpty()) {
                return List.of();
            }
            var longer = new ArrayList<Set<String>>();
            for (var way : ways) {
                for (var document : proving(kind.get())) {
                    if (THE_PAPER_ITSELF.contains(document.id()) && alreadySeen(kind.get(), soldier)) {
                        continue;
                    }
                    var with = new TreeSet<>(way);
                    with.add(document.id());
                    longer.add(with);
                }
            }
            ways = smallest(longer);
        }
        ways.sort(Comparator.<Set<String>>comparingInt(Set::size)
                .thenComparingInt(this::effort)
                .thenComparing(Object::toString));
        return ways.size() > WAYS ? List.copyOf(ways.subList(0, WAYS)) : ways;
    }

    private static boolean alreadySeen(FactKind kind, Dossier soldier) {
        return !kind.entries().isEmpty()
                && kind.entries().stream().allMatch(entry -> soldier.facts().supplied(entry));
    }

    private int effort(Set<String> documents) {
        int sum = 0;
        for (var id : documents) {
            var document = byId.get(id);
            sum += document == null ? 0 : document.effort() + (supportsOnly(document) ? SUPPORT_ONLY : 0);
        }
        return sum;
    }

    /** A paper that the table says is no authority by itself. */
    private static boolean supportsOnly(ProofDocument document) {
        return document.cannotProve().contains("by themselves");
    }
}
