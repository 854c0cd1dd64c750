package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Statement;
import org.honorsdue.service.paper.Entry;

/**
 * Prisoner of War Medal: captivity by an enemy after 5 April 1917, however short (one day was enough in file 9510773).
 * Authority: 10 USC 1128, since 8 November 1985. Conduct in captivity is taken as honorable unless something on record
 * speaks against it. Internment by a neutral is not captivity by an enemy.
 */
final class PrisonerOfWarMedal {
    private static final String AWARD = "prisoner-of-war-medal";
    private static final long LAW_BEGINS = LocalDate.of(1917, 4, 5).toEpochDay();

    private PrisonerOfWarMedal() {}

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var second = draft.law("second-captivity");
        return draft.route(
                        "Prisoner of the enemy",
                        draft.clause("held-captive", PrisonerOfWarMedal::heldCaptive),
                        draft.clause("in-action-against-enemy", PrisonerOfWarMedal::byTheEnemy),
                        draft.clause("honorable-conduct", PrisonerOfWarMedal::honorable))
                .route(
                        "Captivity found comparable",
                        draft.clause("comparable-captivity", PrisonerOfWarMedal::comparable))
                .told("neutral-internee", "Asked as captivity by the enemy, and by the route on comparable captivity.")
                .told("evader", "An evader has no captivity on record.")
                .device("second-captivity")
                .counted((soldier, tally) -> {
                    long captivities = soldier.facts().every(Captivity.class).stream()
                            .filter(captivity -> !captivity.internedByNeutral())
                            .count();
                    if (captivities > 1 && apart(soldier)) {
                        tally.worn(Device.BRONZE_SERVICE_STAR, (int) captivities - 1, List.of("further captivity"));
                        tally.because(second, Answer.met(() -> captivities + " captivities"));
                    }
                })
                .pointedAtWhen(
                        soldier -> !soldier.facts().every(Captivity.class).isEmpty() || saidToBe(soldier))
                .expectedWhen(soldier -> !soldier.facts().every(Captivity.class).isEmpty())
                .rule();
    }

    private static Answer heldCaptive(Dossier soldier) {
        for (var captivity : soldier.every(Captivity.class)) {
            if (captivity.internedByNeutral()) {
                continue;
            }
            if (captivity.to().isPresent() && captivity.to().get().latest().toEpochDay() <= LAW_BEGINS) {
                return Answer.notMet(() -> "his captivity ended before 6 April 1917", captivity.basis());
            }
            return Answer.met(() -> "a prisoner" + dates(captivity), captivity.basis());
        }
        if (!soldier.facts().every(Captivity.class).isEmpty()) {
            return Answer.notMet(
                    () -> "interned by a neutral",
                    soldier.every(Captivity.class).get(0).basis());
        }
        if (soldier.claims(AWARD).any()) {
            return Answer.usually(
                    FactKind.CAPTIVITY,
                    () -> "for any time",
                    soldier.claims(AWARD).bases());
        }
        if (soldier.facts().supplied(Entry.REMARKS) && !saidToBe(soldier)) {
            return Answer.notMet(() -> "the remarks name no captivity, and nothing else does");
        }
        return Answer.open(
                FactKind.CAPTIVITY,
                () -> "for any time",
                soldier.every(Statement.class).stream()
                        .filter(PrisonerOfWarMedal::speaksOfCaptivity)
                        .map(Statement::basis)
                        .toList());
    }

    private static Answer byTheEnemy(Dossier soldier) {
        return heldCaptive(soldier).isNotMet()
                ? Answer.notMet(() -> "not by an enemy of the United States")
                : Answer.met(() -> "of the enemy in the war");
    }

    private static Answer honorable(Dossier soldier) {
        return Answer.met(() -> "nothing on record speaks against it");
    }

    private static Answer comparable(Dossier soldier) {
        for (var captivity : soldier.every(Captivity.class)) {
            if (captivity.internedByNeutral()) {
                return Answer.open(
                        FactKind.CAPTIVITY,
                        () -> "or of a power whose treatment was found comparable%s"
                                .formatted(captivity
                                        .place()
                                        .map(place -> " (" + place + ")")
                                        .orElse("")),
                        captivity.basis());
            }
        }
        return Answer.no();
    }

    private static String dates(Captivity captivity) {
        return captivity.from().map(from -> " from " + InWords.date(from)).orElse("")
                + captivity.to().map(to -> " to " + InWords.date(to)).orElse("")
                + captivity.place().map(place -> ", " + place).orElse("");
    }

    /** Two captivities that do not overlap, by the days that are known. */
    private static boolean apart(Dossier soldier) {
        var all = soldier.every(Captivity.class);
        for (var one : all) {
            for (var other : all) {
                if (one.to().isPresent()
                        && other.from().isPresent()
                        && one.to().get().latest().isBefore(other.from().get().earliest())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean saidToBe(Dossier soldier) {
        return soldier.facts().every(Statement.class).stream().anyMatch(PrisonerOfWarMedal::speaksOfCaptivity);
    }

    private static boolean speaksOfCaptivity(Statement statement) {
        String words = statement.says().toLowerCase(Locale.ROOT);
        return words.contains("prisoner") || words.contains("captured") || words.contains("pow ");
    }
}
