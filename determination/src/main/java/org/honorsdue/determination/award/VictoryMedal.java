package org.honorsdue.determination.award;

import java.time.LocalDate;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.service.fact.Device;

/**
 * World War II Victory Medal: one day of active service from 7 December 1941 to 31 December 1946, both included.
 * Authority: 32 CFR 578.47(a), 2006 revision. Nothing is worn on it: a star typed on it is refused.
 */
final class VictoryMedal {
    private static final String AWARD = "ww2-victory-medal";
    private static final long FIRST = LocalDate.of(1941, 12, 7).toEpochDay();
    private static final long LAST = LocalDate.of(1946, 12, 31).toEpochDay();

    private VictoryMedal() {}

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var nothingWorn = draft.law("no-device");
        return draft.route("Active service in the war", draft.clause("active-duty", VictoryMedal::onActiveDuty))
                .device("no-device")
                .counted((soldier, tally) -> {
                    var claims = soldier.claims(AWARD);
                    int stars = claims.devices(Device.BRONZE_SERVICE_STAR)
                            + claims.devices(Device.SILVER_SERVICE_STAR)
                            + claims.devices(Device.STAR_UNSPECIFIED);
                    if (stars > 0) {
                        tally.because(
                                nothingWorn,
                                Answer.notMet(
                                        () ->
                                                "the paper types a star on it; campaign stars belong on the theatre ribbon",
                                        claims.bases()));
                    }
                })
                .pointedAtWhen(soldier -> true)
                .expectedWhen(soldier -> true)
                .rule();
    }

    private static Answer onActiveDuty(Dossier soldier) {
        var served = soldier.served(FIRST, LAST);
        if (served.isPresent()) {
            return Answer.met(served.get().words(), served.get().basis());
        }
        for (var claim : soldier.campaigns()) {
            if (soldier.history().campaign(claim.campaign()).isPresent()) {
                return Answer.met(() -> "in the campaign \"" + claim.asTyped() + "\"", claim.basis());
            }
        }
        if (soldier.death().flatMap(death -> death.date()).isPresent()) {
            var death = soldier.death().get();
            var date = death.date().get();
            if (date.earliest().toEpochDay() >= FIRST && date.latest().toEpochDay() <= LAST) {
                return Answer.met(() -> "died in the service", death.basis());
            }
        }
        if (soldier.maybeOnDuty(FIRST, LAST)) {
            return soldier.duties().isEmpty() && soldier.claims(AWARD).any()
                    ? Answer.usually(
                            FactKind.SERVICE_DATES,
                            () -> "between 7 December 1941 and 31 December 1946",
                            soldier.claims(AWARD).bases())
                    : Answer.open(FactKind.SERVICE_DATES, () -> "between 7 December 1941 and 31 December 1946");
        }
        return Answer.notMet(
                () -> "on active service only from "
                        + soldier.duties().get(0).days().inWords(),
                soldier.duties().get(0).basis());
    }
}
