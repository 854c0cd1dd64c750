package org.honorsdue.reading.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.reference.unit.UnitKind;
import org.honorsdue.reference.unit.UnitTables;

/**
 * Units close to a designation that is not in the tables: the same number in another arm, and numbers one slip away in
 * the same arm. Tried one by one against the index; nothing is scanned.
 */
final class NearUnits {
    private static final int MOST = 6;

    private final UnitTables tables;

    NearUnits(UnitTables tables) {
        this.tables = tables;
    }

    List<NearUnit> to(Designation designation) {
        var near = new ArrayList<NearUnit>();
        tables.numbered(designation.number()).stream()
                .sorted(Comparator.comparing((Unit unit) -> shared(designation, unit))
                        .reversed())
                .limit(MOST / 2)
                .forEach(unit -> near.add(new NearUnit(unit, "the same number, another kind of unit")));
        for (int number : oneSlipFrom(designation.number())) {
            for (UnitKind kind : designation.kinds()) {
                for (Unit unit : tables.units(kind, number)) {
                    if (near.size() < MOST) {
                        near.add(new NearUnit(unit, "number %d instead of %d".formatted(number, designation.number())));
                    }
                }
            }
        }
        return near;
    }

    /** How many of the words typed the unit's title has: another hospital is nearer than a signal company. */
    private static long shared(Designation designation, Unit unit) {
        return Kinds.telling(designation.words()).stream()
                .filter(word -> unit.kind().title().contains(word.title()))
                .count();
    }

    /** Two neighbouring digits changed over, one digit wrong, one too few, one too many. */
    private static Set<Integer> oneSlipFrom(int number) {
        var slips = new LinkedHashSet<Integer>();
        String digits = Integer.toString(number);
        for (int i = 0; i + 1 < digits.length(); i++) {
            add(slips, digits.substring(0, i) + digits.charAt(i + 1) + digits.charAt(i) + digits.substring(i + 2));
        }
        for (int i = 0; i < digits.length(); i++) {
            add(slips, digits.substring(0, i) + digits.substring(i + 1));
        }
        for (int i = 0; i < digits.length(); i++) {
            for (char digit = '0'; digit <= '9'; digit++) {
                add(slips, digits.substring(0, i) + digit + digits.substring(i + 1));
            }
        }
        for (int i = 0; i <= digits.length(); i++) {
            for (char digit = '0'; digit <= '9'; digit++) {
                add(slips, digits.substring(0, i) + digit + digits.substring(i));
            }
        }
        slips.remove(number);
        return slips;
    }

    private static void add(Set<Integer> slips, String digits) {
        if (!digits.isEmpty() && digits.charAt(0) != '0' && digits.length() <= 5) {
            slips.add(Integer.parseInt(digits));
        }
    }
}
