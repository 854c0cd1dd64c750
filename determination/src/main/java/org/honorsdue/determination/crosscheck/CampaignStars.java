package org.honorsdue.determination.crosscheck;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.fact.DeviceCount;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.paper.Entry;

/**
 * The campaigns a paper names and the campaign stars it puts on the ribbon of one theatre.
 *
 * @param named each campaign once, in the order typed
 * @param typed stars typed on the ribbon, a silver star being five; empty when no star is typed
 * @param restsOn the claims behind both
 */
record CampaignStars(
        Theater theater, List<Campaign> named, OptionalInt typed, boolean ribbonTyped, List<ServiceFact> restsOn) {
    private static final Map<Theater, String> MEDALS = medals();

    /** The award id of the medal whose ribbon carries the stars of that theatre. */
    static Optional<String> medal(Theater theater) {
        return Optional.ofNullable(MEDALS.get(theater));
    }

    /** Named campaigns, without the credits of a whole theatre: texts differ on whether those carry a star. */
    int starred() {
        return (int) named.stream().filter(campaign -> !campaign.blanket()).count();
    }

    /** The fewest stars the paper can mean. */
    int fewest() {
        return Math.min(starred(), typed.orElse(starred()));
    }

    /** The most stars the paper can mean. */
    int most() {
        return Math.max(named.size(), typed.orElse(0));
    }

    static List<CampaignStars> of(OnePaper paper, Reference reference) {
        var all = new ArrayList<CampaignStars>();
        for (var theater : MEDALS.keySet()) {
            var stars = of(paper, reference, theater);
            if (!stars.restsOn().isEmpty()) {
                all.add(stars);
            }
        }
        return List.copyOf(all);
    }

    private static CampaignStars of(OnePaper paper, Reference reference, Theater theater) {
        var restsOn = new ArrayList<ServiceFact>();
        var named = new LinkedHashMap<String, Campaign>();
        for (var claim : paper.every(CampaignClaim.class)) {
            reference
                    .campaign(claim.campaign())
                    .filter(campaign -> campaign.theater() == theater)
                    .ifPresent(campaign -> {
                        named.putIfAbsent(campaign.id(), campaign);
                        restsOn.add(claim);
                    });
        }
        var perEntry = new EnumMap<Entry, Integer>(Entry.class);
        boolean ribbonTyped = false;
        for (var claim : paper.every(AwardClaim.class)) {
            if (claim.award().equals(MEDALS.get(theater))) {
                ribbonTyped = true;
                restsOn.add(claim);
                int stars = stars(claim);
                if (stars > 0) {
                    perEntry.merge(claim.entry(), stars, Integer::sum);
                }
            }
        }
        var typed = perEntry.values().stream().mapToInt(Integer::intValue).max();
        return new CampaignStars(theater, List.copyOf(named.values()), typed, ribbonTyped, List.copyOf(restsOn));
    }

    private static int stars(AwardClaim claim) {
        int stars = 0;
        for (DeviceCount worn : claim.devices()) {
            stars += switch (worn.device()) {
                case BRONZE_SERVICE_STAR, STAR_UNSPECIFIED -> worn.count();
                case SILVER_SERVICE_STAR -> 5 * worn.count();
                default -> 0;
            };
        }
        return stars;
    }

    private static Map<Theater, String> medals() {
        var medals = new EnumMap<Theater, String>(Theater.class);
        medals.put(Theater.AMERICAN, "american-campaign-medal");
        medals.put(Theater.EAME, "eame-campaign-medal");
        medals.put(Theater.ASIATIC_PACIFIC, "asiatic-pacific-campaign-medal");
        return medals;
    }
}
