package org.honorsdue.determination.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.unit.Echelon;
import org.honorsdue.reference.unit.Held;
import org.honorsdue.reference.unit.Patch;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.reference.unit.UnitAssault;
import org.honorsdue.reference.unit.UnitAward;
import org.honorsdue.reference.unit.UnitHistory;
import org.honorsdue.reference.unit.UnitHistory.Credited;
import org.honorsdue.reference.unit.Whereabouts;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.CampaignClaim;

/** The units of one soldier that are in the tables, and what their credit means for him. */
public final class SoldierUnits {
    private static final int MOST_SUGGESTED = 6;

    private final Dossier soldier;
    private final UnitHistory history;
    private final List<Stint> stints;
    private final Map<UnitAward.Kind, List<UnitClaim<UnitAward>>> awardsByKind = new ConcurrentHashMap<>(4);

    private SoldierUnits(Dossier soldier, List<Stint> stints) {
        this.soldier = soldier;
        this.history = soldier.history().units();
        this.stints = stints;
    }

    /** His units, in the order of the papers and the evidence. Assignments to units outside the tables are left out. */
    public static SoldierUnits of(Dossier soldier) {
        return soldier.once(SoldierUnits.class, SoldierUnits::read);
    }

    private static SoldierUnits read(Dossier soldier) {
        var assignments = soldier.every(Assignment.class).stream()
                .filter(assignment -> !assignment.units().isEmpty())
                .toList();
        var history = soldier.history().units();
        var stints = new ArrayList<Stint>();
        for (var assignment : assignments) {
            String id = assignment.units().get(0);
            history.tables().unit(id).ifPresent(unit -> stints.add(new Stint(assignment, id, unit)));
        }
        return new SoldierUnits(soldier, stints);
    }

    public List<Stint> stints() {
        return List.copyOf(stints);
    }

    public boolean any() {
        return !stints.isEmpty();
    }

    /** Campaigns of a theatre credited to his units, each once, the surest first among several. */
    public List<UnitClaim<Credited>> campaigns(Theater theater) {
        var claims = new ArrayList<UnitClaim<Credited>>();
        for (Stint stint : stints) {
            for (Held<Credited> held : history.campaigns(stint.id())) {
                if (held.row().campaign().theater() != theater) {
                    continue;
                }
                var presence = Presence.inCampaign(soldier, stint, held.row().campaign());
                keepSurest(claims, new UnitClaim<>(stint, held, presence));
            }
        }
        return List.copyOf(claims);
    }

    private static void keepSurest(List<UnitClaim<Credited>> claims, UnitClaim<Credited> claim) {
        for (int i = 0; i < claims.size(); i++) {
            boolean same = claims.get(i)
                    .held()
                    .row()
                    .campaign()
                    .equals(claim.held().row().campaign());
            if (same) {
                if (rank(claim) < rank(claims.get(i))) {
                    claims.set(i, claim);
                }
                return;
            }
        }
        claims.add(claim);
    }

    /** Citations or foreign awards of one kind to his units in which he may have shared, the surest first. */
    public List<UnitClaim<UnitAward>> awards(UnitAward.Kind kind) {
        return awardsByKind.computeIfAbsent(kind, this::lookUp);
    }

    private List<UnitClaim<UnitAward>> lookUp(UnitAward.Kind kind) {
        var claims = new ArrayList<UnitClaim<UnitAward>>();
        for (Stint stint : stints) {
            for (Held<UnitAward> held : history.awards(stint.id())) {
                if (held.row().award() == kind) {
                    claims.add(new UnitClaim<>(stint, held, Presence.inAction(soldier, stint, held, history)));
                }
            }
        }
        claims.sort(Comparator.comparingInt(SoldierUnits::rank));
        return List.copyOf(claims);
    }

    /** The award of that id in which he surest shared; empty when no unit of his holds it, or he was not there. */
    public Optional<UnitClaim<UnitAward>> surest(String award) {
        return UnitAward.Kind.ofId(award)
                .flatMap(kind -> awards(kind).stream()
                        .filter(claim -> !claim.present().isNotMet())
                        .findFirst());
    }

    /** Assault landings, jumps and glider landings of his units in a theatre. */
    public List<UnitClaim<UnitAssault>> assaults(Theater theater) {
        var claims = new ArrayList<UnitClaim<UnitAssault>>();
        for (Stint stint : stints) {
            for (Held<UnitAssault> held : history.assaults(stint.id())) {
                boolean here = soldier.history()
                        .campaign(held.row().campaign())
                        .map(fought -> fought.campaign().theater() == theater)
                        .orElse(false);
                if (here) {
                    claims.add(new UnitClaim<>(stint, held, Presence.inAssault(soldier, stint, held)));
                }
            }
        }
        return List.copyOf(claims);
    }

    private static int rank(UnitClaim<?> claim) {
        int standing = claim.present().isMet()
                ? 0
                : claim.present().usual() ? 1 : claim.present().isUnknown() ? 2 : 3;
        return standing * 2 + (claim.fromMemory() ? 1 : 0);
    }

    /** Where the unit he came home with, or one he was then assigned to, stood on days of the span. */
    public List<UnitClaim<Whereabouts>> whereabouts(DateSpan days) {
        var claims = new ArrayList<UnitClaim<Whereabouts>>();
        for (Stint stint : stints) {
            boolean may = stint.mayTouch(days.first().toEpochDay(), days.last().toEpochDay());
            if (!may) {
                continue;
            }
            for (Held<Whereabouts> held : history.whereabouts(stint.id())) {
                if (held.row().when().mayOverlap(days)) {
                    claims.add(new UnitClaim<>(
                            stint,
                            held,
                            Presence.among(
                                    soldier,
                                    stint,
                                    held.row().when().widest().orElse(days),
                                    held.row().place())));
                }
            }
        }
        return List.copyOf(claims);
    }

    /** What he wore: the insigne of each of his units, the one he came home with last. */
    public List<UnitClaim<Patch>> patches() {
        var claims = new ArrayList<UnitClaim<Patch>>();
        for (Stint stint : stints) {
            history.patch(stint.id())
                    .ifPresent(held -> claims.add(new UnitClaim<>(
                            stint,
                            held,
                            Answer.met(
                                    () -> stint.assignment().designation(),
                                    stint.assignment().basis()))));
        }
        claims.sort(Comparator.comparing(claim -> claim.stint().assignment().atSeparation()));
        return List.copyOf(claims);
    }

    /** Campaigns the paper names that none of his units in the tables is credited with. Empty when no list is known. */
    public List<CampaignClaim> namedButNotOfHisUnits() {
        var credited = new LinkedHashSet<String>();
        for (Stint stint : stints) {
            history.campaigns(stint.id())
                    .forEach(held -> credited.add(held.row().campaign().id()));
        }
        if (credited.isEmpty()) {
            return List.of();
        }
        return soldier.campaigns().stream()
                .filter(claim -> !credited.contains(claim.campaign()))
                .filter(claim -> soldier.history()
                        .campaign(claim.campaign())
                        .map(fought -> !fought.campaign().blanket())
                        .orElse(false))
                .toList();
    }

    /**
     * Divisions whose lists hold every campaign that the paper names, those with the fewest more first: where he may have
     * served before. Read lists before remembered ones.
     */
    public List<Unit> divisionsThatFit() {
        var named = new LinkedHashSet<String>();
        soldier.campaigns().forEach(claim -> named.add(claim.campaign()));
        if (named.isEmpty()) {
            return List.of();
        }
        var fitting = new ArrayList<Unit>();
        for (Unit unit : history.tables().creditedWith(named.iterator().next())) {
            if (unit.kind().echelon() == Echelon.DIVISION && holds(unit, named)) {
                fitting.add(unit);
            }
        }
        fitting.sort(Comparator.comparingInt(this::listLength)
                .thenComparing(this::listGrade)
                .thenComparing(Unit::id));
        return fitting.size() > MOST_SUGGESTED ? List.copyOf(fitting.subList(0, MOST_SUGGESTED)) : List.copyOf(fitting);
    }

    private boolean holds(Unit unit, Set<String> named) {
        return history.tables()
                .campaignsOf(unit.id())
                .map(credit -> credit.campaigns().containsAll(named))
                .orElse(false);
    }

    private int listLength(Unit unit) {
        return history.tables().campaignsOf(unit.id()).orElseThrow().campaigns().size();
    }

    private Grade listGrade(Unit unit) {
        return history.tables()
                .campaignsOf(unit.id())
                .orElseThrow()
                .provenance()
                .grade();
    }
}
