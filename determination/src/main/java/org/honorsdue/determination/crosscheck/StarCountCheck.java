package org.honorsdue.determination.crosscheck;

import java.util.List;
import java.util.Set;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;

/**
 * The campaign stars typed on a theatre ribbon against the campaigns named: one star for each, a silver star for five.
 *
 * <p>A ribbon without any star typed is not held against the paper: many clerks named the campaigns and left it there.
 * A credit of a whole theatre (antisubmarine, ground combat, air combat) may carry a star or not; both counts pass.
 */
final class StarCountCheck implements Check {
    private static final Provenance RULE =
            new Provenance("32 CFR 578.48(c), 2006 edition: one bronze service star for each campaign", Grade.TEXT);

    private final Reference reference;

    StarCountCheck(Reference reference) {
        this.reference = reference;
    }

    @Override
    public String id() {
        return "star-count";
    }

    @Override
    public List<Crosscheck> compare(ServiceFacts facts) {
        var comparison = new Comparison(id(), RULE);
        for (var paper : OnePaper.allOf(facts)) {
            for (var stars : CampaignStars.of(paper, reference)) {
                compare(paper, stars, comparison);
            }
        }
        return comparison.results();
    }

    private static void compare(OnePaper paper, CampaignStars stars, Comparison comparison) {
        var medal = Set.of(CampaignStars.medal(stars.theater()).orElseThrow());
        var ribbon = "the ribbon of " + Wording.theater(stars.theater());
        if (stars.typed().isEmpty()) {
            if (!stars.named().isEmpty() && stars.ribbonTyped()) {
                comparison.cannotTell(
                        "No star is typed on %s, while the paper names %s."
                                .formatted(ribbon, Wording.many(stars.named().size(), "campaign")),
                        medal,
                        stars.restsOn());
            }
            return;
        }
        int typed = stars.typed().getAsInt();
        if (typed >= stars.starred() && typed <= stars.named().size()) {
            comparison.agrees(
                    "%s on %s, and as many campaigns are named."
                            .formatted(capital(Wording.many(typed, "star")), ribbon),
                    medal,
                    stars.restsOn());
            return;
        }
        if (!paper.shows(Entry.BATTLES_AND_CAMPAIGNS)
                || typed > stars.starred() && paper.unreadIn(Entry.BATTLES_AND_CAMPAIGNS)) {
            comparison.cannotTell(
                    "%s typed on %s; the entry that names the campaigns was not supplied or not wholly read."
                            .formatted(capital(Wording.many(typed, "star")), ribbon),
                    medal,
                    stars.restsOn(),
                    Entry.BATTLES_AND_CAMPAIGNS);
            return;
        }
        int difference = typed - stars.starred();
        comparison.disagrees(
                "%s typed on %s, but %s named%s: %s."
                        .formatted(
                                capital(Wording.many(typed, "star")),
                                ribbon,
                                stars.starred() == 1 ? "1 campaign is" : stars.starred() + " campaigns are",
                                names(stars),
                                difference > 0
                                        ? Wording.many(difference, "star") + " too many"
                                        : Wording.many(-difference, "star") + " too few"),
                medal,
                stars.restsOn(),
                Entry.BATTLES_AND_CAMPAIGNS);
    }

    private static String names(CampaignStars stars) {
        return stars.named().isEmpty()
                ? ""
                : " (" + Wording.list(stars.named().stream().map(Campaign::name).toList()) + ")";
    }

    private static String capital(String count) {
        return count + (count.startsWith("1 ") ? " is" : " are");
    }
}
