package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.Duty;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Device;

/**
 * American Defense Service Medal: active service from 8 September 1939 to 7 December 1941, under orders for twelve
 * months or longer. Authority: EO 8808.
 *
 * <p>Two texts differ. The Institute of Heraldry sheet can be read as twelve months served; the Army regulation speaks
 * of the orders and is followed: a man called in October 1941 for twelve months has it. A tour that began in the window
 * and lasted a year or more shows orders of that length. Where fewer than twelve months fall into the window the finding
 * says so.
 */
final class AmericanDefenseMedal {
    private static final String AWARD = "american-defense-service-medal";
    private static final long FIRST = LocalDate.of(1939, 9, 8).toEpochDay();
    private static final long LAST = LocalDate.of(1941, 12, 7).toEpochDay();
    private static final long PHILIPPINES_FELL = LocalDate.of(1942, 6, 15).toEpochDay();
    private static final int YEAR = 365;

    private AmericanDefenseMedal() {}

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var clasp = draft.law("foreign-service-clasp");
        var star = draft.law("star-on-the-bar");
        return draft.route(
                        "On active duty before the war",
                        draft.clause("window", AmericanDefenseMedal::inTheWindow),
                        draft.clause("ordered-for-twelve-months", AmericanDefenseMedal::orderedForAYear))
                .told("training-tours", "Asked as orders for twelve months.")
                .device("foreign-service-clasp")
                .told("clasp-for-crews", "A casefile has no kind of evidence for a vessel's or an aircraft's crew.")
                .device("star-on-the-bar")
                .counted((soldier, tally) -> count(soldier, tally, clasp, star))
                .pointedAtWhen(soldier ->
                        soldier.duties().stream().anyMatch(duty -> duty.days().firstLatest() <= LAST)
                                || defendedThePhilippines(soldier).isPresent())
                .expectedWhen(soldier -> soldier.duties().stream()
                        .anyMatch(duty -> duty.days().firstEarliest() > LAST
                                && duty.days().firstEarliest() <= LAST + 62))
                .rule();
    }

    private static Answer inTheWindow(Dossier soldier) {
        var served = soldier.served(FIRST, LAST);
        if (served.isPresent()) {
            return Answer.met(served.get().words(), served.get().basis());
        }
        var inThePhilippines = defendedThePhilippines(soldier);
        if (inThePhilippines.isPresent()) {
            return Answer.usually(
                    FactKind.SERVICE_DATES,
                    () -> "before 8 December 1941 (he was in the Philippines when they fell)",
                    inThePhilippines.get());
        }
        if (soldier.maybeOnDuty(FIRST, LAST)) {
            return soldier.claims(AWARD).any()
                    ? Answer.usually(
                            FactKind.SERVICE_DATES,
                            () -> "between 8 September 1939 and 7 December 1941",
                            soldier.claims(AWARD).bases())
                    : Answer.open(FactKind.SERVICE_DATES, () -> "between 8 September 1939 and 7 December 1941");
        }
        return Answer.notMet(
                () -> "active service began on "
                        + InWords.day(soldier.duties().get(0).days().firstEarliest()),
                soldier.duties().get(0).basis());
    }

    /** No troops reached the Philippines after the war began, so a man who fell there had come before. */
    private static Optional<Basis> defendedThePhilippines(Dossier soldier) {
        for (var stay : soldier.abroad()) {
            if (stay.inPhilippines() && stay.there().surelyTouches(LAST + 1, PHILIPPINES_FELL)) {
                return Optional.of(stay.basis());
            }
        }
        for (var claim : soldier.campaigns()) {
            if (claim.campaign().equals("AP-PHI")) {
                return Optional.of(claim.basis());
            }
        }
        return Optional.empty();
    }

    private static Answer orderedForAYear(Dossier soldier) {
        for (var duty : soldier.duties()) {
            if (duty.days().mayTouch(FIRST, LAST)
                    && duty.days().lastEarliest() - duty.days().firstLatest() + 1 >= YEAR) {
                return Answer.met(() -> "the tour lasted " + duty.days().inWords(), duty.basis());
            }
        }
        for (var assignment : soldier.every(Assignment.class)) {
            if (assignment.from().isPresent()
                    && assignment.to().isPresent()
                    && assignment.from().get().latest().toEpochDay() <= LAST
                    && assignment.to().get().earliest().toEpochDay() >= FIRST
                    && assignment.to().get().earliest().toEpochDay()
                                    - assignment.from().get().latest().toEpochDay()
                                    + 1
                            >= YEAR) {
                return Answer.met(() -> "a year and more with " + assignment.designation(), assignment.basis());
            }
        }
        return Answer.usually(
                FactKind.ORDERS_LENGTH,
                () -> "for twelve months or longer",
                soldier.duties().stream().map(Duty::basis).toList());
    }

    private static void count(Dossier soldier, Tally tally, LawClause clasp, LawClause star) {
        var claims = soldier.claims(AWARD);
        boolean typed = claims.devices(Device.FOREIGN_SERVICE_CLASP) > 0
                || claims.devices(Device.BRONZE_SERVICE_STAR) > 0
                || claims.devices(Device.STAR_UNSPECIFIED) > 0;
        boolean shown = false;
        for (var stay : soldier.abroad()) {
            if (stay.portToPort().surelyTouches(FIRST, LAST)) {
                tally.worn(Device.FOREIGN_SERVICE_CLASP, 1, List.of());
                tally.because(clasp, Answer.met(stay::inWords, stay.basis()));
                tally.because(star, Answer.met(() -> "on the ribbon bar"));
                shown = true;
                if (claims.any() && !typed) {
                    tally.shortOnPaper();
                }
                break;
            }
        }
        if (!shown && typed) {
            tally.worn(Device.FOREIGN_SERVICE_CLASP, 1, List.of());
            tally.because(
                    clasp,
                    Answer.usually(
                            FactKind.OVERSEAS_DATES,
                            () -> "between 8 September 1939 and 7 December 1941",
                            claims.bases()));
            tally.caution(() -> "The clasp is on the paper; service abroad before 8 December 1941 is not shown.");
        } else if (!shown) {
            for (var stay : soldier.abroad()) {
                if (stay.portToPort().mayTouch(FIRST, LAST)) {
                    tally.further(
                            FactKind.OVERSEAS_DATES,
                            () -> "before 8 December 1941, which would add the Foreign Service clasp");
                    break;
                }
            }
        }
        long inWindow = 0;
        for (var duty : soldier.duties()) {
            inWindow += duty.days().possibleDays(FIRST, LAST);
        }
        if (inWindow < YEAR && !soldier.duties().isEmpty()) {
            tally.caution(
                    () ->
                            "Fewer than twelve months fall into the dates: read as twelve months served, and not ordered, it would not be due.");
        }
    }
}
