package org.honorsdue.determination.award;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.honorsdue.determination.dossier.Abroad;
import org.honorsdue.determination.dossier.Claims;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.History;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.AssaultLanding;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.paper.Entry;
import org.jspecify.annotations.Nullable;

/**
 * What is worn on a theatre ribbon: a bronze service star for each campaign, one silver for five, one arrowhead.
 * Authority: 32 CFR 578.48(c) and (d), 2006 revision.
 *
 * <p>A campaign named on the paper is the paper's record of the unit's credit and the man's presence; it earns a star
 * unless his dates overseas show that he was not in the theatre while it ran, or was a prisoner all the while. The stars
 * follow the campaigns and not the number typed on the ribbon (docket BC-2002-00523). The credits of a whole theatre
 * (antisubmarine, ground combat, air combat) earn a star in the American Theater only; published lists differ, so
 * elsewhere they are told and not counted.
 */
final class CampaignStars {
    /** Words for parachute and glider units as clerks type them: common practice, no source. */
    private static final Pattern AIRBORNE = Pattern.compile("\\b(prcht|para|pir|gli|gir|a\\s?/?\\s?b|abn|airborne)");

    private final Theater theater;
    private final String award;
    private final LawClause star;
    private final LawClause silver;
    private final LawClause arrowhead;
    private final LawClause oneArrowhead;
    private final LawClause captivity;

    CampaignStars(Theater theater, String award, Statutes.Draft draft) {
        this.theater = theater;
        this.award = award;
        boolean american = theater == Theater.AMERICAN;
        star = draft.law(american ? "antisubmarine-star" : "campaign-star");
        silver = american ? star : draft.law("silver-star");
        arrowhead = draft.law(american ? "no-arrowhead" : "arrowhead");
        oneArrowhead = american ? arrowhead : draft.law("one-arrowhead");
        captivity = american ? star : draft.law("no-star-in-captivity");
    }

    void count(Dossier soldier, Tally tally) {
        var claims = soldier.claims(award);
        int typed = claims.devices(Device.BRONZE_SERVICE_STAR)
                + 5 * claims.devices(Device.SILVER_SERVICE_STAR)
                + claims.devices(Device.STAR_UNSPECIFIED);
        var names = new ArrayList<String>();
        boolean named = false;
        var fought = fought(soldier);
        int sure =
                (int) fought.stream().filter(each -> !doubtful(soldier, each)).count();
        for (var each : fought) {
            named = true;
            // A doubtful campaign is borne out by a star that no other campaign accounts for.
            boolean borneOut = typed > sure && claims.sure().isPresent();
            if (earns(soldier, each, borneOut, tally)) {
                names.add(each.campaign().name());
                sure += doubtful(soldier, each) ? 1 : 0;
            }
        }
        named |= UnitStars.add(soldier, theater, star, names, tally);
        if (!named && typed > 0 && !soldier.facts().supplied(Entry.BATTLES_AND_CAMPAIGNS)) {
            onTheRibbonAlone(typed, claims, tally);
        } else {
            stars(names, tally);
            if (claims.any() && typed < names.size()) {
                tally.shortOnPaper();
            }
            if (typed > names.size()) {
                int due = names.size();
                tally.caution(
                        () -> "The paper types %d on the ribbon; the campaigns bear out %d.".formatted(typed, due));
            }
        }
        if (claims.devices(Device.BRONZE_OAK_LEAF_CLUSTER) > 0) {
            tally.caution(() -> "An oak leaf cluster on a theatre ribbon is a clerk's slip for a service star.");
        }
        arrowhead(soldier, claims, tally);
    }

    /** Campaigns of this theatre that the paper names or a unit's order credits, in the order of the table. */
    private List<History.Fought> fought(Dossier soldier) {
        var found = new ArrayList<History.Fought>();
        for (var claim : soldier.campaigns()) {
            soldier.history()
                    .campaign(claim.campaign())
                    .filter(fought -> fought.campaign().theater() == theater)
                    .ifPresent(found::add);
        }
        for (var campaign : soldier.anyCredits() ? soldier.history().reference().campaigns() : List.<Campaign>of()) {
            if (campaign.theater() == theater && !soldier.credits(campaign.id()).isEmpty()) {
                soldier.history()
                        .campaign(campaign.id())
                        .filter(fought -> !found.contains(fought))
                        .ifPresent(found::add);
            }
        }
        found.sort(Comparator.comparingInt(History.Fought::order));
        return found;
    }

    private boolean earns(Dossier soldier, History.Fought fought, boolean borneOut, Tally tally) {
        var campaign = fought.campaign();
        if (campaign.blanket() && theater != Theater.AMERICAN) {
            tally.caution(() ->
                    "%s is a credit of the whole theatre; lists differ on whether it earns a star, and none is counted."
                            .formatted(campaign.name()));
            return false;
        }
        var days = fought.daysFor(soldier.airman(), soldier.armKnown());
        boolean may = soldier.overseasUnknown() || theater == Theater.AMERICAN;
        Abroad there = null;
        for (var stay : soldier.abroad()) {
            if (stay.mayBeIn(theater) && stay.there().mayTouch(days.first(), days.last())) {
                may = true;
                if (there == null && stay.kind() != Abroad.Kind.CAPTIVITY) {
                    there = stay;
                }
            }
        }
        var claim = soldier.campaigns().stream()
                .filter(named -> named.campaign().equals(campaign.id()))
                .findFirst();
        if (!may) {
            tally.because(
                    star,
                    Answer.notMet(
                            () -> "%s: he was not in the theatre while it ran".formatted(campaign.name()),
                            claim.map(named -> List.of(named.basis())).orElse(List.of())));
            tally.caution(
                    () -> "The paper names %s, but by its dates he was not in the theatre then: no star is counted."
                            .formatted(campaign.name()));
            return false;
        }
        if (captiveThroughout(soldier, days, there)) {
            tally.because(captivity, Answer.notMet(() -> campaign.name() + ": he was a prisoner all the while"));
            return false;
        }
        if (claim.isPresent()) {
            var named = claim.get();
            var stay = there;
            if (named.basis().certainty() == Basis.Certainty.DOUBTFUL && borneOut) {
                tally.because(
                        star,
                        Answer.met(
                                () -> "%s, which the star typed on the ribbon bears out".formatted(campaign.name()),
                                soldier.claims(award).bases()));
                return true;
            }
            tally.because(
                    star,
                    stay == null
                            ? Answer.met(() -> campaign.name() + ", named on the paper", named.basis())
                            : Answer.met(
                                    () -> "%s, named on the paper; %s".formatted(campaign.name(), stay.inWords()),
                                    named.basis(),
                                    stay.basis()));
            return named.basis().certainty() != Basis.Certainty.DOUBTFUL || doubtful(campaign.name(), tally);
        }
        for (var credit : soldier.credits(campaign.id())) {
            var member = Membership.during(soldier, credit);
            if (member.isMet()) {
                tally.because(star, member);
                return true;
            }
        }
        tally.further(
                FactKind.UNIT_PRESENCE,
                () -> soldier.credits(campaign.id()).get(0).designation() + " during " + campaign.name()
                        + ", which would add a star");
        return false;
    }

    private static boolean doubtful(Dossier soldier, History.Fought fought) {
        return soldier.campaigns().stream()
                .anyMatch(claim -> claim.campaign().equals(fought.campaign().id())
                        && claim.basis().certainty() == Basis.Certainty.DOUBTFUL);
    }

    private static boolean doubtful(String campaign, Tally tally) {
        tally.further(FactKind.CLEAR_READING, () -> campaign + ", which would add a star");
        return false;
    }

    private static boolean captiveThroughout(Dossier soldier, History.Days days, @Nullable Abroad there) {
        for (var stay : soldier.abroad()) {
            if (stay.kind() != Abroad.Kind.CAPTIVITY) {
                continue;
            }
            long first = there == null
                    ? days.first()
                    : Math.max(days.first(), there.there().firstEarliest());
            long last = there == null
                    ? days.last()
                    : Math.min(days.last(), there.there().lastLatest());
            if (stay.there().firstLatest() < first && stay.there().lastEarliest() >= last) {
                return true;
            }
        }
        return false;
    }

    private void stars(List<String> names, Tally tally) {
        int fives = names.size() / 5;
        tally.worn(Device.SILVER_SERVICE_STAR, fives, names.subList(0, fives * 5));
        tally.worn(Device.BRONZE_SERVICE_STAR, names.size() - fives * 5, names.subList(fives * 5, names.size()));
        if (fives > 0) {
            tally.because(silver, Answer.met(() -> String.format(Locale.ROOT, "%d campaigns", names.size())));
        }
    }

    private void onTheRibbonAlone(int typed, Claims claims, Tally tally) {
        tally.worn(Device.SILVER_SERVICE_STAR, typed / 5, List.of());
        tally.worn(Device.BRONZE_SERVICE_STAR, typed % 5, List.of());
        tally.because(star, Answer.usually(FactKind.UNIT_CREDIT, () -> "the campaigns", claims.bases()));
        tally.further(FactKind.UNIT_CREDIT, () -> "the campaigns for which %d stars are typed".formatted(typed));
        tally.caution(
                () -> "The stars are the number typed on the ribbon; the entry with the campaigns was not shown.");
    }

    private void arrowhead(Dossier soldier, Claims claims, Tally tally) {
        boolean typed = claims.devices(Device.ARROWHEAD) > 0;
        var seen = soldier.every(Assault.class);
        if (theater == Theater.AMERICAN) {
            if (typed) {
                tally.because(arrowhead, Answer.notMet(() -> "the paper types one; none is worn", claims.bases()));
            }
            return;
        }
        int proven = 0;
        var landings = new ArrayList<String>();
        for (var assault : seen) {
            var answer = credited(soldier, assault);
            if (!answer.speaks()) {
                continue;
            }
            tally.because(arrowhead, answer);
            if (answer.isMet()) {
                proven++;
                landings.add(soldier.history().nameOf(assault));
            } else if (answer.isUnknown()) {
                tally.further(
                        FactKind.ASSAULT,
                        () -> "a credited assault: " + soldier.history().nameOf(assault));
            }
        }
        boolean borneOut = typed && proven == 0 && possible(soldier);
        if (borneOut) {
            tally.because(arrowhead, Answer.met(() -> "the paper types it on the ribbon", claims.bases()));
            tally.caution(
                    () -> "The arrowhead follows the unit's listing for a landing or jump; the listing was not seen.");
        } else if (typed && proven == 0) {
            tally.because(
                    arrowhead,
                    Answer.open(
                            FactKind.ASSAULT, () -> "a landing or jump for which his unit was listed", claims.bases()));
            tally.further(
                    FactKind.ASSAULT,
                    () -> "a landing or jump for which his unit was listed, without which no arrowhead is worn");
            tally.caution(
                    () ->
                            "An arrowhead is typed, but no credited landing or jump fits his campaigns and dates: none is counted.");
        }
        UnitStars.landings(soldier, theater, proven > 0, tally);
        if (borneOut || proven > 0) {
            tally.worn(Device.ARROWHEAD, 1, landings);
        }
        if (proven > 1) {
            tally.because(oneArrowhead, Answer.met(() -> "more than one assault"));
        }
        if (proven > 0 && !typed && claims.any()) {
            tally.shortOnPaper();
        }
    }

    /** Whether a credited landing fits a campaign he is named for while he was there; jumps only for airborne men. */
    private static boolean possible(Dossier soldier) {
        boolean airborne = airborne(soldier);
        for (var landing : soldier.history().assaults()) {
            boolean amphibious = landing.means().toLowerCase(Locale.ROOT).contains("amphib");
            if (!landing.credited()
                    || !(amphibious || airborne)
                    || soldier.campaigns().stream()
                            .noneMatch(claim -> claim.campaign().equals(landing.campaign()))) {
                continue;
            }
            long first = landing.dates().first().toEpochDay();
            long last = landing.dates().last().toEpochDay();
            if (soldier.overseasUnknown()
                    || soldier.abroad().stream().anyMatch(stay -> stay.there().mayTouch(first, last))) {
                return true;
            }
        }
        return false;
    }

    private static boolean airborne(Dossier soldier) {
        if (soldier.claims("parachutist-badge").any()
                || soldier.claims("glider-badge").any()
                || soldier.specialty(MilitarySpecialty::airborne)) {
            return true;
        }
        return soldier.facts().every(Assignment.class).stream()
                .map(assignment -> assignment.designation().toLowerCase(Locale.ROOT))
                .anyMatch(words -> AIRBORNE.matcher(words).find());
    }

    /** Whether the assault in evidence is one for which the Army gave credit. */
    private Answer credited(Dossier soldier, Assault assault) {
        var campaign = soldier.history().reference().campaigns().stream()
                .filter(known ->
                        known.id().equals(assault.campaign()) || known.name().equalsIgnoreCase(assault.campaign()))
                .findFirst();
        if (campaign.isPresent() && campaign.get().theater() != theater) {
            return Answer.no();
        }
        if (campaign.isEmpty()) {
            return theater == Theater.EAME
                            && soldier.claims(TheaterMedals.PACIFIC).any()
                    ? Answer.no()
                    : Answer.open(FactKind.ASSAULT, () -> "a credited assault: " + assault.campaign(), assault.basis());
        }
        Answer refused = Answer.no();
        for (var landing : soldier.history().assaults()) {
            if (!landing.campaign().equals(campaign.get().id()) || !onTheDay(assault, landing)) {
                continue;
            }
            if (landing.credited()) {
                return assault.date().isPresent()
                        ? Answer.met(() -> landing.place() + ", " + landing.means(), assault.basis())
                        : Answer.met(
                                () -> "%s, %s (the day of his landing is not given)"
                                        .formatted(campaign.get().name(), landing.means()),
                                assault.basis());
            }
            refused = Answer.notMet(
                    () -> "%s: no assault credit was given%s"
                            .formatted(landing.place(), landing.note().isEmpty() ? "" : " (" + landing.note() + ")"),
                    assault.basis());
        }
        if (refused.speaks()) {
            return refused;
        }
        return Answer.open(
                FactKind.ASSAULT,
                () -> "a credited assault in " + campaign.get().name(),
                assault.basis());
    }

    private static boolean onTheDay(Assault assault, AssaultLanding landing) {
        return assault.date()
                .map(date -> !date.earliest().isAfter(landing.dates().last())
                        && !date.latest().isBefore(landing.dates().first()))
                .orElse(true);
    }
}
