package org.honorsdue.reference.unit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.unit.Held.Reach;

/**
 * What a unit, or a part of one, holds: its own rows and those of the larger units it was organic to at the time.
 *
 * <p>A unit with a campaign list of its own does not take its parent's. An award to a larger unit reaches the units
 * assigned to it, not the attached ones, which the order must name (opening of DA GO 43, 1950). The id of a part, as in
 * {@code infantry-regiment-331/company-b}, narrows what is cited by battalion or company.
 */
public final class UnitHistory {
    /** Ids of parts are made by readers, so the memory of answers has a limit. */
    private static final int MOST_REMEMBERED = 20_000;

    private final UnitTables tables;
    private final Map<String, Campaign> campaigns = new LinkedHashMap<>();
    private final Map<String, List<Held<Credited>>> knownCampaigns = new ConcurrentHashMap<>();
    private final Map<String, List<Held<UnitAward>>> knownAwards = new ConcurrentHashMap<>();
    private final Map<String, List<Held<UnitAssault>>> knownAssaults = new ConcurrentHashMap<>();

    public UnitHistory(UnitTables tables, Reference reference) {
        this.tables = tables;
        reference.campaigns().forEach(campaign -> campaigns.put(campaign.id(), campaign));
    }

    public UnitTables tables() {
        return tables;
    }

    /** A campaign credited to a unit; {@code note} is that of the unit's list. */
    public record Credited(Campaign campaign, String note) {}

    /** Campaigns in the order of the campaign table. Empty for a unit that is not in the tables. */
    public List<Held<Credited>> campaigns(String id) {
        return remembered(knownCampaigns, UnitId.parse(id).unit(), this::findCampaigns);
    }

    private static <T> List<T> remembered(Map<String, List<T>> known, String id, Function<String, List<T>> find) {
        List<T> answer = known.get(id);
        if (answer == null) {
            answer = find.apply(id);
            if (known.size() < MOST_REMEMBERED) {
                known.put(id, answer);
            }
        }
        return answer;
    }

    private List<Held<Credited>> findCampaigns(String unit) {
        var found = new LinkedHashMap<String, Held<Credited>>();
        collectCampaigns(unit, false, List.of(), Optional.empty(), found, new HashSet<>());
        var ordered = new ArrayList<Held<Credited>>();
        for (String campaign : campaigns.keySet()) {
            if (found.containsKey(campaign)) {
                ordered.add(found.get(campaign));
            }
        }
        return List.copyOf(ordered);
    }

    private void collectCampaigns(
            String unit,
            boolean inherited,
            List<Provenance> ties,
            Optional<LooseSpan> within,
            Map<String, Held<Credited>> found,
            Set<String> seen) {
        var own = tables.campaignsOf(unit);
        if (own.isPresent()) {
            for (String id : own.orElseThrow().campaigns()) {
                Campaign campaign = campaigns.get(id);
                if (campaign != null
                        && within.map(span -> span.mayOverlap(campaign.ground()))
                                .orElse(true)) {
                    var rests = new ArrayList<>(ties);
                    rests.add(own.orElseThrow().provenance());
                    found.putIfAbsent(
                            id,
                            new Held<>(
                                    new Credited(campaign, own.orElseThrow().note()),
                                    tables.unit(unit).orElseThrow(),
                                    inherited,
                                    Reach.ALL,
                                    rests));
                }
            }
            return;
        }
        if (!seen.add(unit)) {
            return;
        }
        for (Membership tie : tables.parentsOf(unit)) {
            collectCampaigns(tie.parent(), true, with(ties, tie.provenance()), Optional.of(tie.when()), found, seen);
        }
    }

    private static List<Provenance> with(List<Provenance> ties, Provenance tie) {
        var all = new ArrayList<>(ties);
        all.add(tie);
        return all;
    }

    /** Citations and foreign awards, its own first. Those of another part than the one asked about are left out. */
    public List<Held<UnitAward>> awards(String id) {
        return remembered(
                knownAwards,
                id,
                asked -> held(asked, tables::awardsOf, UnitAward::parts, UnitAward::when, UnitAward::provenance));
    }

    /** Assault landings, jumps and glider landings, its own first. */
    public List<Held<UnitAssault>> assaults(String id) {
        return remembered(
                knownAssaults,
                id,
                asked -> held(
                        asked, tables::assaultsOf, UnitAssault::parts, UnitAssault::when, UnitAssault::provenance));
    }

    private interface Rows<T> {
        List<T> of(String unit);
    }

    private interface Part<T, R> {
        R of(T row);
    }

    private <T> List<Held<T>> held(
            String id,
            Rows<T> rows,
            Part<T, List<UnitPart>> parts,
            Part<T, LooseSpan> when,
            Part<T, Provenance> provenance) {
        var found = new ArrayList<Held<T>>();
        var asked = UnitId.parse(id);
        List<UnitPart> his = withBattalion(asked);
        tables.unit(asked.unit()).ifPresent(unit -> {
            for (T row : rows.of(unit.id())) {
                Reach reach = reach(parts.of(row), his);
                if (reach != Reach.ANOTHER_PART) {
                    found.add(new Held<>(row, unit, false, reach, List.of(provenance.of(row))));
                }
            }
        });
        inherit(id, List.of(), Optional.empty(), rows, parts, when, provenance, found, new HashSet<>());
        return List.copyOf(found);
    }

    private <T> void inherit(
            String id,
            List<Provenance> ties,
            Optional<LooseSpan> within,
            Rows<T> rows,
            Part<T, List<UnitPart>> parts,
            Part<T, LooseSpan> when,
            Part<T, Provenance> provenance,
            List<Held<T>> found,
            Set<String> seen) {
        for (Membership tie : tables.parentsOf(id)) {
            if (tie.relation() == Membership.Relation.ATTACHED || !seen.add(tie.parent() + tie.when())) {
                continue;
            }
            List<Provenance> all = with(ties, tie.provenance());
            Unit parent = tables.unit(tie.parent()).orElseThrow();
            for (T row : rows.of(parent.id())) {
                Optional<DateSpan> days = when.of(row).widest();
                boolean then = days.isEmpty()
                        || tie.when().mayOverlap(days.orElseThrow())
                                && within.map(span -> span.mayOverlap(days.orElseThrow()))
                                        .orElse(true);
                if (parts.of(row).isEmpty() && then) {
                    found.add(new Held<>(row, parent, true, Reach.ALL, with(all, provenance.of(row))));
                }
            }
            inherit(tie.parent(), all, Optional.of(tie.when()), rows, parts, when, provenance, found, seen);
        }
    }

    /** The part asked about, with the battalion it fell into. */
    private List<UnitPart> withBattalion(UnitId id) {
        var parts = new ArrayList<>(id.parts());
        tables.unit(id.unit()).ifPresent(unit -> {
            for (UnitPart part : id.parts()) {
                if (part.isLettered()) {
                    tables.battalionOf(unit.kind(), part.letter())
                            .ifPresent(battalion -> parts.add(UnitPart.battalion(battalion.battalion())));
                }
            }
        });
        return parts;
    }

    /** Whether parts that a row names are the part asked about. */
    static Reach reach(List<UnitPart> named, List<UnitPart> his) {
        if (named.isEmpty()) {
            return Reach.ALL;
        }
        if (his.isEmpty() || named.contains(UnitPart.ELEMENTS)) {
            return Reach.A_PART;
        }
        for (UnitPart part : named) {
            if (his.contains(part)) {
                return Reach.ALL;
            }
        }
        for (UnitPart part : named) {
            if (mayHold(part, his)) {
                return Reach.A_PART;
            }
        }
        return Reach.ANOTHER_PART;
    }

    /** Whether a man of that part may have belonged to the part named: his company's platoon, his battalion's company. */
    private static boolean mayHold(UnitPart named, List<UnitPart> his) {
        boolean lettered = his.stream().anyMatch(UnitPart::isLettered);
        boolean battalion = his.stream().anyMatch(UnitPart::isBattalion);
        for (UnitPart part : his) {
            if (named.id().startsWith(part.id() + "/")) {
                return true;
            }
        }
        if (named.isLettered()) {
            return !lettered;
        }
        if (named.isBattalion()) {
            return !battalion;
        }
        return !lettered && !battalion;
    }

    /** Where it stood after the surrender: its own rows, else those of the nearest larger unit that has any. */
    public List<Held<Whereabouts>> whereabouts(String id) {
        var found = new ArrayList<Held<Whereabouts>>();
        climb(UnitId.parse(id).unit(), List.of(), new HashSet<>(), (unit, ties) -> {
            for (Whereabouts row : tables.whereaboutsOf(unit.id())) {
                found.add(new Held<>(row, unit, !ties.isEmpty(), Reach.ALL, with(ties, row.provenance())));
            }
            return !found.isEmpty();
        });
        return List.copyOf(found);
    }

    /** What it wore on the sleeve: its own insigne, else that of the nearest larger unit that had one. */
    public Optional<Held<Patch>> patch(String id) {
        var found = new ArrayList<Held<Patch>>();
        climb(UnitId.parse(id).unit(), List.of(), new HashSet<>(), (unit, ties) -> {
            tables.patch(unit.id())
                    .ifPresent(row ->
                            found.add(new Held<>(row, unit, !ties.isEmpty(), Reach.ALL, with(ties, row.provenance()))));
            return !found.isEmpty();
        });
        return found.stream().findFirst();
    }

    private interface Step {
        /** Whether to stop here. */
        boolean at(Unit unit, List<Provenance> ties);
    }

    /** Up the line by the ties that lasted to the end of the war, assigned before attached. */
    private void climb(String id, List<Provenance> ties, Set<String> seen, Step step) {
        Optional<Unit> unit = tables.unit(id);
        if (unit.isEmpty() || !seen.add(id) || step.at(unit.orElseThrow(), ties)) {
            return;
        }
        tables.parentsOf(id).stream()
                .filter(tie -> !Ancestry.passing(tie))
                .min(Ancestry.USUAL_FIRST)
                .ifPresent(tie -> climb(tie.parent(), with(ties, tie.provenance()), seen, step));
    }
}
