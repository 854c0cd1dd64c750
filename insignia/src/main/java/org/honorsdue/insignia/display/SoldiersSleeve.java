package org.honorsdue.insignia.display;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.honorsdue.insignia.badge.EnlistedGrade;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;

/** What a soldier's own facts, not a finding, say of his sleeves: which insignia his units wore, and his chevrons. */
public final class SoldiersSleeve {
    private SoldiersSleeve() {}

    /**
     * The wish with the sleeve insignia of his units: the last unit's as current, those of earlier units as former. The
     * insigne is that of the unit itself or of the nearest command above it that the tables know.
     */
    public static CaseWish dressed(CaseWish wish, ServiceFacts facts, InsigniaTables tables) {
        var assignments = new ArrayList<>(facts.every(Assignment.class));
        // Undated ones before dated ones, the one he was separated from last: a stable sort keeps the order given.
        assignments.sort(Comparator.comparing(Assignment::atSeparation)
                .thenComparing(one -> one.from().map(PartialDate::earliest).orElse(java.time.LocalDate.MIN)));
        var worn = new ArrayList<String>();
        for (var assignment : assignments) {
            insigne(assignment, tables).ifPresent(unit -> {
                worn.remove(unit);
                worn.add(unit);
            });
        }
        if (worn.isEmpty()) {
            return wish;
        }
        int last = worn.size() - 1;
        return wish.withPatches(worn.get(last), List.copyOf(worn.subList(0, last)));
    }

    private static Optional<String> insigne(Assignment assignment, InsigniaTables tables) {
        return assignment.units().stream()
                .filter(unit -> tables.sleeve(unit).isPresent())
                .findFirst();
    }

    /** The enlisted grade of his last paper that wore chevrons; empty for officers, privates and where none is typed. */
    public static Optional<EnlistedGrade> chevrons(ServiceFacts facts) {
        return facts.every(MilitaryGrade.class).stream()
                .filter(grade -> grade.entry() == Entry.GRADE)
                .max(Comparator.comparingInt(MilitaryGrade::paper))
                .flatMap(grade -> EnlistedGrade.named(grade.title()));
    }
}
