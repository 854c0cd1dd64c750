package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.BirthDate;
import org.honorsdue.service.fact.PersonName;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;

/**
 * One paper against another of the same man: dates of service that overlap, dates of birth and surnames that differ,
 * wounds that the later paper denies.
 */
final class PaperAgainstPaperCheck implements Check {
    private static final Provenance RULE = new Provenance(
            "Two papers of one man: one birth, and one service at a time (common practice)", Grade.MEMORY);

    @Override
    public String id() {
        return "paper-against-paper";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        if (facts.papers() < 2) {
            return List.of();
        }
        var comparison = new Comparison(id(), RULE);
        var papers = OnePaper.allOf(facts);
        for (int i = 0; i < papers.size(); i++) {
            for (int j = i + 1; j < papers.size(); j++) {
                compare(papers.get(i), papers.get(j), comparison);
            }
        }
        return comparison.results();
    }

    private static void compare(OnePaper one, OnePaper other, Comparison comparison) {
        service(one, other, comparison);
        birth(one, other, comparison);
        name(one, other, comparison);
        wounds(one, other, comparison);
        wounds(other, one, comparison);
    }

    /** The entry asks for every wound received in action, so a later paper that says None forgets the earlier one. */
    private static void wounds(OnePaper wounded, OnePaper other, Comparison comparison) {
        var wounds = wounded.every(Wound.class, Entry.WOUNDS);
        var none = other.none(Entry.WOUNDS);
        if (wounds.isEmpty() || none.isEmpty() || before(other, wounds)) {
            return;
        }
        var facts = new ArrayList<ServiceFact>(wounds);
        facts.add(none.get());
        comparison.disagrees(
                "Paper %d gives %s, paper %d says %s."
                        .formatted(
                                wounded.number(),
                                Wording.many(wounds.size(), "wound"),
                                other.number(),
                                Wording.typed(none.get())),
                Set.of("purple-heart"),
                facts);
    }

    /** Whether the other paper was made out before any of the wounds. */
    private static boolean before(OnePaper other, List<Wound> wounds) {
        var separated = other.tour().flatMap(Tour::separated);
        return separated.isPresent()
                && wounds.stream()
                        .allMatch(wound -> wound.date()
                                .filter(date ->
                                        date.earliest().isAfter(separated.get().latest()))
                                .isPresent());
    }

    private static void service(OnePaper one, OnePaper other, Comparison comparison) {
        var first = one.tour();
        var second = other.tour();
        if (first.isEmpty() || second.isEmpty()) {
            return;
        }
        var both = List.of(first.get(), second.get());
        boolean swapped = starts(second.get(), first.get());
        var earlier = swapped ? second.get() : first.get();
        var later = swapped ? first.get() : second.get();
        if (earlier.separated().isEmpty() || later.entered().isEmpty()) {
            comparison.cannotTell(
                    "The two papers cannot be laid end to end: a date of entry or separation is missing.",
                    Set.of(),
                    both);
            return;
        }
        var out = earlier.separated().get();
        var in = later.entered().get();
        long overlap = out.earliest().toEpochDay() - in.latest().toEpochDay();
        // Discharge and re-enlistment on one day, or the day before, was ordinary.
        if (overlap > 1) {
            comparison.disagrees(
                    "Paper %d has him in service until %s, paper %d has him enter on %s: %s of overlap."
                            .formatted(
                                    earlier.paper(),
                                    Wording.date(out),
                                    later.paper(),
                                    Wording.date(in),
                                    Wording.days(overlap)),
                    Set.of(),
                    both);
        } else {
            comparison.agrees("The papers follow one another.", Set.of(), both);
        }
    }

    private static boolean starts(Tour one, Tour before) {
        return one.entered().isPresent()
                && before.entered().isPresent()
                && one.entered().get().latest().isBefore(before.entered().get().earliest());
    }

    private static void birth(OnePaper one, OnePaper other, Comparison comparison) {
        for (var first : one.every(BirthDate.class)) {
            for (var second : other.every(BirthDate.class)) {
                List<ServiceFact> both = List.of(first, second);
                if (first.born().latest().isBefore(second.born().earliest())
                        || second.born().latest().isBefore(first.born().earliest())) {
                    comparison.disagrees(
                            "Paper %d has him born %s, paper %d %s."
                                    .formatted(
                                            one.number(),
                                            Wording.date(first.born()),
                                            other.number(),
                                            Wording.date(second.born())),
                            Set.of(),
                            both);
                } else {
                    comparison.agrees("Both papers give the same birth.", Set.of(), both);
                }
            }
        }
    }

    private static void name(OnePaper one, OnePaper other, Comparison comparison) {
        for (var first : one.every(PersonName.class)) {
            for (var second : other.every(PersonName.class)) {
                var facts = new ArrayList<ServiceFact>(List.of(first, second));
                if (surname(first).equals(surname(second))) {
                    comparison.agrees("Both papers give the same surname.", Set.of(), facts);
                } else {
                    comparison.disagrees(
                            "The surname is %s on paper %d and %s on paper %d."
                                    .formatted(surname(first), one.number(), surname(second), other.number()),
                            Set.of(),
                            facts);
                }
            }
        }
    }

    /** What stands before the first comma, or the first word: papers put the surname first. */
    private static String surname(PersonName name) {
        var words = name.name().toUpperCase(Locale.ROOT).strip();
        int comma = words.indexOf(',');
        var surname = comma > 0 ? words.substring(0, comma) : words.split("\\s+", 2)[0];
        return surname.replaceAll("[^A-Z]", "");
    }
}
