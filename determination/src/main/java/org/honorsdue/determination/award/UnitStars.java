package org.honorsdue.determination.award;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.History;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.determination.unit.SoldierUnits;
import org.honorsdue.determination.unit.UnitClaim;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.reference.unit.UnitAssault;
import org.honorsdue.reference.unit.UnitHistory.Credited;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.paper.Entry;

/**
 * Stars and landings that follow from the credit of his units. Authority: 32 CFR 578.48(c)(1), 2006 revision (with the
 * unit while it was in combat); the list of the unit is that of DA Pam 672-1, here in the tables of units.
 *
 * <p>A list that was read counts where the campaigns of the paper were not shown and his days overseas cover it; the
 * ground stays unknown and a need says what would show his presence. Beside campaigns typed on the paper, or from a list
 * known from memory, it is a star to ask for and not one to wear.
 */
final class UnitStars {
    private UnitStars() {}

    /** The list behind a star that is still to be shown; stars from one list are asked for together. */
    private record Source(String unit, String words, boolean fromMemory) {}

    /**
     * Adds the stars of this theatre that his units' lists give him.
     *
     * @param names campaigns counted so far, to which those that count are added in the order of the war
     * @return whether any was added
     */
    static boolean add(Dossier soldier, Theater theater, LawClause star, List<String> names, Tally tally) {
        var units = SoldierUnits.of(soldier);
        if (!units.any()) {
            return false;
        }
        boolean added = false;
        boolean campaignsShown = soldier.facts().supplied(Entry.BATTLES_AND_CAMPAIGNS)
                || !soldier.campaigns().isEmpty();
        var open = new LinkedHashMap<Source, List<String>>();
        for (UnitClaim<Credited> claim : units.campaigns(theater)) {
            String name = claim.held().row().campaign().name();
            boolean named = soldier.campaigns().stream()
                    .anyMatch(typed -> typed.campaign()
                            .equals(claim.held().row().campaign().id()));
            if (named || claim.present().isNotMet() || names.contains(name)) {
                continue;
            }
            if (claim.counts() && (claim.present().isMet() || !campaignsShown)) {
                names.add(name);
                added = true;
                tally.because(star, claim.present());
            }
            if (!claim.present().isMet() || claim.fromMemory()) {
                var source = new Source(claim.held().holder().name(), claim.source(), claim.fromMemory());
                open.computeIfAbsent(source, each -> new ArrayList<>()).add(name);
            }
        }
        open.forEach((source, campaigns) -> tally.further(
                source.fromMemory() ? FactKind.UNIT_CREDIT : FactKind.UNIT_PRESENCE,
                () -> "%s in %s (%s)".formatted(source.unit(), String.join(", ", campaigns), source.words())));
        if (added) {
            names.sort(Comparator.comparingInt(name -> order(soldier, name)));
            tally.caution(
                    () ->
                            "Stars counted from the unit's list of campaigns hold only if he was with it then; the unit on a separation paper is often only the one he came home with.");
        }
        contradiction(soldier, theater, units, tally);
        return added;
    }

    private static int order(Dossier soldier, String name) {
        return soldier.history().reference().campaigns().stream()
                .filter(campaign -> campaign.name().equals(name))
                .findFirst()
                .flatMap(campaign -> soldier.history().campaign(campaign.id()))
                .map(History.Fought::order)
                .orElse(Integer.MAX_VALUE);
    }

    /** Campaigns on the paper that his unit does not have: he earned them elsewhere, or the entry is wrong. */
    private static void contradiction(Dossier soldier, Theater theater, SoldierUnits units, Tally tally) {
        List<CampaignClaim> elsewhere = units.namedButNotOfHisUnits().stream()
                .filter(claim -> soldier.history()
                        .campaign(claim.campaign())
                        .map(fought -> fought.campaign().theater() == theater)
                        .orElse(false))
                .toList();
        if (elsewhere.isEmpty()) {
            return;
        }
        tally.caution(() -> {
            var fit = units.divisionsThatFit().stream().map(Unit::name).toList();
            return "%s: not on the list of %s as our tables have it; he may have earned it with another unit.%s"
                    .formatted(
                            String.join(
                                    ", ",
                                    elsewhere.stream()
                                            .map(CampaignClaim::asTyped)
                                            .toList()),
                            units.stints().get(0).unit().name(),
                            fit.isEmpty()
                                    ? ""
                                    : " Divisions with all campaigns named: " + String.join(", ", fit) + ".");
        });
    }

    /** Landings and jumps of his units: told, and asked for; the order names units and hours and was not seen. */
    static void landings(Dossier soldier, Theater theater, boolean proven, Tally tally) {
        if (proven) {
            return;
        }
        for (UnitClaim<UnitAssault> claim : SoldierUnits.of(soldier).assaults(theater)) {
            var assault = claim.held().row();
            if (claim.present().isNotMet() || assault.reach() == UnitAssault.Reach.REFUSED) {
                continue;
            }
            tally.further(
                    FactKind.ASSAULT,
                    () -> "%s at %s%s (%s)"
                            .formatted(
                                    claim.held().holder().name(),
                                    assault.place(),
                                    assault.reach() == UnitAssault.Reach.DISPUTED ? ", a disputed credit" : "",
                                    claim.source()));
        }
    }
}
