package org.honorsdue.determination.law;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.reference.law.Award;
import org.honorsdue.reference.law.LawClause;

/**
 * The law on one award as the program holds it.
 *
 * @param routes the ways to it, in the order of the regulation; one that is met is enough
 * @param bars what keeps it from him although a route is met
 * @param devices the clauses on what is worn, answered by {@code tally}
 * @param told clauses that decide nothing by a test of their own, each with the reason
 * @param shown whether the papers show it
 * @param tally counts awards and devices once the award is due
 * @param pointedAt whether anything in the papers points to it, so that an open question is worth a reader's time
 * @param expected whether people commonly expect it of such a soldier, so that a no is worth saying
 */
public record Rule(
        Award award,
        List<Route> routes,
        List<Clause> bars,
        List<LawClause> devices,
        List<Told> told,
        Predicate<Dossier> shown,
        BiConsumer<Dossier, Tally> tally,
        Predicate<Dossier> pointedAt,
        Predicate<Dossier> expected) {
    public Rule {
        routes = List.copyOf(routes);
        bars = List.copyOf(bars);
        devices = List.copyOf(devices);
        told = List.copyOf(told);
    }

    /**
     * A clause that is told to the reader and has no test of its own.
     *
     * @param why why no test of its own is needed
     */
    public record Told(LawClause law, String why) {}
}
