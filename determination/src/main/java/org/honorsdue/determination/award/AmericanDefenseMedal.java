package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.List;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.Duty;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.law.LawClause;
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
                .device("clasp-for-crews")
                .device("star-on-the-bar")
                .counted((soldier, tally) -> count(soldier, tally, clasp, star))
                .pointedAtWhen(soldier ->
                        soldier.duties().stream().anyMatch(duty -> duty.days().firstLatest() <= LAST))
                .expectedWhen(soldier -> soldier.duties().stream()
                        .anyMatch(duty -> duty.days().firstEarliest() > LAST
                                && duty.days().firstEarliest() <= LAST + 62))
                .rule();
    }

    private static Answer inTheWindow(Dossier soldier) {
        var duty = soldier.onDuty(FIRST, LAST);
        if (duty.isPresent()) {
            return Answer.met(
                    () -> "on active service from " + duty.get().days().inWords(),
                    duty.get().basis());
        }
        for (var stay : soldier.abroad()) {
            if (stay.there().surelyTouches(FIRST, LAST)) {
                return Answer.met(stay::inWords, stay.basis());
            }
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

    private static Answer orderedForAYear(Dossier soldier) {
        for (var duty : soldier.duties()) {
            if (duty.days().mayTouch(FIRST, LAST)
                    && duty.days().lastEarliest() - duty.days().firstLatest() + 1 >= YEAR) {
                return Answer.met(() -> "the tour lasted " + duty.days().inWords(), duty.basis());
            }
        }
        for (var stay : soldier.abroad()) {
            if (stay.there().surelyTouches(FIRST, LAST)
                    || (soldier.duties().isEmpty() && stay.there().surelyTouches(LAST, LAST + 180))) {
                return Answer.usually(FactKind.ORDERS_LENGTH, () -> "for twelve months or longer", stay.basis());
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
