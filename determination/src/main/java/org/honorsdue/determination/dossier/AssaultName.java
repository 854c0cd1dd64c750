package org.honorsdue.determination.dossier;

import org.honorsdue.reference.Reference;
import org.honorsdue.reference.history.AssaultLanding;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.service.fact.Assault;

/** What an assault is called: facts may name its campaign by the id of the table, which no reader should meet. */
public final class AssaultName {
    private AssaultName() {}

    /** The place where the day fits one landing of the campaign, else the campaign's name, else what was typed. */
    public static String of(Assault assault, Reference reference) {
        var campaign = reference.campaigns().stream()
                .filter(known ->
                        known.id().equals(assault.campaign()) || known.name().equalsIgnoreCase(assault.campaign()))
                .findFirst();
        if (campaign.isEmpty()) {
            return assault.campaign();
        }
        var places = reference.assaults().stream()
                .filter(landing -> landing.campaign().equals(campaign.get().id()) && onTheDay(assault, landing))
                .map(AssaultLanding::place)
                .distinct()
                .toList();
        return places.size() == 1 ? places.get(0) : campaign.map(Campaign::name).orElseThrow();
    }

    private static boolean onTheDay(Assault assault, AssaultLanding landing) {
        return assault.date()
                .map(date -> !date.earliest().isAfter(landing.dates().last())
                        && !date.latest().isBefore(landing.dates().first()))
                .orElse(false);
    }
}
