package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.Locale;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.service.fact.ArmFact;
import org.honorsdue.service.fact.Component;
import org.honorsdue.service.fact.PriorService;
import org.honorsdue.service.fact.School;
import org.honorsdue.service.fact.Tour;

/**
 * Women's Army Corps Service Medal: service in the Auxiliary Corps before 1 September 1943 and in the Corps after.
 * Authority: EO 9365. An encyclopedia joins the two by "or"; the regulation, from memory, says both, and both is
 * followed.
 */
final class WomensArmyCorpsMedal {
    private static final String AWARD = "wac-service-medal";
    private static final long AUXILIARY_BEGAN = LocalDate.of(1942, 7, 10).toEpochDay();
    private static final long AUXILIARY_ENDED = LocalDate.of(1943, 8, 31).toEpochDay();
    private static final long CORPS_BEGAN = LocalDate.of(1943, 9, 1).toEpochDay();
    private static final long CORPS_LAST_DAY = LocalDate.of(1945, 9, 2).toEpochDay();

    private WomensArmyCorpsMedal() {}

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var nothingWorn = draft.law("no-device");
        return draft.route(
                        "In both corps",
                        draft.clause("waac-service", WomensArmyCorpsMedal::inTheAuxiliary),
                        draft.clause("wac-service", WomensArmyCorpsMedal::inTheCorps))
                .bar("other-women", WomensArmyCorpsMedal::inNeither)
                .told("both-corps", "The route asks for both.")
                .device("no-device")
                .counted((soldier, tally) -> {
                    var claims = soldier.claims(AWARD);
                    if (claims.all().stream().anyMatch(claim -> !claim.devices().isEmpty())) {
                        tally.because(
                                nothingWorn, Answer.notMet(() -> "the paper types a device on it", claims.bases()));
                    }
                })
                .pointedAtWhen(soldier -> soldier.maybeWoman() && inWomensCorps(soldier))
                .expectedWhen(soldier -> soldier.maybeWoman() || inWomensCorps(soldier))
                .rule();
    }

    private static Answer inTheAuxiliary(Dossier soldier) {
        if (!soldier.maybeWoman()
                && !inWomensCorps(soldier)
                && !soldier.claims(AWARD).any()) {
            return Answer.no();
        }
        for (var duty : soldier.duties()) {
            if (duty.days().surelyTouches(AUXILIARY_BEGAN, AUXILIARY_ENDED)) {
                return Answer.met(() -> "served from " + duty.days().inWords(), duty.basis());
            }
        }
        for (var tour : soldier.every(Tour.class)) {
            if (tour.enlisted().isPresent()
                    && tour.enlisted().get().latest().toEpochDay() <= AUXILIARY_ENDED
                    && tour.enlisted().get().earliest().toEpochDay() >= AUXILIARY_BEGAN) {
                return Answer.met(
                        () -> "enlisted on " + InWords.date(tour.enlisted().get()), tour.basis());
            }
        }
        if (says(soldier, "waac") || says(soldier, "auxiliary")) {
            return Answer.met(() -> "the Auxiliary Corps is named");
        }
        // The Corps often took its women over on a new paper, so an entry in its first month proves nothing.
        if (!soldier.duties().isEmpty()
                && soldier.duties().stream().allMatch(duty -> duty.days().firstEarliest() > CORPS_BEGAN + 30)) {
            return Answer.notMet(() -> "entered the service after the Auxiliary Corps had ended");
        }
        if (soldier.claims(AWARD).any()) {
            return Answer.usually(
                    FactKind.COMPONENT,
                    () -> "the Auxiliary Corps before 1 September 1943",
                    soldier.claims(AWARD).bases());
        }
        return Answer.open(FactKind.COMPONENT, () -> "the Auxiliary Corps before 1 September 1943");
    }

    private static Answer inTheCorps(Dossier soldier) {
        for (var duty : soldier.duties()) {
            if (duty.days().surelyTouches(CORPS_BEGAN, CORPS_LAST_DAY)) {
                return Answer.met(() -> "served from " + duty.days().inWords(), duty.basis());
            }
        }
        return soldier.maybeOnDuty(CORPS_BEGAN, CORPS_LAST_DAY)
                ? Answer.open(FactKind.COMPONENT, () -> "the Women's Army Corps after 31 August 1943")
                : Answer.notMet(() -> "left before the Women's Army Corps began");
    }

    private static Answer inNeither(Dossier soldier) {
        for (var arm : soldier.every(ArmFact.class)) {
            String words = arm.arm().toLowerCase(Locale.ROOT);
            if (words.contains("nurse") || words.contains("dietitian") || words.contains("therapist")) {
                return Answer.met(() -> arm.arm(), arm.basis());
            }
        }
        return Answer.no();
    }

    private static boolean inWomensCorps(Dossier soldier) {
        if (soldier.sex().isPresent() && !soldier.maybeWoman()) {
            return false;
        }
        return says(soldier, "women") || says(soldier, "waac") || says(soldier, "wac");
    }

    private static boolean says(Dossier soldier, String word) {
        for (var arm : soldier.facts().every(ArmFact.class)) {
            if (arm.arm().toLowerCase(Locale.ROOT).contains(word)) {
                return true;
            }
        }
        for (var component : soldier.facts().every(Component.class)) {
            if (component.component().toLowerCase(Locale.ROOT).contains(word)) {
                return true;
            }
        }
        for (var prior : soldier.facts().every(PriorService.class)) {
            if (prior.asTyped().toLowerCase(Locale.ROOT).contains(word)) {
                return true;
            }
        }
        for (var school : soldier.facts().every(School.class)) {
            if (word.equals("waac") && school.school().toLowerCase(Locale.ROOT).contains(word)) {
                return true;
            }
        }
        return false;
    }
}
