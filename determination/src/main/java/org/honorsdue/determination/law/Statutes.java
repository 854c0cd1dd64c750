package org.honorsdue.determination.law;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.law.LawClause;

/** The table of clauses, from which rules are written: a rule names its clauses by their short names. */
public final class Statutes {
    private final Reference reference;

    public Statutes(Reference reference) {
        this.reference = reference;
    }

    public Reference reference() {
        return reference;
    }

    /**
     * Begins the rule on one award.
     *
     * @throws IllegalStateException when the tables do not hold the award
     */
    public Draft award(String id) {
        return new Draft(id);
    }

    /** A rule being written. */
    public final class Draft {
        private final String award;
        private final List<Route> routes = new ArrayList<>();
        private final List<Clause> bars = new ArrayList<>();
        private final List<LawClause> devices = new ArrayList<>();
        private final List<Rule.Told> told = new ArrayList<>();
        private Predicate<Dossier> shown;
        private BiConsumer<Dossier, Tally> tally = (soldier, sheet) -> {};
        private Predicate<Dossier> pointedAt = soldier -> false;
        private Predicate<Dossier> expected = soldier -> false;

        private Draft(String award) {
            this.award = award;
            this.shown = soldier -> soldier.claims(award).any();
        }

        /** The clause of this award with that short name, to be used in a route. */
        public Clause clause(String shortName, Clause.Test test) {
            return new Clause(law(shortName), test);
        }

        /** The text of a clause of this award. */
        public LawClause law(String shortName) {
            String id = award + "/" + shortName;
            return reference
                    .clause(id)
                    .orElseThrow(() -> new IllegalStateException(
                            "The rule on %s names the clause %s, which clauses.csv does not hold. Add the row or correct the rule."
                                    .formatted(award, id)));
        }

        /** A way to the award; its clauses in the order in which they are read. */
        public Draft route(String title, Clause... clauses) {
            routes.add(new Route(title, List.of(clauses)));
            return this;
        }

        /** Something that keeps the award from him; the test is met when it applies. */
        public Draft bar(String shortName, Clause.Test applies) {
            bars.add(clause(shortName, applies));
            return this;
        }

        /** A clause on what is worn, answered in the tally. */
        public Draft device(String shortName) {
            devices.add(law(shortName));
            return this;
        }

        /** A clause that needs no test of its own. */
        public Draft told(String shortName, String why) {
            told.add(new Rule.Told(law(shortName), why));
            return this;
        }

        /** Where the papers show it, if not as a claim of the award by its name. */
        public Draft shownWhen(Predicate<Dossier> onPaper) {
            shown = onPaper;
            return this;
        }

        public Draft counted(BiConsumer<Dossier, Tally> counting) {
            tally = counting;
            return this;
        }

        public Draft pointedAtWhen(Predicate<Dossier> signs) {
            pointedAt = signs;
            return this;
        }

        public Draft expectedWhen(Predicate<Dossier> common) {
            expected = common;
            return this;
        }

        public Rule rule() {
            var held = reference
                    .award(award)
                    .orElseThrow(() -> new IllegalStateException(
                            "There is a rule on %s, which awards.csv does not hold. Add the row or correct the rule."
                                    .formatted(award)));
            return new Rule(held, routes, bars, devices, told, shown, tally, pointedAt, expected);
        }
    }
}
