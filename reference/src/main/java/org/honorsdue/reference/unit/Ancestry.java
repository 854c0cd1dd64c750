package org.honorsdue.reference.unit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reference.DateSpan;

/** To whom units belonged, up the line. */
public final class Ancestry {
    /** Assigned before attached, then the tie that lasted to the end of the war, then the one that began last. */
    static final Comparator<Membership> USUAL_FIRST = Comparator.comparing(Membership::relation)
            .thenComparing(tie -> tie.when().to().isPresent())
            .thenComparing(
                    tie -> tie.when().from().map(LooseDate::earliest).orElse(LocalDate.MIN), Comparator.reverseOrder());

    /** The usual parents are those of the fighting, not of the mobilization before it. */
    private static final DateSpan WAR_OVERSEAS = new DateSpan(LocalDate.of(1942, 8, 1), LocalDate.of(1946, 12, 31));

    /** An attachment shorter than this changed neither the insigne nor the ship home. */
    private static final int PASSING_DAYS = 120;

    private final UnitTables tables;

    public Ancestry(UnitTables tables) {
        this.tables = tables;
    }

    /** Whether a tie was an attachment of a few weeks; credit by date follows it, insigne and voyage do not. */
    static boolean passing(Membership tie) {
        if (tie.relation() != Membership.Relation.ATTACHED) {
            return false;
        }
        LocalDate from = tie.when().from().map(LooseDate::earliest).orElse(LocalDate.MIN);
        LocalDate to = tie.when().to().map(LooseDate::latest).orElse(LocalDate.MAX);
        return from.isAfter(LocalDate.MIN) && to.isBefore(from.plusDays(PASSING_DAYS));
    }

    /** Every unit it ever belonged to, directly or through another. */
    public Set<String> everAbove(String id) {
        var above = new HashSet<String>();
        collect(id, above);
        return above;
    }

    private void collect(String id, Set<String> above) {
        for (Membership tie : tables.parentsOf(id)) {
            if (above.add(tie.parent())) {
                collect(tie.parent(), above);
            }
        }
    }

    /** The parents it had for the larger part of the war, nearest first. */
    public List<Unit> usual(String id) {
        return line(id, Optional.empty());
    }

    /** The parents it had at some time within the days, nearest first. */
    public List<Unit> during(String id, DateSpan days) {
        return line(id, Optional.of(days));
    }

    private List<Unit> line(String id, Optional<DateSpan> days) {
        var line = new ArrayList<Unit>();
        var seen = new HashSet<String>();
        Optional<Membership> tie = usualTie(id, days);
        while (tie.isPresent() && seen.add(tie.orElseThrow().parent())) {
            String parent = tie.orElseThrow().parent();
            line.add(tables.unit(parent).orElseThrow());
            tie = usualTie(parent, days);
        }
        return List.copyOf(line);
    }

    private Optional<Membership> usualTie(String id, Optional<DateSpan> days) {
        return tables.parentsOf(id).stream()
                .filter(tie -> tie.when().mayOverlap(days.orElse(WAR_OVERSEAS)))
                .min(USUAL_FIRST);
    }
}
