package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
    private static final Comparator<UnitPart> SMALLEST_FIRST = Comparator.comparing(OrganizationReader::size);
    /** Typed with one of these, a number that stands under another arm is a contradiction, not a shorthand. */
    private static final Set<Word> SPECIAL_ARMS = EnumSet.of(
            Word.ARMORED,
            Word.PARACHUTE,
            Word.GLIDER,
            Word.AIRBORNE,
            Word.AMPHIBIAN,
            Word.MOUNTAIN,
            Word.AVIATION,
            Word.CONSTRUCTION,
            Word.PROVISIONAL,
            Word.TROOP_CARRIER,
            Word.SERVICE,
            Word.OPERATION,
            Word.OPERATING,
            Word.MOBILE);

    /** Kinds of which one could be mobile without another title. */
    private static final Set<UnitKind> SURGICAL_AND_GUNS = EnumSet.of(
            UnitKind.ANTIAIRCRAFT_ARTILLERY_BATTALION,
            UnitKind.EVACUATION_HOSPITAL,
            UnitKind.SURGICAL_HOSPITAL,
            UnitKind.QUARTERMASTER_BATTALION,
            UnitKind.COAST_ARTILLERY_REGIMENT);

    private static final char HIGHEST_OF_BATTALION = 'H';
    private static final int BATTALIONS_OF_REGIMENT = 4;
    /** A size alone, as in "578 Sq", that a larger unit typed beside it may complete. */
    private static final Set<Word> SIZES = EnumSet.of(Word.BATTALION, Word.SQUADRON, Word.GROUP, Word.REGIMENT);

    private static final String ARTILLERY_PART = "division-artillery-";

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
                if (unit.kind().echelon() == Echelon.DIVISION) {
                    name(names, unit.nickname() + " Division", unit);
                    name(names, unit.nickname().replaceAll("s$", "") + " Division", unit);
                }
            }
            for (String alias : unit.aliases()) {
                name(names, alias, unit);
            }
        }
        return names;
    }

    private static void name(Map<String, List<Unit>> names, String name, Unit unit) {
        List<Token> tokens = Lexer.tokens(name);
        if (tokens.stream().anyMatch(Token::corrected)) {
            return;
        }
        var units = names.computeIfAbsent(nameKey(tokens), key -> new ArrayList<>());
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

    private static String wordKey(List<Word> words) {
        return String.join(
                " ",
                words.stream()
                        .filter(word -> word.role() != Word.Role.NOISE)
                        .map(Word::name)
                        .toList());
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
        line.parts.sort(SMALLEST_FIRST);
        boolean placed = line.designations.size() > 1
                || line.parts.stream().anyMatch(part -> part.isLettered() || part.isBattalion());
        if (!placed) {
            line.designations.removeIf(designation -> {
                boolean bare =
                        designation.words().isEmpty() && designation.broken().isEmpty();
                if (bare) {
                    line.unread.add(Integer.toString(designation.number()));
                }
                return bare;
            });
        }
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
                    one
                            ? chain(
                                    before.parts,
                                    units.get(0).name(),
                                    ancestry.usual(units.get(0).id()).stream()
                                            .map(Unit::name)
                                            .toList())
                            : List.of(),
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

    private static int size(UnitPart part) {
        if (part.id().startsWith("regiment")) {
            return 3;
        }
        if (part.isBattalion()) {
            return 2;
        }
        if (part.id().startsWith("squad-")) {
            return -1;
        }
        return part.id().contains("platoon") || part.id().contains("section") ? 0 : 1;
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
                Stream.concat(
                                line.parts.stream().map(UnitPart::text),
                                line.parts.isEmpty() || line.station.isEmpty()
                                        ? Stream.empty()
                                        : Stream.of(line.station))
                        .toList(),
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

    /** "Hq Co 3 508 PIR": a small number without words beside a regiment. */
    private static boolean isBareBattalion(Designation designation, LineParts line) {
        return designation.words().isEmpty()
                && designation.broken().isEmpty()
                && designation.number() <= BATTALIONS_OF_REGIMENT
                && line.parts.stream().noneMatch(UnitPart::isBattalion)
                && line.designations.stream()
                        .anyMatch(other ->
                                !other.kinds().isEmpty() && other.kinds().get(0).echelon() == Echelon.REGIMENT);
    }

    /** Third battalion of something: a part once something else is named. */
    private static void takeBattalions(LineParts line) {
        if (line.designations.size() < 2) {
            return;
        }
        var rest = new ArrayList<Designation>();
        for (Designation designation : line.designations) {
            if (isBareBattalion(designation, line)) {
                line.parts.add(UnitPart.battalion(designation.number()));
                line.bareBattalion = true;
            } else if (designation.isBattalionOfRegiment()) {
                line.parts.add(new UnitPart((designation.words().get(0) == Word.SQUADRON ? "squadron-" : "battalion-")
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
        /** A number without words is never sure by itself, however few units bore it. */
        boolean certain() {
            return units.size() == 1 && (!bare() || !notes.isEmpty());
        }

        boolean bare() {
            return designation.words().isEmpty()
                    && designation.broken().isEmpty()
                    && designation.named().isEmpty();
        }

        Echelon echelon() {
            if (!units.isEmpty()) {
                return units.get(0).kind().echelon();
            }
            return designation.kinds().isEmpty()
                    ? size(designation.words())
                    : designation.kinds().get(0).echelon();
        }
    }

    private static Echelon size(List<Word> words) {
        for (int i = words.size() - 1; i >= 0; i--) {
            switch (words.get(i)) {
                case COMPANY, BATTERY, TROOP, DETACHMENT, SECTION, PLATOON, TEAM -> {
                    return Echelon.COMPANY;
                }
                case REGIMENT, GROUP, DEPOT -> {
                    return Echelon.REGIMENT;
                }
                case BRIGADE, WING -> {
                    return Echelon.BRIGADE;
                }
                case COMMAND, CENTER, FORCE -> {
                    return Echelon.COMMAND;
                }
                default -> {}
            }
        }
        return Echelon.BATTALION;
    }

    private Resolved resolve(Designation designation, LineParts line) {
        if (!designation.named().isEmpty()) {
            return new Resolved(designation, byName.getOrDefault(wordKey(designation.words()), List.of()), List.of());
        }
        Optional<Unit> nicknamed = nicknamed(designation);
        if (nicknamed.isPresent()) {
            return new Resolved(designation, List.of(nicknamed.orElseThrow()), List.of());
        }
        Optional<Unit> company = separateCompany(designation, line);
        if (company.isPresent()) {
            return new Resolved(designation, List.of(company.orElseThrow()), List.of());
        }
        if (!designation.broken().isEmpty() || designation.kinds().isEmpty()) {
            boolean bare = designation.words().isEmpty() && designation.broken().isEmpty();
            return new Resolved(
                    designation,
                    bare ? fitting(tables.numbered(designation.number()), line.parts) : List.of(),
                    List.of());
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
            if (designation.words().equals(List.of(Word.CAVALRY))) {
                return new Resolved(designation, cavalry(units, line), List.of());
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
                    List.of("Typed %s; in our tables this number is the %s."
                            .formatted(designation.text(), found.name())));
        }
        return new Resolved(designation, List.of(), List.of());
    }

    /** A special arm typed that neither the unit nor anything it ever belonged to bore. */
    private boolean contradicts(Designation designation, Unit unit) {
        boolean paraGlider = designation.words().containsAll(List.of(Word.PARACHUTE, Word.GLIDER))
                && (says(unit, Word.PARACHUTE) || says(unit, Word.GLIDER));
        return !paraGlider
                && Kinds.telling(designation.words()).stream()
                        .filter(SPECIAL_ARMS::contains)
                        .anyMatch(word -> !bears(unit, word));
    }

    private boolean bears(Unit unit, Word word) {
        boolean operates = (word == Word.OPERATION || word == Word.OPERATING)
                && (says(unit, Word.OPERATION) || says(unit, Word.OPERATING));
        boolean named =
                says(unit, word) || operates || word == Word.PROVISIONAL && unit.kind() == UnitKind.SPECIAL_FORCE;
        boolean airborne = word == Word.AIRBORNE && (says(unit, Word.PARACHUTE) || says(unit, Word.GLIDER));
        boolean landing = word == Word.AMPHIBIAN
                && (unit.kind() == UnitKind.ENGINEER_BOAT_AND_SHORE_REGIMENT
                        || unit.kind() == UnitKind.ENGINEER_SPECIAL_BRIGADE);
        boolean moved = word == Word.MOBILE && SURGICAL_AND_GUNS.contains(unit.kind());
        return named
                || airborne
                || landing
                || moved
                || ancestry.everAbove(unit.id()).stream()
                        .flatMap(above -> tables.unit(above).stream())
                        .anyMatch(above -> says(above, word));
    }

    private static boolean says(Unit unit, Word word) {
        return unit.name().contains(word.title()) || unit.kind().title().contains(word.title());
    }

    /** "42nd Rainbow Div": the nickname typed within the designation is that of the unit of this number. */
    private Optional<Unit> nicknamed(Designation designation) {
        if (designation.broken().isEmpty()) {
            return Optional.empty();
        }
        String typed = designation.broken().toLowerCase(Locale.ROOT);
        return Kinds.of(designation.words()).stream()
                .flatMap(kind -> tables.units(kind, designation.number()).stream())
                .filter(unit -> !unit.nickname().isEmpty())
                .filter(unit -> typed.startsWith(unit.nickname().toLowerCase(Locale.ROOT) + " "))
                .findFirst();
    }

    /** "232nd Engr C Co": C stands for combat where the number is that of a company and of no battalion. */
    private Optional<Unit> separateCompany(Designation designation, LineParts line) {
        var companyC = new UnitPart("company-c");
        boolean possible = designation.words().equals(List.of(Word.ENGINEER)) && line.parts.contains(companyC);
        if (!possible
                || designation.kinds().stream()
                        .anyMatch(kind ->
                                !tables.units(kind, designation.number()).isEmpty())) {
            return Optional.empty();
        }
        List<Unit> companies = tables.units(UnitKind.ENGINEER_COMBAT_COMPANY, designation.number());
        if (companies.size() != 1) {
            return Optional.empty();
        }
        line.parts.remove(companyC);
        return Optional.of(companies.get(0));
    }

    private static boolean isArmored(Designation designation) {
        return designation.words().equals(List.of(Word.ARMORED));
    }

    /** "32nd Armd" with a company is the regiment, with a combat command the division; else it may be either. */
    private static List<Unit> byParts(List<Unit> units, LineParts line) {
        boolean command = line.parts.stream().anyMatch(part -> part.id().startsWith("combat-command"));
        boolean lettered = line.parts.stream().anyMatch(part -> part.isLettered() || part.isBattalion());
        if (!command && !lettered) {
            return units;
        }
        Echelon wanted = command ? Echelon.DIVISION : Echelon.REGIMENT;
        return units.stream().filter(unit -> unit.kind().echelon() == wanted).toList();
    }

    /** A regiment where there was one; else a troop is of the squadron, and without a troop the group is meant. */
    private static List<Unit> cavalry(List<Unit> units, LineParts line) {
        boolean troop = line.parts.stream().anyMatch(UnitPart::isLettered);
        UnitKind second = troop ? UnitKind.CAVALRY_RECONNAISSANCE_SQUADRON : UnitKind.CAVALRY_GROUP;
        for (UnitKind wanted : List.of(UnitKind.CAVALRY_REGIMENT, second)) {
            var fitting = units.stream().filter(unit -> unit.kind() == wanted).toList();
            if (!fitting.isEmpty()) {
                return fitting;
            }
        }
        return units;
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
                .filter(unit -> !lettered || canHaveLettered(unit.kind(), parts))
                .toList();
    }

    private static boolean canHaveLettered(UnitKind kind, List<UnitPart> parts) {
        boolean sized = kind.echelon() == Echelon.REGIMENT || kind.echelon() == Echelon.BATTALION;
        return sized
                && kind.hasLetteredParts()
                && parts.stream()
                        .filter(UnitPart::isLettered)
                        .allMatch(part ->
                                part.id().startsWith("company-") || part.id().startsWith(kind.letteredPart() + "-"));
    }

    /** Where several units fit, a parent typed beside them decides. */
    private List<Resolved> settleByParents(List<Resolved> resolved, LineParts line) {
        var settled = new ArrayList<Resolved>();
        for (Resolved one : resolved) {
            List<Unit> possible = ofSizeAlone(one.designation()).orElse(one.units());
            boolean sizeAlone = one.units().isEmpty() && !possible.isEmpty();
            boolean settling = sizeAlone || one.bare() && !possible.isEmpty();
            if (possible.size() < 2 && !settling) {
                settled.add(one);
                continue;
            }
            var fitting = new ArrayList<Unit>();
            for (Unit unit : possible) {
                Set<String> above = ancestry.everAbove(unit.id());
                boolean fits = resolved.stream()
                        .filter(other -> other != one && other.certain())
                        .map(other -> other.units().get(0).id())
                        .anyMatch(other -> above.contains(other)
                                || settling && ancestry.everAbove(other).contains(unit.id()));
                if (fits) {
                    fitting.add(unit);
                }
            }
            if (fitting.size() == 1 && settling) {
                line.corrected = true;
                settled.add(new Resolved(
                        one.designation(), fitting, List.of("No arm typed: taken from the unit typed beside it.")));
            } else {
                settled.add(
                        fitting.isEmpty() || sizeAlone ? one : new Resolved(one.designation(), fitting, one.notes()));
            }
        }
        return settled;
    }

    /** The units of a number with a size and no arm typed, when the designation is such. */
    private Optional<List<Unit>> ofSizeAlone(Designation designation) {
        List<Word> telling = Kinds.telling(designation.words());
        if (telling.size() != 1
                || !SIZES.contains(telling.get(0))
                || !designation.kinds().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(tables.numbered(designation.number()).stream()
                .filter(unit -> unit.kind().title().endsWith(telling.get(0).title()))
                .toList());
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
        line.doubtful |= sorted.stream().skip(1).anyMatch(one -> one.bare() && !one.certain());
        List<Unit> typedParents = sorted.subList(1, sorted.size()).stream()
                .filter(Resolved::certain)
                .map(parent -> parent.units().get(0))
                .toList();
        if (main.certain()) {
            Unit unit =
                    memberMeant(main.units().get(0), line).orElse(main.units().get(0));
            boolean member = !unit.equals(main.units().get(0));
            List<UnitPart> parts = member ? List.of() : partsOf(unit, line);
            checkParents(unit, typedParents, line, notes);
            line.doubtful |= sorted.stream()
                    .filter(Resolved::certain)
                    .anyMatch(one -> contradicts(one.designation(), one.units().get(0)));
            line.doubtful |= !member && namesAnotherUnit(unit, line.partWords);
            if (unit.kind().echelon().compareTo(Echelon.DIVISION) >= 0
                    && parts.stream()
                            .anyMatch(part -> part.isLettered() && !part.id().startsWith("combat-command"))) {
                notes.add("A lettered company stood in a regiment or battalion; which one of the %s is not typed."
                        .formatted(unit.name()));
                line.doubtful = true;
            }
            return new OrganizationReading(
                    typed,
                    Outcome.FOUND,
                    chain(parts, unit.name(), above(unit, sorted)),
                    parts,
                    implied(unit, parts, line, notes),
                    Optional.of(unit),
                    parents(unit, typedParents),
                    List.of(),
                    nearestOf(sorted),
                    notes,
                    line.unread,
                    certainty(line));
        }
        if (!main.units().isEmpty()) {
            return new OrganizationReading(
                    typed,
                    Outcome.AMBIGUOUS,
                    chain(line.parts, main.designation().text(), above(main, sorted)),
                    line.parts,
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
                chain(line.parts, main.designation().text(), above(main, sorted)),
                line.parts,
                Optional.empty(),
                Optional.empty(),
                typedParents.isEmpty() ? List.of() : withParents(typedParents),
                List.of(),
                nearestOf(sorted),
                notes,
                line.unread,
                typedParents.isEmpty() ? Certainty.DOUBTFUL : certainty(line));
    }

    /** "Tk Bn 1st Inf Div", "Div Hq 331st Inf": a part that must have been a unit of its own, or of a larger one. */
    private static boolean namesAnotherUnit(Unit unit, List<List<Word>> parts) {
        boolean division = unit.kind().echelon().compareTo(Echelon.DIVISION) >= 0;
        return parts.stream()
                .anyMatch(words -> !division && words.contains(Word.DIVISION)
                        || words.stream().anyMatch(SIZES::contains)
                                && words.stream().anyMatch(word -> word.role() == Word.Role.ARM)
                                && !words.contains(Word.HEADQUARTERS));
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

    /** A bare letter, as in B/391, is a battery of artillery and a troop of cavalry. */
    private static List<UnitPart> partsOf(Unit unit, LineParts line) {
        if (!line.bareLetter) {
            return line.parts;
        }
        return line.parts.stream()
                .map(part -> part.isLettered()
                        ? new UnitPart(unit.kind().letteredPart()
                                + part.id().substring(part.id().indexOf('-')))
                        : part)
                .toList();
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
                                usual.isEmpty()
                                        ? "no larger unit"
                                        : usual.get(0).name()));
                line.doubtful = true;
            }
        }
    }

    /** Only a division's own units are told in full; corps and armies had no fixed members. */
    private boolean hasTies(Unit unit, Unit parent) {
        return !tables.parentsOf(unit.id()).isEmpty() && parent.kind().echelon() == Echelon.DIVISION;
    }

    private List<Unit> withParents(List<Unit> typedParents) {
        var all = new ArrayList<Unit>();
        all.add(typedParents.get(0));
        all.addAll(parents(typedParents.get(0), typedParents.subList(1, typedParents.size())));
        return all;
    }

    private List<Unit> parents(Unit unit, List<Unit> typedParents) {
        var parents = new LinkedHashSet<Unit>(typedParents);
        parents.remove(unit);
        parents.addAll(ancestry.usual(unit.id()));
        var sorted = new ArrayList<>(parents);
        sorted.sort(Comparator.comparing(parent -> parent.kind().echelon()));
        return sorted;
    }

    private Optional<LetteredCompanies> implied(Unit unit, List<UnitPart> parts, LineParts line, List<String> notes) {
        Optional<UnitPart> company = parts.stream().filter(UnitPart::isLettered).findFirst();
        if (company.isEmpty() || !parts.stream().allMatch(part -> part.isLettered() || part.isBattalion())) {
            return Optional.empty();
        }
        Optional<LetteredCompanies> battalion =
                tables.battalionOf(unit.kind(), company.orElseThrow().letter());
        Optional<UnitPart> typed = parts.stream().filter(UnitPart::isBattalion).findFirst();
        if (typed.isEmpty()) {
            line.doubtful |= tooHigh(unit.kind(), company.orElseThrow(), notes);
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
            line.doubtful |= line.bareBattalion;
        }
        return Optional.empty();
    }

    /** No battalion that stood by itself had companies beyond H. */
    private static boolean tooHigh(UnitKind kind, UnitPart company, List<String> notes) {
        boolean high = kind.echelon() == Echelon.BATTALION && company.letter().charAt(0) > HIGHEST_OF_BATTALION;
        if (high) {
            notes.add("A battalion had no %s; look at the letter and the number again.".formatted(company.text()));
        }
        return high;
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

    /** What stands above the unit: its parents typed and usual, and designations typed that are not in the tables. */
    private List<String> above(Unit unit, List<Resolved> sorted) {
        var parents = new ArrayList<Unit>();
        sorted.stream()
                .skip(1)
                .filter(Resolved::certain)
                .forEach(one -> parents.add(one.units().get(0)));
        var above =
                new ArrayList<>(parents(unit, parents).stream().map(Unit::name).toList());
        above.addAll(0, untabled(sorted));
        return above;
    }

    private List<String> above(Resolved main, List<Resolved> sorted) {
        var above = new ArrayList<>(untabled(sorted));
        var parents = sorted.stream()
                .skip(1)
                .filter(Resolved::certain)
                .map(one -> one.units().get(0))
                .toList();
        if (!parents.isEmpty()) {
            above.add(parents.get(0).name());
            parents(parents.get(0), parents.subList(1, parents.size())).forEach(parent -> above.add(parent.name()));
        }
        return above;
    }

    private static List<String> untabled(List<Resolved> sorted) {
        return sorted.stream()
                .skip(1)
                .filter(one -> !one.certain())
                .map(one -> one.designation().text())
                .toList();
    }

    /** Parts, unit and parents in words. Division artillery stands between its headquarters battery and the division. */
    private static List<String> chain(List<UnitPart> parts, String unit, List<String> above) {
        var chain = new ArrayList<String>();
        for (UnitPart part : parts) {
            if (part.id().startsWith(ARTILLERY_PART)) {
                chain.add(new UnitPart(part.id().substring(ARTILLERY_PART.length())).text());
                chain.add(unit + " Artillery");
            } else if (part.id().equals("division-artillery")) {
                chain.add(unit + " Artillery");
            } else {
                chain.add(part.text());
            }
        }
        chain.add(unit);
        chain.addAll(above);
        return chain;
    }
}
