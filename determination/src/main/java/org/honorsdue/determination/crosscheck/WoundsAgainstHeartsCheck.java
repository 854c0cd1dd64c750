package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;

/**
 * Wounds received in action against Purple Hearts, one for each. Two wounds of one day are one occasion, and a clerk's
 * {@code None} beside a Purple Heart is a contradiction the reader should see, though it is a common one.
 */
final class WoundsAgainstHeartsCheck implements Check {
    private static final String MEDAL = "purple-heart";
    private static final Provenance RULE = new Provenance(
            "WD AGO Form 53-55, wounds received in action: each a Purple Heart (common practice)", Grade.MEMORY);

    @Override
    public String id() {
        return "wounds-against-purple-heart";
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
        var wounds = paper.number() == 1 ? paper.every(Wound.class, Entry.WOUNDS) : ofAnyPaper(paper);
        var claims = paper.every(AwardClaim.class).stream()
                .filter(claim -> claim.award().equals(MEDAL))
                .toList();
        if (wounds.isEmpty() && claims.isEmpty() || paper.number() > 1 && claims.isEmpty()) {
            return;
        }
        var restsOn = new ArrayList<ServiceFact>(wounds);
        restsOn.addAll(claims);
        int hearts = hearts(claims);
        long occasions = wounds.stream()
                .map(wound -> wound.date().map(Object::toString).orElse(wound.asTyped()))
                .distinct()
                .count();
        boolean fits = hearts >= occasions && hearts <= Math.max(occasions, wounds.size());
        boolean whole = paper.readWhole(Entry.DECORATIONS_AND_CITATIONS)
                && OnePaper.allOf(paper.facts()).stream()
                        .filter(other -> other.number() <= paper.number())
                        .allMatch(other -> other.readWhole(Entry.WOUNDS));
        var counts = "%s typed, and %s"
                .formatted(
                        woundsAre(wounds.size()),
                        hearts == 0 ? "no Purple Heart" : Wording.many(hearts, "Purple Heart"));
        if (fits) {
            comparison.agrees(counts + ".", Set.of(MEDAL), restsOn);
        } else if (!whole) {
            comparison.cannotTell(
                    counts + "; one of the two entries was not supplied or not wholly read.",
                    Set.of(MEDAL),
                    restsOn,
                    Entry.WOUNDS,
                    Entry.DECORATIONS_AND_CITATIONS);
        } else {
            comparison.disagrees(
                    counts
                            + (hearts < occasions
                                    ? ": %d short.".formatted(occasions - hearts)
                                    : ": %d more than wounds.".formatted(hearts - wounds.size())),
                    Set.of(MEDAL),
                    restsOn,
                    Entry.WOUNDS,
                    Entry.DECORATIONS_AND_CITATIONS);
        }
    }

    /** A later paper repeats the medals of the earlier service and need not repeat its wounds. */
    private static List<Wound> ofAnyPaper(OnePaper paper) {
        return paper.facts().every(Wound.class).stream()
                .filter(wound -> wound.basis().origins().stream().anyMatch(origin -> origin instanceof Origin.OnPaper))
                .toList();
    }

    /** The same medals told in two entries are counted once. */
    private static int hearts(List<AwardClaim> claims) {
        var perEntry = new EnumMap<Entry, Integer>(Entry.class);
        claims.forEach(claim -> perEntry.merge(claim.entry(), claim.count(), Integer::sum));
        return perEntry.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    private static String woundsAre(int wounds) {
        return switch (wounds) {
            case 0 -> "No wound is";
            case 1 -> "1 wound is";
            default -> wounds + " wounds are";
        };
    }
}
