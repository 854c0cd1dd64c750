package org.honorsdue.reference.unit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;

/** Holds the tables of units against each other. */
final class UnitChecks {
    private final FaultList faults;
    private final Set<String> ids = new HashSet<>();

    UnitChecks(FaultList faults) {
        this.faults = faults;
    }

    void noIdTwice(List<Located<Unit>> units) {
        for (Located<Unit> row : units) {
            Unit unit = row.value();
            if (!ids.add(unit.id())) {
                faults.add(UnitRows.UNITS, row.line(), "id", "%s stands twice.".formatted(unit.id()), "Keep one row.");
            }
            if (unit.number().isPresent()
                    && !unit.id().contains("-" + unit.number().orElseThrow())) {
                faults.add(
                        UnitRows.UNITS,
                        row.line(),
                        "id",
                        "%s does not carry the number %d."
                                .formatted(unit.id(), unit.number().orElseThrow()),
                        "Make the id of the kind and the number.");
            }
        }
    }

    <T> void known(String table, String column, List<Located<T>> rows, Function<T, String> id) {
        for (Located<T> row : rows) {
            String unit = id.apply(row.value());
            if (!ids.contains(UnitId.parse(unit).unit())) {
                faults.add(
                        table,
                        row.line(),
                        column,
                        "%s is not in %s.".formatted(unit, UnitRows.UNITS),
                        "Add the unit there or correct the id.");
            }
        }
    }

    <T> void once(String table, List<Located<T>> rows, Function<T, String> id) {
        var seen = new HashSet<String>();
        for (Located<T> row : rows) {
            if (!seen.add(id.apply(row.value()))) {
                faults.add(
                        table,
                        row.line(),
                        "unit",
                        "%s has a second row.".formatted(id.apply(row.value())),
                        "Put the two together.");
            }
        }
    }

    /** A unit must not be its own parent, by whatever detour. */
    void noCircle(List<Located<Membership>> memberships) {
        Map<String, Set<String>> up = new HashMap<>();
        for (Located<Membership> row : memberships) {
            up.computeIfAbsent(row.value().unit(), unit -> new HashSet<>())
                    .add(row.value().parent());
        }
        for (Located<Membership> row : memberships) {
            if (reaches(up, row.value().parent(), row.value().unit(), new HashSet<>())) {
                faults.add(
                        UnitRows.MEMBERSHIPS,
                        row.line(),
                        "parent",
                        "%s would belong to itself.".formatted(row.value().unit()),
                        "Check which of the two was the parent.");
            }
        }
    }

    private static boolean reaches(Map<String, Set<String>> up, String from, String target, Set<String> seen) {
        if (from.equals(target)) {
            return true;
        }
        if (!seen.add(from)) {
            return false;
        }
        return up.getOrDefault(from, Set.of()).stream().anyMatch(parent -> reaches(up, parent, target, seen));
    }

    void noLetterTwice(List<Located<LetteredCompanies>> rows) {
        var seen = new HashSet<String>();
        for (Located<LetteredCompanies> row : rows) {
            for (String letter : row.value().letters()) {
                if (!seen.add(row.value().kind() + letter)) {
                    faults.add(
                            UnitRows.LETTERED,
                            row.line(),
                            "letters",
                            "Letter %s stands in two battalions.".formatted(letter),
                            "Keep it in one.");
                }
            }
        }
    }
}
