package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;

/**
 * The entry on qualifications against the entry on decorations: the same badge told two ways, the infantryman's badge in
 * one and the medical man's in the other, a badge among the decorations where the clerk typed None for qualifications.
 *
 * <p>A badge in only one of the two is otherwise no contradiction; clerks put badges in either.
 */
final class QualificationsAgainstDecorationsCheck implements Check {
    private static final String COMBAT_INFANTRYMAN = "combat-infantryman-badge";
    private static final String MEDICAL = "combat-medical-badge";
    private static final Set<String> BADGES = Set.of(
            COMBAT_INFANTRYMAN,
            MEDICAL,
            "expert-infantryman-badge",
            "parachutist-badge",
            "glider-badge",
            "aviation-badge",
            "driver-and-mechanic-badge");
    private static final Provenance RULE = new Provenance(
            "WD AGO Form 53-55, military qualification and decorations: one badge, one order (common practice); "
                    + "medics' infantry badges withdrawn: descriptions of the Medical Badge",
            Grade.MEMORY);

    @Override
    public String id() {
        return "qualifications-against-decorations";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            compare(paper, comparison);
        }
        return comparison.results();
    }

    private static void compare(OnePaper paper, Comparison comparison) {
        var claims = paper.every(AwardClaim.class).stream()
                .filter(claim -> BADGES.contains(claim.award()))
                .toList();
        var qualifications = in(claims, Entry.QUALIFICATIONS);
        var decorations = in(claims, Entry.DECORATIONS_AND_CITATIONS);
        paper.none(Entry.QUALIFICATIONS)
                .ifPresent(none -> decorations.forEach(claim -> comparison.disagrees(
                        "The entry on qualifications says %s, but the decorations name %s."
                                .formatted(Wording.typed(none), claim.asTyped()),
                        Set.of(claim.award()),
                        List.of(none, claim))));
        for (var one : qualifications) {
            for (var other : decorations) {
                if (one.award().equals(other.award())) {
                    sameBadge(one, other, comparison);
                } else if (Set.of(one.award(), other.award()).equals(Set.of(COMBAT_INFANTRYMAN, MEDICAL))) {
                    comparison.disagrees(
                            "One entry has the Combat Infantryman Badge, the other the Medical Badge: a medical man's infantry badge was withdrawn, so one of them is a slip unless he served as both.",
                            Set.of(COMBAT_INFANTRYMAN, MEDICAL),
                            List.of(one, other));
                }
            }
        }
    }

    private static void sameBadge(AwardClaim one, AwardClaim other, Comparison comparison) {
        var both = List.of(one, other);
        var differences = new ArrayList<String>();
        if (one.date().isPresent() && other.date().isPresent() && apart(one, other)) {
            differences.add("the dates %s and %s"
                    .formatted(
                            Wording.date(one.date().get()),
                            Wording.date(other.date().get())));
        }
        if (!one.orders().isEmpty()
                && !other.orders().isEmpty()
                && one.orders().stream()
                        .noneMatch(order -> other.orders().stream()
                                .anyMatch(same -> same.number().equals(order.number())))) {
            differences.add("the orders %s and %s"
                    .formatted(
                            one.orders().get(0).asTyped(), other.orders().get(0).asTyped()));
        }
        if (differences.isEmpty()) {
            comparison.agrees("%s stands in both entries alike.".formatted(one.asTyped()), Set.of(one.award()), both);
        } else {
            comparison.disagrees(
                    "%s stands in both entries, with %s.".formatted(one.asTyped(), Wording.list(differences)),
                    Set.of(one.award()),
                    both);
        }
    }

    private static boolean apart(AwardClaim one, AwardClaim other) {
        var first = one.date().orElseThrow();
        var second = other.date().orElseThrow();
        return first.latest().isBefore(second.earliest()) || second.latest().isBefore(first.earliest());
    }

    private static List<AwardClaim> in(List<AwardClaim> claims, Entry entry) {
        return claims.stream().filter(claim -> claim.entry() == entry).toList();
    }
}
