package org.honorsdue.determination.award;

import java.util.List;
import java.util.Locale;
import org.honorsdue.determination.dossier.Abroad;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.reference.Theater;
import org.honorsdue.service.fact.ServiceTotal;

/**
 * The three campaign medals. Authority: 32 CFR 578.48 (2006 revision) for the European-African-Middle Eastern medal,
 * which refers to the conditions of the Asiatic-Pacific section; EO 9265 and EO 9706 for all three.
 *
 * <p>A destination on the paper is taken as a permanent assignment, which has no minimum of days. A campaign named on
 * the paper shows service in its theatre. A ribbon alone, with no dates of overseas service shown, makes the medal
 * presumed; a ribbon against dates that show only another theatre leaves it open.
 */
final class TheaterMedals {
    static final String AMERICAN = "american-campaign-medal";
    static final String EUROPEAN = "eame-campaign-medal";
    static final String PACIFIC = "asiatic-pacific-campaign-medal";

    private static final int YEAR = 365;
    private static final int HALF_A_YEAR = 183;

    private static final String CERTIFICATE =
            "A casefile has no kind of evidence for the certificate; a campaign named on the paper is taken as service in the theatre.";

    private static final String OTHER_WAY_TO_A_STAR =
            "Another way to the star of a campaign that the paper names; the paper does not say which way he had it.";

    private TheaterMedals() {}

    static List<Rule> rules(Statutes law) {
        return List.of(
                american(law), overseas(law, EUROPEAN, Theater.EAME), overseas(law, PACIFIC, Theater.ASIATIC_PACIFIC));
    }

    private static Rule overseas(Statutes law, String award, Theater theater) {
        var draft = law.award(award);
        var stars = new CampaignStars(theater, award, draft);
        return draft.route(
                        "Permanent assignment",
                        draft.clause("assigned-in-theater", soldier -> assigned(soldier, theater, award)))
                .route(
                        "Passenger or temporary duty",
                        draft.clause("passenger-or-temporary-duty", soldier -> thirtyDays(soldier, theater)))
                .bar("late-arrival", soldier -> tooLate(soldier, theater))
                .told("window", "Asked together with the assignment and with the days of temporary duty.")
                .told("combat", CERTIFICATE)
                .device("campaign-star")
                .told("star-by-decoration", OTHER_WAY_TO_A_STAR)
                .told("star-by-certificate", OTHER_WAY_TO_A_STAR)
                .told("star-by-normal-post", OTHER_WAY_TO_A_STAR)
                .told("star-by-vessel", OTHER_WAY_TO_A_STAR)
                .told("star-by-evasion", OTHER_WAY_TO_A_STAR)
                .device("no-star-in-captivity")
                .told("unit-lists", "Asked for each campaign as the unit's credit and his presence.")
                .device("silver-star")
                .device("arrowhead")
                .device("one-arrowhead")
                .counted(stars::count)
                .pointedAtWhen(soldier -> pointsAbroad(soldier, theater))
                .expectedWhen(soldier -> tooLate(soldier, theater).isMet())
                .rule();
    }

    private static Rule american(Statutes law) {
        var draft = law.award(AMERICAN);
        var stars = new CampaignStars(Theater.AMERICAN, AMERICAN, draft);
        return draft.route(
                        "Assignment outside the United States",
                        draft.clause("assigned-outside-us", soldier -> assigned(soldier, Theater.AMERICAN, AMERICAN)))
                .route(
                        "Passenger or temporary duty",
                        draft.clause("passenger-or-temporary-duty", soldier -> thirtyDays(soldier, Theater.AMERICAN)))
                .route(
                        "A year at home",
                        draft.clause("year-at-home", TheaterMedals::yearAtHome),
                        draft.clause("home-time-adds-up", TheaterMedals::addedUp))
                .told("window", "Asked together with the assignment and with the days at home.")
                .told(
                        "vessel-crew",
                        "A casefile has no kind of evidence for a vessel's crew; a claim on the paper stays open.")
                .told(
                        "air-crew",
                        "A casefile has no kind of evidence for ocean flights; a claim on the paper stays open.")
                .told("combat", CERTIFICATE)
                .device("antisubmarine-star")
                .device("no-arrowhead")
                .counted(stars::count)
                .pointedAtWhen(
                        soldier -> !soldier.duties().isEmpty() && soldier.home().possible() >= YEAR
                                || pointsAbroad(soldier, Theater.AMERICAN))
                .expectedWhen(soldier -> soldier.home().possible() >= HALF_A_YEAR)
                .rule();
    }

    static Answer assigned(Dossier soldier, Theater theater, String award) {
        var window = soldier.history().window(theater);
        var best = Answer.no();
        for (var stay : soldier.abroad()) {
            if (!stay.mayBeIn(theater) || !stay.there().mayTouch(window.first(), window.last())) {
                continue;
            }
            boolean sure = stay.surelyIn(theater) && stay.there().surelyTouches(window.first(), window.last());
            if (sure && stay.kind() != Abroad.Kind.STATION) {
                return Answer.met(stay::inWords, stay.basis());
            }
            if (sure) {
                // Duty at a place may have been temporary; thirty days of it are enough either way.
                if (stay.there().sureDays(window.first(), window.last()) >= 30) {
                    return Answer.met(stay::inWords, stay.basis());
                }
                best = Answer.usually(
                        FactKind.STATION,
                        () -> "in %s on assignment and not on temporary duty".formatted(stay.destination()),
                        stay.basis());
            } else if (stay.surelyIn(theater)) {
                best = Answer.usually(
                        FactKind.OVERSEAS_DATES, () -> during(theater, window.first(), window.last()), stay.basis());
            } else if (!best.speaks()) {
                best = Answer.open(
                        FactKind.STATION,
                        () -> "in the %s when the paper says %s".formatted(name(theater), stay.destination()),
                        stay.basis());
            }
        }
        boolean elsewhere = !soldier.overseasUnknown();
        for (var claim : soldier.campaigns()) {
            var fought = soldier.history().campaign(claim.campaign());
            if (fought.isPresent() && fought.get().campaign().theater() == theater) {
                if (!elsewhere || best.isUnknown()) {
                    return Answer.met(() -> "in the campaign \"" + claim.asTyped() + "\"", claim.basis());
                }
                return Answer.open(
                        FactKind.OVERSEAS_DATES, () -> during(theater, window.first(), window.last()), claim.basis());
            }
        }
        if (best.isUnknown() && best.usual()) {
            return best;
        }
        var claim = soldier.claims(award).sure();
        if (claim.isPresent()) {
            if (elsewhere && !best.isUnknown() && wholeRecordShown(soldier)) {
                return Answer.notMet(
                        () -> "the ribbon is on the paper, but by its own dates he was never there",
                        claim.get().basis());
            }
            return elsewhere && !best.isUnknown()
                    ? Answer.open(
                            FactKind.OVERSEAS_DATES,
                            () -> during(theater, window.first(), window.last()),
                            claim.get().basis())
                    : Answer.usually(
                            FactKind.OVERSEAS_DATES,
                            () -> during(theater, window.first(), window.last()),
                            claim.get().basis());
        }
        if (best.speaks()) {
            return best;
        }
        if (elsewhere || !soldier.maybeOnDuty(window.first(), window.last()) || anotherTheaterNamed(soldier, theater)) {
            return Answer.no();
        }
        return Answer.open(FactKind.OVERSEAS_DATES, () -> during(theater, window.first(), window.last()));
    }

    /** Whether every stay abroad has its place and both its ends, so that a missing theatre is really missing. */
    private static boolean wholeRecordShown(Dossier soldier) {
        for (var stay : soldier.abroad()) {
            var days = stay.there();
            if (stay.theaters().size() != 1
                    || days.firstLatest() - days.firstEarliest() > 31
                    || days.lastLatest() - days.lastEarliest() > 31) {
                return false;
            }
        }
        return true;
    }

    /** The paper names another theatre by its ribbon or a campaign: the service overseas was there. */
    private static boolean anotherTheaterNamed(Dossier soldier, Theater theater) {
        for (var claim : soldier.campaigns()) {
            var fought = soldier.history().campaign(claim.campaign());
            if (fought.isPresent() && fought.get().campaign().theater() != theater) {
                return true;
            }
        }
        for (var other : List.of(EUROPEAN, PACIFIC)) {
            if (soldier.history().reference().theaters().stream()
                            .anyMatch(window -> window.medal().equals(other) && window.theater() != theater)
                    && soldier.claims(other).any()) {
                return true;
            }
        }
        return false;
    }

    private static String during(Theater theater, long first, long last) {
        return "in the %s between %s and %s".formatted(name(theater), InWords.day(first), InWords.day(last));
    }

    static String name(Theater theater) {
        return switch (theater) {
            case CONTINENTAL_US -> "continental United States";
            case AMERICAN -> "American Theater outside the United States";
            case EAME -> "European-African-Middle Eastern Theater";
            case ASIATIC_PACIFIC -> "Asiatic-Pacific Theater";
        };
    }

    /** Thirty days running at one place, or sixty in all, by stations known from evidence. */
    private static Answer thirtyDays(Dossier soldier, Theater theater) {
        var window = soldier.history().window(theater);
        long inAll = 0;
        for (var stay : soldier.abroad()) {
            if (stay.kind() == Abroad.Kind.STATION && stay.surelyIn(theater)) {
                long days = stay.there().sureDays(window.first(), window.last());
                inAll += days;
                if (days >= 30 || inAll >= 60) {
                    return Answer.met(stay::inWords, stay.basis());
                }
            }
        }
        return Answer.no();
    }

    private static Answer tooLate(Dossier soldier, Theater theater) {
        var window = soldier.history().window(theater);
        var late = Answer.no();
        for (var stay : soldier.abroad()) {
            if (!stay.mayBeIn(theater)) {
                continue;
            }
            if (stay.there().mayTouch(window.first(), window.last())) {
                return Answer.no();
            }
            if (stay.surelyIn(theater) && stay.there().firstEarliest() > window.last()) {
                late = Answer.met(stay::inWords, stay.basis());
            }
        }
        return late;
    }

    /** Foreign service is on the paper but not where, and nothing else names a theatre. */
    private static boolean pointsAbroad(Dossier soldier, Theater theater) {
        for (var stay : soldier.abroad()) {
            if (stay.theaters().contains(theater)) {
                return true;
            }
        }
        if (!soldier.overseasUnknown() || !soldier.campaigns().isEmpty()) {
            return false;
        }
        boolean foreign = false;
        for (var total : soldier.facts().every(ServiceTotal.class)) {
            foreign |= total.kind() == ServiceTotal.Kind.FOREIGN && total.years() + total.months() + total.days() > 0;
        }
        return foreign
                && !soldier.claims(AMERICAN).any()
                && !soldier.claims(EUROPEAN).any()
                && !soldier.claims(PACIFIC).any();
    }

    private static Answer yearAtHome(Dossier soldier) {
        var home = soldier.home();
        if (home.sure() >= YEAR) {
            return Answer.met(
                    () -> String.format(Locale.ROOT, "%d days inside the United States", home.sure()), home.rests());
        }
        if (home.possible() < YEAR && !soldier.duties().isEmpty()) {
            return Answer.notMet(
                    () -> String.format(Locale.ROOT, "%d days inside the United States at most", home.possible()),
                    home.rests());
        }
        var claim = soldier.claims(AMERICAN).sure();
        return claim.isPresent()
                ? Answer.usually(
                        FactKind.CONTINENTAL_TIME,
                        () -> "for a year in all between 7 December 1941 and 2 March 1946",
                        claim.get().basis())
                : Answer.open(
                        FactKind.CONTINENTAL_TIME,
                        () -> "for a year in all between 7 December 1941 and 2 March 1946",
                        home.rests());
    }

    /** The count above is already made so; the clause stands in the proof for the reader. */
    private static Answer addedUp(Dossier soldier) {
        return soldier.home().sure() >= YEAR
                ? Answer.met(() -> "counted so", soldier.home().rests())
                : Answer.met(() -> "to be counted so");
    }
}
