package org.honorsdue.determination.unit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.dossier.Abroad;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.reference.DateSpan;
import org.honorsdue.reference.history.Campaign;
import org.honorsdue.reference.unit.Held;
import org.honorsdue.reference.unit.UnitAssault;
import org.honorsdue.reference.unit.UnitAward;
import org.honorsdue.reference.unit.UnitHistory;
import org.honorsdue.reference.unit.UnitPart;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.CampaignClaim;
import org.honorsdue.service.paper.Entry;

/**
 * Whether he was with the unit when it earned what it holds.
 *
 * <p>Dates of the assignment decide where they are given. Without them his days overseas can rule it out; the campaign
 * of the action named on the paper, or days overseas that cover it where no campaigns were shown, make it the usual
 * case; everything else is open. Common practice of those who read these papers, no source: the clerk took the
 * campaigns from the soldier's own record, so a campaign left out means he joined later.
 */
final class Presence {
    private Presence() {}

    static Answer inCampaign(Dossier soldier, Stint stint, Campaign campaign) {
        var fought = soldier.history().campaign(campaign.id());
        var days = fought.map(known -> known.daysFor(soldier.airman(), soldier.armKnown()));
        long first =
                days.map(span -> span.first()).orElse(campaign.ground().first().toEpochDay());
        long last =
                days.map(span -> span.last()).orElse(campaign.ground().last().toEpochDay());
        return during(soldier, stint, first, last, campaign.name(), Optional.of(campaign.id()));
    }

    static Answer inAction(Dossier soldier, Stint stint, Held<UnitAward> held, UnitHistory history) {
        UnitAward award = held.row();
        String action = held.holder().name() + ": " + award.action()
                + dated(award.when().words());
        Optional<Answer> absent = absent(soldier, stint, award.when().widest(), action);
        if (absent.isPresent()) {
            return absent.orElseThrow();
        }
        if (held.reach() == Held.Reach.A_PART) {
            String part = award.parts().isEmpty() || award.parts().get(0).id().equals("elements")
                    ? "the part of it that the order names"
                    : String.join(
                            " or ", award.parts().stream().map(UnitPart::text).toList());
            return Answer.open(
                    FactKind.UNIT_PRESENCE,
                    () -> "%s, %s".formatted(part, action),
                    stint.assignment().basis());
        }
        Optional<DateSpan> days = award.when().widest();
        if (days.isEmpty()) {
            return Answer.open(
                    FactKind.UNIT_PRESENCE,
                    () -> action + ", the days of which our tables do not have",
                    stint.assignment().basis());
        }
        if (needsBothEnds(award)) {
            return throughout(soldier, stint, days.orElseThrow(), action, history);
        }
        return among(soldier, stint, days.orElseThrow(), action);
    }

    /** A fourragere is kept for good only by those in both cited actions, the first and the last day of its row. */
    private static boolean needsBothEnds(UnitAward award) {
        return award.award() == UnitAward.Kind.BELGIAN_FOURRAGERE || award.award() == UnitAward.Kind.FRENCH_FOURRAGERE;
    }

    private static Answer throughout(Dossier soldier, Stint stint, DateSpan days, String action, UnitHistory history) {
        long first = days.first().toEpochDay();
        long last = days.last().toEpochDay();
        if (stint.surelyCovers(first, last)) {
            return Answer.met(
                    () -> "with the unit throughout: " + action,
                    stint.assignment().basis());
        }
        Answer begun = during(soldier, stint, first, first, action, campaignOn(soldier, stint, days.first(), history));
        Answer ended = during(soldier, stint, last, last, action, campaignOn(soldier, stint, days.last(), history));
        if (begun.isNotMet() || ended.isNotMet()) {
            return begun.isNotMet() ? begun : ended;
        }
        return begun.usual() && ended.usual()
                ? Answer.usually(
                        FactKind.UNIT_PRESENCE, () -> "the unit in both cited actions: " + action, rests(stint))
                : Answer.open(FactKind.UNIT_PRESENCE, () -> "the unit in both cited actions: " + action, rests(stint));
    }

    private static List<Basis> rests(Stint stint) {
        return List.of(stint.assignment().basis());
    }

    private static Optional<String> campaignOn(Dossier soldier, Stint stint, LocalDate day, UnitHistory history) {
        return soldier.campaigns().stream()
                .map(CampaignClaim::campaign)
                .filter(id -> history.campaigns(stint.id()).stream()
                        .anyMatch(held -> held.row().campaign().id().equals(id)
                                && held.row().campaign().ground().contains(day)))
                .findFirst();
    }

    static Answer inAssault(Dossier soldier, Stint stint, Held<UnitAssault> held) {
        UnitAssault assault = held.row();
        String landing = "%s, %s%s"
                .formatted(
                        held.holder().name(),
                        assault.place(),
                        dated(assault.when().words()));
        Optional<Answer> absent = absent(soldier, stint, assault.when().widest(), landing);
        if (absent.isPresent()) {
            return absent.orElseThrow();
        }
        if (held.reach() == Held.Reach.A_PART || assault.reach() == UnitAssault.Reach.PART) {
            return Answer.open(
                    FactKind.ASSAULT,
                    () -> landing + ", with the part that the order names",
                    stint.assignment().basis());
        }
        return assault.when()
                .widest()
                .map(days -> during(
                        soldier,
                        stint,
                        days.first().toEpochDay(),
                        days.last().toEpochDay(),
                        landing,
                        Optional.of(assault.campaign())))
                .orElseGet(() -> Answer.open(
                        FactKind.ASSAULT, () -> landing, stint.assignment().basis()));
    }

    /** That he was elsewhere all the while, which settles it whichever part the order names. */
    private static Optional<Answer> absent(Dossier soldier, Stint stint, Optional<DateSpan> days, String what) {
        return days.map(span -> during(
                        soldier, stint, span.first().toEpochDay(), span.last().toEpochDay(), what, Optional.empty()))
                .filter(Answer::isNotMet);
    }

    /** Whether he was there on some day of the span; the campaign is found by the days. */
    static Answer among(Dossier soldier, Stint stint, DateSpan days, String what) {
        Optional<String> campaign = soldier.campaigns().stream()
                .map(CampaignClaim::campaign)
                .filter(id -> soldier.history()
                        .campaign(id)
                        .map(fought -> fought.campaign().ground().overlaps(days))
                        .orElse(false))
                .findFirst();
        return during(soldier, stint, days.first().toEpochDay(), days.last().toEpochDay(), what, campaign);
    }

    private static Answer during(
            Dossier soldier, Stint stint, long first, long last, String what, Optional<String> campaign) {
        Basis unit = stint.assignment().basis();
        String with = stint.assignment().designation() + " in " + what;
        if (stint.dated()) {
            if (!stint.mayTouch(first, last)) {
                return Answer.notMet(
                        () -> "he was with %s at another time"
                                .formatted(stint.assignment().designation()),
                        unit);
            }
            if (stint.surelyTouches(first, last)) {
                return Answer.met(() -> "with " + with, unit);
            }
        }
        var overseas = overseas(soldier, first, last);
        if (overseas.isEmpty() && !soldier.overseasUnknown()) {
            return Answer.notMet(
                    () -> "he was not overseas " + span(first, last),
                    soldier.abroad().stream().map(Abroad::basis).toList());
        }
        var rests = new ArrayList<Basis>();
        rests.add(unit);
        overseas.forEach(stay -> rests.add(stay.basis()));
        var named = soldier.campaigns().stream()
                .filter(claim -> campaign.map(claim.campaign()::equals).orElse(false))
                .findFirst();
        if (named.isPresent()) {
            rests.add(named.orElseThrow().basis());
            return Answer.usually(FactKind.UNIT_PRESENCE, () -> with, rests);
        }
        boolean campaignsShown = soldier.facts().supplied(Entry.BATTLES_AND_CAMPAIGNS)
                || !soldier.campaigns().isEmpty();
        boolean surely = overseas.stream().anyMatch(stay -> stay.there().surelyTouches(first, last));
        return surely && !campaignsShown
                ? Answer.usually(FactKind.UNIT_PRESENCE, () -> with, rests)
                : Answer.open(FactKind.UNIT_PRESENCE, () -> with, rests);
    }

    private static List<Abroad> overseas(Dossier soldier, long first, long last) {
        return soldier.abroad().stream()
                .filter(stay -> stay.kind() != Abroad.Kind.CAPTIVITY)
                .filter(stay -> stay.there().mayTouch(first, last))
                .toList();
    }

    private static String span(long first, long last) {
        return first == last
                ? "on " + InWords.day(first)
                : "between %s and %s".formatted(InWords.day(first), InWords.day(last));
    }

    private static String dated(String when) {
        return when.isEmpty() ? "" : ", " + when;
    }
}
