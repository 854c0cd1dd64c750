package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.Duty;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.Tour;

/**
 * Good Conduct Medal. Enlisted men only; three years from 27 August 1940, or one year wholly inside 7 December 1941 to
 * 2 March 1946; recommended by the commander and announced in orders. Authority: 32 CFR 578.27 (2002 edition), EO 8809,
 * EO 9323.
 *
 * <p>Without an order or the paper's word it is at most presumed: with the time there, the ratings excellent and nothing
 * against him, the order is the one thing missing. When the ratings are not shown either, it stays open. A paper without
 * it can mean that the commander said no, and days lost are his to weigh, so lost time leaves it open too.
 */
final class GoodConductMedal {
    private static final String AWARD = "army-good-conduct-medal";
    private static final long THREE_YEAR_RULE = LocalDate.of(1940, 8, 27).toEpochDay();
    private static final long WAR_BEGAN = LocalDate.of(1941, 12, 7).toEpochDay();
    private static final long WAR_YEAR_ENDS = LocalDate.of(1946, 3, 2).toEpochDay();
    private static final int YEAR = 365;
    private static final int THREE_YEARS = 3 * 365;

    private GoodConductMedal() {}

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var clasp = draft.law("clasp");
        var second = draft.law("second-award-three-years");
        return draft.route(
                        "A year of war service",
                        draft.clause("enlisted", GoodConductMedal::enlisted),
                        draft.clause("war-year", GoodConductMedal::warYear),
                        draft.clause("character-excellent", GoodConductMedal::character),
                        draft.clause("no-conviction", GoodConductMedal::noConviction),
                        draft.clause("recommended-and-announced", GoodConductMedal::announced))
                .route(
                        "Three years",
                        draft.clause("enlisted", GoodConductMedal::enlisted),
                        draft.clause("three-years", GoodConductMedal::threeYears),
                        draft.clause("character-excellent", GoodConductMedal::character),
                        draft.clause("no-conviction", GoodConductMedal::noConviction),
                        draft.clause("recommended-and-announced", GoodConductMedal::announced))
                .route(
                        "Death in line of duty",
                        draft.clause("enlisted", GoodConductMedal::enlisted),
                        draft.clause("death-in-line-of-duty", GoodConductMedal::diedInLineOfDuty),
                        draft.clause("no-conviction", GoodConductMedal::noConviction),
                        draft.clause("recommended-and-announced", GoodConductMedal::announced))
                .route(
                        "Disability in line of duty",
                        draft.clause("enlisted", GoodConductMedal::enlisted),
                        draft.clause("disability-in-line-of-duty", GoodConductMedal::disabled),
                        draft.clause("character-excellent", GoodConductMedal::character),
                        draft.clause("no-conviction", GoodConductMedal::noConviction),
                        draft.clause("recommended-and-announced", GoodConductMedal::announced))
                .bar("lost-time", GoodConductMedal::lostTime)
                .told("officer-time", "Only enlisted time is counted.")
                .told("enlisted-time-before-commission", "Only enlisted time is counted, whatever rank he ended with.")
                .told("war-year-window", "The year is counted inside these dates only.")
                .told(
                        "continuous",
                        "Only unbroken enlisted time is counted; tours of two papers join if no day lies between them.")
                .told("efficiency-excellent", "Asked together with character: papers seldom show the two apart.")
                .device("clasp")
                .device("second-award-three-years")
                .counted((soldier, tally) -> count(soldier, tally, clasp, second))
                .pointedAtWhen(soldier -> soldier.duties().stream().anyMatch(Duty::enlisted)
                        && (!warYear(soldier).isNotMet()
                                || disabled(soldier).speaks()
                                || diedInLineOfDuty(soldier).speaks()))
                .expectedWhen(soldier -> true)
                .rule();
    }

    private static Answer enlisted(Dossier soldier) {
        Duty unsure = null;
        for (var duty : soldier.duties()) {
            if (duty.enlisted()) {
                return Answer.met(() -> "served as an enlisted man", duty.basis());
            }
            if (duty.mayBeEnlisted()) {
                unsure = duty;
            }
        }
        if (unsure != null || soldier.duties().isEmpty()) {
            return Answer.open(FactKind.GRADE, () -> "an enlisted man");
        }
        // An officer may have risen from the ranks on a paper nobody has shown.
        boolean claimed = soldier.claims(AWARD).any();
        var bases = soldier.duties().stream().map(Duty::basis).toList();
        return claimed
                ? Answer.usually(FactKind.GRADE, () -> "an enlisted man before his commission", bases)
                : officerSinceEntry(soldier)
                        ? Answer.notMet(() -> "the paper shows service as an officer only", bases)
                        : Answer.open(FactKind.GRADE, () -> "an enlisted man before his commission", bases);
    }

    /** An officer's paper with nothing on it of earlier service. */
    private static boolean officerSinceEntry(Dossier soldier) {
        return soldier.duties().stream()
                .allMatch(duty ->
                        duty.category() == Tour.Category.OFFICER || duty.category() == Tour.Category.WARRANT_OFFICER);
    }

    /** The longest unbroken enlisted service inside the window, in days: at least, and at most. */
    private static long[] longest(Dossier soldier, long first, long last) {
        long sure = 0;
        long possible = 0;
        long run = 0;
        long reached = Long.MIN_VALUE;
        boolean priorUnknown = false;
        for (var duty : soldier.duties()) {
            if (!duty.mayBeEnlisted()) {
                priorUnknown = true;
                continue;
            }
            long from = Math.max(first, duty.days().firstLatest());
            long to = Math.min(last, duty.days().lastEarliest());
            if (to >= from) {
                run = from == reached + 1 ? run + to - from + 1 : to - from + 1;
                reached = to;
                sure = Math.max(sure, duty.enlisted() ? run : 0);
            }
            possible = Math.max(possible, Math.max(run, duty.days().possibleDays(first, last)));
        }
        if (soldier.duties().isEmpty() || priorUnknown) {
            possible = Long.MAX_VALUE;
        }
        return new long[] {sure, possible};
    }

    private static Answer warYear(Dossier soldier) {
        return time(
                soldier,
                WAR_BEGAN,
                WAR_YEAR_ENDS,
                YEAR,
                "a year of enlisted service between 7 December 1941 and 2 March 1946");
    }

    private static Answer threeYears(Dossier soldier) {
        return time(
                soldier,
                THREE_YEAR_RULE - THREE_YEARS,
                Long.MAX_VALUE / 2,
                THREE_YEARS,
                "three years of enlisted service");
    }

    private static Answer time(Dossier soldier, long first, long last, int needed, String what) {
        var days = longest(soldier, first, last);
        var bases = soldier.duties().stream().map(Duty::basis).toList();
        if (days[0] >= needed) {
            return Answer.met(() -> String.format(Locale.ROOT, "%d days", days[0]), bases);
        }
        return days[1] < needed
                ? Answer.notMet(() -> String.format(Locale.ROOT, "%d days at most", days[1]), bases)
                : Answer.open(FactKind.SERVICE_DATES, () -> "for " + what, bases);
    }

    private static Answer diedInLineOfDuty(Dossier soldier) {
        var death = soldier.death();
        if (death.isEmpty()) {
            return Answer.no();
        }
        return switch (death.get().manner()) {
            case KILLED_IN_ACTION, DIED_OF_WOUNDS, DIED_IN_CAPTIVITY, FINDING_OF_DEATH ->
                Answer.met(() -> "died in the fight or of it", death.get().basis());
            case NON_BATTLE, NOT_STATED ->
                Answer.open(FactKind.DEATH, () -> "in line of duty", death.get().basis());
        };
    }

    private static Answer disabled(Dossier soldier) {
        for (var reason : soldier.every(SeparationReason.class)) {
            String words = reason.reason().toLowerCase(Locale.ROOT);
            if (words.contains("disab")
                    || reason.authority()
                            .map(cited -> cited.contains("615-361"))
                            .orElse(false)) {
                return Answer.usually(
                        FactKind.SERVICE_DATES, () -> "until a disability incurred in line of duty", reason.basis());
            }
        }
        return Answer.no();
    }

    private static Answer character(Dossier soldier) {
        var claimed = soldier.claims(AWARD).sure();
        if (claimed.isPresent()) {
            return Answer.met(
                    () -> "the award on the paper was not given without",
                    claimed.get().basis());
        }
        if (!soldier.orders(AWARD).isEmpty()) {
            return Answer.met(
                    () -> "the order was not given without",
                    soldier.orders(AWARD).get(0).basis());
        }
        Basis lower = null;
        for (var conduct : soldier.every(Conduct.class)) {
            var rating = conduct.character().or(conduct::efficiency).map(word -> word.toLowerCase(Locale.ROOT));
            if (rating.isEmpty()) {
                continue;
            }
            if (rating.get().contains("excellent") || rating.get().contains("superior")) {
                return Answer.met(() -> "rated " + rating.get(), conduct.basis());
            }
            lower = conduct.basis();
        }
        if (lower != null) {
            var basis = lower;
            return Answer.notMet(() -> "a lower rating is on record", basis);
        }
        return Answer.open(FactKind.CONDUCT, () -> "excellent");
    }

    private static Answer noConviction(Dossier soldier) {
        for (var conduct : soldier.every(Conduct.class)) {
            if (conduct.convictions().isPresent() && conduct.convictions().getAsInt() > 0) {
                return Answer.open(FactKind.COURT_MARTIAL, () -> "in the qualifying time", conduct.basis());
            }
        }
        return Answer.met(() -> "none is on record here");
    }

    private static Answer lostTime(Dossier soldier) {
        for (var conduct : soldier.every(Conduct.class)) {
            if (conduct.lostDays().isPresent() && conduct.lostDays().getAsInt() > 0) {
                return Answer.open(
                        FactKind.LOST_TIME,
                        () -> "in the qualifying time (%d days are on the paper)"
                                .formatted(conduct.lostDays().getAsInt()),
                        conduct.basis());
            }
        }
        return Answer.no();
    }

    private static Answer announced(Dossier soldier) {
        var orders = soldier.orders(AWARD);
        if (!orders.isEmpty()) {
            return Answer.met(() -> "the order was seen", orders.get(0).basis());
        }
        var claims = soldier.claims(AWARD);
        var sure = claims.sure();
        if (sure.isPresent()) {
            return Answer.met(() -> "the paper shows it", sure.get().basis());
        }
        return Answer.usually(FactKind.AWARD_ORDER, () -> "the Good Conduct Medal", claims.bases());
    }

    private static void count(Dossier soldier, Tally tally, LawClause clasp, LawClause second) {
        var claims = soldier.claims(AWARD);
        int loops = claims.devices(Device.GOOD_CONDUCT_CLASP);
        int awards = Math.max(1, Math.max(Math.max(claims.awards(), loops), OrderedAward.ordersSeen(soldier, AWARD)));
        tally.count(awards);
        if (awards > 1) {
            tally.worn(Device.GOOD_CONDUCT_CLASP, awards, List.of());
            tally.because(clasp, Answer.met(() -> "%d awards: %d loops".formatted(awards, awards)));
            long sure = longest(soldier, THREE_YEAR_RULE - THREE_YEARS, Long.MAX_VALUE / 2)[0];
            if (sure < YEAR + THREE_YEARS) {
                tally.because(
                        second,
                        Answer.open(FactKind.SERVICE_DATES, () -> "for three further years after the first award"));
                tally.caution(() -> "A second award took three further years; his dates do not show them.");
            }
        } else if (loops == 1) {
            tally.caution(
                    () -> "One loop on a clasp is a clerk's slip: a first award has no clasp, a second has two loops.");
        }
        var ended = new ArrayList<Evidence.Death.Manner>();
        soldier.death().ifPresent(death -> ended.add(death.manner()));
        if (!claims.any() && ended.isEmpty() && soldier.orders(AWARD).isEmpty()) {
            tally.caution(() -> "A paper without it can mean that the commander said no.");
        }
    }
}
