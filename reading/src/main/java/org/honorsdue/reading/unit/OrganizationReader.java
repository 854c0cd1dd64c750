package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reading.unit.OrganizationReading.Outcome;
import org.honorsdue.reference.unit.Ancestry;
import org.honorsdue.reference.unit.Echelon;
import org.honorsdue.reference.unit.LetteredCompanies;
import org.honorsdue.reference.unit.Membership;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.reference.unit.UnitKind;
import org.honorsdue.reference.unit.UnitPart;
import org.honorsdue.reference.unit.UnitTables;
import org.honorsdue.service.fact.Basis.Certainty;

/**
 * Reads an organization as typed and looks it up. Immutable and thread-safe; every look-up is by hash.
 *
 * <p>A unit is named only when what was typed fits exactly one of the tables, or one under another name of the same run
 * of numbers, which a note then says. Everything else is answered with candidates or with the nearest units.
 */
public final class OrganizationReader {
    private final UnitTables tables;
    private final Ancestry ancestry;
    private final NearUnits near;
    private final Map<String, List<Unit>> byName;

    public OrganizationReader(UnitTables tables) {
        this.tables = tables;
        ancestry = new Ancestry(tables);
        near = new NearUnits(tables);
        byName = names(tables);
    }

    /** Names that the grammar of numbers and kinds does not reach: named units, nicknames, further names. */
    private static Map<String, List<Unit>> names(UnitTables tables) {
        var names = new HashMap<String, List<Unit>>();
        for (Unit unit : tables.units()) {
            if (unit.number().isEmpty() || unit.kind() == UnitKind.SPECIAL_FORCE) {
                name(names, unit.name(), unit);
            }
            if (!unit.nickname().isEmpty()) {
                name(names, unit.nickname(), unit);
            }
            for (String alias : unit.aliases()) {
                name(names, alias, unit);
            }
        }
        return names;
    }

    private static void name(Map<String, List<Unit>> names, String name, Unit unit) {
        var units = names.computeIfAbsent(nameKey(Lexer.tokens(name)), key -> new ArrayList<>());
        if (!units.contains(unit)) {
            units.add(unit);
        }
    }

    private static String nameKey(List<Token> tokens) {
        var key = new StringBuilder();
        for (Token token : tokens) {
            if (token.word() != null) {
                if (token.word().role() != Word.Role.NOISE) {
                    key.append(token.word().name()).append(' ');
                }
            } else if (token.isNumber()) {
                key.append(token.number()).append(' ');
            } else if (token.isLetter() || token.type() == Token.Type.UNKNOWN) {
                key.append(token.letter()).append(' ');
            }
        }
        return key.toString().strip();
    }

    /** Reads one line. Never throws for what stands in it. */
    public OrganizationReading read(String typed) {
        List<Token> tokens = Lexer.tokens(typed);
        var line = new LineParts(tokens);
        Optional<OrganizationReading> named = named(typed, tokens, line);
        if (named.isPresent()) {
            return named.orElseThrow();
        }
        takeBattalions(line);
        var resolved = line.designations.stream()
                .map(designation -> resolve(designation, line))
                .toList();
        if (resolved.isEmpty()) {
            return nothing(typed, line);
        }
        return compose(typed, line, settleByParents(resolved, line));
    }

    /** A line that is the name of a unit as a whole, or ends in one. */
    private Optional<OrganizationReading> named(String typed, List<Token> tokens, LineParts line) {
        for (int from = 0; from < tokens.size(); from++) {
            List<Unit> units = byName.getOrDefault(nameKey(tokens.subList(from, tokens.size())), List.of());
            if (units.isEmpty()) {
                continue;
            }
            var before = new LineParts(tokens.subList(0, from));
            if (!before.designations.isEmpty() || !before.unread.isEmpty()) {
                return Optional.empty();
            }
            boolean one = units.size() == 1;
            return Optional.of(new OrganizationReading(
                    typed,
                    one ? Outcome.FOUND : Outcome.AMBIGUOUS,
                    one ? units.get(0).name() : typed.strip(),
                    before.parts,
                    Optional.empty(),
                    one ? Optional.of(units.get(0)) : Optional.empty(),
                    one ? ancestry.usual(units.get(0).id()) : List.of(),
                    one ? List.of() : units,
                    List.of(),
                    line.notes,
                    List.of(),
                    one ? certainty(before) : Certainty.DOUBTFUL));
        }
        return Optional.empty();
    }

    private static Certainty certainty(LineParts line) {
        if (line.doubtful) {
            return Certainty.DOUBTFUL;
        }
        return line.corrected ? Certainty.CORRECTED : Certainty.PLAIN;
    }

    private OrganizationReading nothing(String typed, LineParts line) {
        return new OrganizationReading(
                typed,
                Outcome.NO_UNIT,
                String.join(", ", line.parts.stream().map(UnitPart::text).toList()),
                line.parts,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                line.notes,
                line.unread,
                Certainty.DOUBTFUL);
    }

    /** Third battalion of something: a part once something else is named. */
    private static void takeBattalions(LineParts line) {
        if (line.designations.size() < 2) {
            return;
        }
        var rest = new ArrayList<Designation>();
        for (Designation designation : line.designations) {
            if (designation.isBattalionOfRegiment()) {
                line.parts.add(new UnitPart(
                        (designation.words().get(0) == Word.SQUADRON ? "squadron-" : "battalion-")
                                + designation.number()));
            } else {
                rest.add(designation);
            }
        }
        if (!rest.isEmpty()) {
            line.designations.clear();
            line.designations.addAll(rest);
        }
    }

    /** A designation and the units of the tables it may be. */
    private record Resolved(Designation designation, List<Unit> units, List<String> notes) {
        boolean certain() {
            return units.size() == 1;
        }

        Echelon echelon() {
            if (!units.isEmpty()) {
                return units.get(0).kind().echelon();
            }
            return designation.kinds().isEmpty()
                    ? Echelon.COMPANY
                    : designation.kinds().get(0).echelon();
        }
    }

    private Resolved resolve(Designation designation, LineParts line) {
        if (designation.broken() || designation.kinds().isEmpty()) {
            boolean bare = designation.words().isEmpty() && !designation.broken();
            return new Resolved(
                    designation, bare ? fitting(tables.numbered(designation.number()), line.parts) : List.of(), List.of());
        }
        var exact = new LinkedHashSet<Unit>();
        for (UnitKind kind : designation.kinds()) {
            exact.addAll(tables.units(kind, designation.number()));
        }
        if (!exact.isEmpty()) {
            List<Unit> units = List.copyOf(exact);
            if (designation.words().equals(List.of(Word.DIVISION))
                    && units.get(0).kind() == UnitKind.INFANTRY_DIVISION
                    && units.size() > 1) {
                return new Resolved(
                        designation,
                        List.of(units.get(0)),
                        List.of("No arm typed with the division: read as infantry, as usage was."));
            }
            if (isArmored(designation) && units.size() > 1) {
                return new Resolved(designation, byParts(units, line), List.of());
            }
            return new Resolved(designation, units, List.of());
        }
        var siblings = new LinkedHashSet<Unit>();
        for (UnitKind kind : designation.kinds()) {
            for (UnitKind sibling : kind.siblings()) {
                if (sameSize(designation, sibling)) {
                    siblings.addAll(tables.units(sibling, designation.number()));
                }
            }
        }
        if (siblings.size() == 1) {
            Unit found = siblings.iterator().next();
            return new Resolved(
                    designation,
                    List.of(found),
                    List.of("Typed %s; in our tables this number is the %s.".formatted(designation.text(), found.name())));
        }
        return new Resolved(designation, List.of(), List.of());
    }

    private static boolean isArmored(Designation designation) {
        return designation.words().equals(List.of(Word.ARMORED));
    }

    /** "32nd Armd" with a company is the regiment; without one it may be the division. */
    private static List<Unit> byParts(List<Unit> units, LineParts line) {
        boolean lettered = line.parts.stream().anyMatch(part -> part.isLettered() || part.isBattalion());
        return lettered
                ? units.stream()
                        .filter(unit -> unit.kind().echelon() == Echelon.REGIMENT)
                        .toList()
                : units;
    }

    private static boolean sameSize(Designation designation, UnitKind sibling) {
        return designation.kinds().stream().anyMatch(kind -> kind.echelon() == sibling.echelon());
    }

    /** Units that can have the typed parts: a numbered battalion needs a regiment, a letter no division. */
    private static List<Unit> fitting(List<Unit> units, List<UnitPart> parts) {
        boolean battalion = parts.stream().anyMatch(UnitPart::isBattalion);
        boolean lettered = parts.stream().anyMatch(UnitPart::isLettered);
        return units.stream()
                .filter(unit -> !battalion || unit.kind().echelon() == Echelon.REGIMENT)
                .filter(unit -> !lettered
                        || unit.kind().echelon() == Echelon.REGIMENT
                        || unit.kind().echelon() == Echelon.BATTALION)
                .toList();
    }

    /** Where several units fit, a parent typed beside them decides. */
    private List<Resolved> settleByParents(List<Resolved> resolved, LineParts line) {
        var settled = new ArrayList<Resolved>();
        for (Resolved one : resolved) {
            if (one.units().size() < 2) {
                settled.add(one);
                continue;
            }
            var fitting = new ArrayList<Unit>();
            for (Unit unit : one.units()) {
                Set<String> above = ancestry.everAbove(unit.id());
                boolean fits = resolved.stream()
                        .filter(other -> other != one && other.certain())
                        .anyMatch(other -> above.contains(other.units().get(0).id()));
                if (fits) {
                    fitting.add(unit);
                }
            }
            if (fitting.size() == 1 && one.designation().words().isEmpty()) {
                line.corrected = true;
                settled.add(new Resolved(
                        one.designation(),
                        fitting,
                        List.of("No arm typed: taken from the larger unit beside it.")));
            } else {
                settled.add(fitting.isEmpty() ? one : new Resolved(one.designation(), fitting, one.notes()));
            }
        }
        return settled;
    }

    private OrganizationReading compose(String typed, LineParts line, List<Resolved> resolved) {
        var sorted = new ArrayList<>(resolved);
        sorted.sort(Comparator.comparing(Resolved::echelon));
        Resolved main = sorted.get(0);
        var notes = new ArrayList<>(line.notes);
        resolved.forEach(one -> notes.addAll(one.notes()));
        if (resolved.stream().anyMatch(one -> !one.notes().isEmpty())) {
            line.corrected = true;
        }
        List<Unit> typedParents = sorted.subList(1, sorted.size()).stream()
                .filter(Resolved::certain)
                .map(parent -> parent.units().get(0))
                .toList();
        String meaning = meaning(line, sorted);
        if (main.certain()) {
            Unit unit = memberMeant(main.units().get(0), line).orElse(main.units().get(0));
            boolean member = !unit.equals(main.units().get(0));
            List<UnitPart> parts = member ? List.of() : line.parts;
            checkParents(unit, typedParents, line, notes);
            return new OrganizationReading(
                    typed,
                    Outcome.FOUND,
                    member ? unit.name() : meaning,
                    smallestFirst(parts),
                    implied(unit, parts, notes),
                    Optional.of(unit),
                    parents(unit, typedParents),
                    List.of(),
                    nearestOf(sorted),
                    notes,
                    line.unread,
                    certainty(line));
        }
        if (main.units().size() > 1) {
            return new OrganizationReading(
                    typed,
                    Outcome.AMBIGUOUS,
                    meaning,
                    smallestFirst(line.parts),
                    Optional.empty(),
                    Optional.empty(),
                    typedParents,
                    main.units(),
                    List.of(),
                    notes,
                    line.unread,
                    Certainty.DOUBTFUL);
        }
        notes.add("%s is not in our tables.".formatted(main.designation().text()));
        return new OrganizationReading(
                typed,
                typedParents.isEmpty() ? Outcome.NOT_IN_TABLES : Outcome.PARENT_ONLY,
                meaning,
                smallestFirst(line.parts),
                Optional.empty(),
                Optional.empty(),
                typedParents.isEmpty() ? List.of() : parents(typedParents.get(0), typedParents),
                List.of(),
                nearestOf(sorted),
                notes,
                line.unread,
                typedParents.isEmpty() ? Certainty.DOUBTFUL : certainty(line));
    }

    /** "Sig Co 83 Div": the one signal company that belonged to the division. */
    private Optional<Unit> memberMeant(Unit unit, LineParts line) {
        if (unit.kind().echelon() != Echelon.DIVISION) {
            return Optional.empty();
        }
        for (List<Word> words : line.partWords) {
            List<UnitKind> kinds = Kinds.of(words);
            if (kinds.isEmpty()) {
                continue;
            }
            List<Unit> members = tables.membersOf(unit.id()).stream()
                    .filter(tie -> tie.relation() == Membership.Relation.ASSIGNED)
                    .map(tie -> tables.unit(tie.unit()).orElseThrow())
                    .filter(member -> kinds.contains(member.kind()))
                    .distinct()
                    .toList();
            if (members.size() == 1) {
                line.unread.clear();
                return Optional.of(members.get(0));
            }
        }
        return Optional.empty();
    }

    private void checkParents(Unit unit, List<Unit> typedParents, LineParts line, List<String> notes) {
        if (line.attached) {
            return;
        }
        Set<String> above = ancestry.everAbove(unit.id());
        for (Unit parent : typedParents) {
            if (!above.contains(parent.id()) && hasTies(unit, parent)) {
                List<Unit> usual = ancestry.usual(unit.id());
                notes.add("Typed with the %s; our tables have the %s in the %s."
                        .formatted(
                                parent.name(),
                                unit.name(),
                                usual.isEmpty() ? "no larger unit" : usual.get(0).name()));
                line.doubtful = true;
            }
        }
    }

    /** Only a division's own units are told in full; corps and armies had no fixed members. */
    private boolean hasTies(Unit unit, Unit parent) {
        return !tables.parentsOf(unit.id()).isEmpty() && parent.kind().echelon() == Echelon.DIVISION;
    }

    private List<Unit> parents(Unit unit, List<Unit> typedParents) {
        var parents = new LinkedHashSet<Unit>(typedParents);
        parents.remove(unit);
        parents.addAll(ancestry.usual(unit.id()));
        var sorted = new ArrayList<>(parents);
        sorted.sort(Comparator.comparing(parent -> parent.kind().echelon()));
        return sorted;
    }

    private static List<UnitPart> smallestFirst(List<UnitPart> parts) {
        var sorted = new ArrayList<>(parts);
        sorted.sort(Comparator.comparing(UnitPart::isBattalion));
        return sorted;
    }

    private Optional<LetteredCompanies> implied(Unit unit, List<UnitPart> parts, List<String> notes) {
        Optional<UnitPart> company =
                parts.stream().filter(UnitPart::isLettered).findFirst();
        if (company.isEmpty() || !parts.stream().allMatch(part -> part.isLettered() || part.isBattalion())) {
            return Optional.empty();
        }
        Optional<LetteredCompanies> battalion =
                tables.battalionOf(unit.kind(), company.orElseThrow().letter());
        Optional<UnitPart> typed = parts.stream().filter(UnitPart::isBattalion).findFirst();
        if (typed.isEmpty()) {
            return battalion;
        }
        if (battalion.isPresent()
                && !typed.orElseThrow()
                        .equals(UnitPart.battalion(battalion.orElseThrow().battalion()))) {
            notes.add("%s stood in the %s under the tables of organization, not in the %s."
                    .formatted(
                            company.orElseThrow().text(),
                            UnitPart.battalion(battalion.orElseThrow().battalion())
                                    .text(),
                            typed.orElseThrow().text()));
        }
        return Optional.empty();
    }

    private List<NearUnit> nearestOf(List<Resolved> resolved) {
        var nearest = new ArrayList<NearUnit>();
        for (Resolved one : resolved) {
            if (one.units().isEmpty()) {
                nearest.addAll(near.to(one.designation()));
            }
        }
        return nearest;
    }

    private static String meaning(LineParts line, List<Resolved> sorted) {
        var meaning = new ArrayList<String>();
        smallestFirst(line.parts).forEach(part -> meaning.add(part.text()));
        for (Resolved one : sorted) {
            meaning.add(
                    one.certain() ? one.units().get(0).name() : one.designation().text());
        }
        return String.join(", ", meaning);
    }
}
