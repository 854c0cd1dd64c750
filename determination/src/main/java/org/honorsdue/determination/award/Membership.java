package org.honorsdue.determination.award;

import java.util.Locale;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.UnitCredit;

/** Whether a man was with a unit when it earned what it was credited with. */
final class Membership {
    private Membership() {}

    /** Whether he was a member of the credited unit on some day of the credit. */
    static Answer during(Dossier soldier, UnitCredit credit) {
        long first = credit.from().map(date -> date.earliest().toEpochDay()).orElse(Long.MIN_VALUE);
        long last = credit.to()
                .or(credit::from)
                .map(date -> date.latest().toEpochDay())
                .orElse(Long.MAX_VALUE);
        Assignment unsure = null;
        boolean elsewhere = false;
        for (var assignment : soldier.every(Assignment.class)) {
            if (!isIn(assignment, credit)) {
                continue;
            }
            if (assignment.from().isEmpty() || assignment.to().isEmpty()) {
                boolean tooLate = assignment.from().isPresent()
                        && assignment.from().get().earliest().toEpochDay() > last;
                boolean tooEarly = assignment.to().isPresent()
                        && assignment.to().get().latest().toEpochDay() < first;
                boolean reaches = assignment.from().isPresent()
                        && assignment.from().get().latest().toEpochDay() <= last
                        && assignment.from().get().earliest().toEpochDay() >= first;
                boolean reachesBack = assignment.to().isPresent()
                        && assignment.to().get().earliest().toEpochDay() >= first
                        && assignment.to().get().latest().toEpochDay() <= last;
                if (reaches || reachesBack) {
                    return member(assignment, credit);
                }
                if (tooLate || tooEarly) {
                    elsewhere = true;
                } else {
                    unsure = assignment;
                }
                continue;
            }
            long from = assignment.from().get().latest().toEpochDay();
            long to = assignment.to().get().earliest().toEpochDay();
            boolean dated = credit.from().isPresent() || credit.to().isPresent();
            if (dated && from <= last && to >= first) {
                return member(assignment, credit);
            }
            if (!dated
                    || (assignment.from().get().earliest().toEpochDay() <= last
                            && assignment.to().get().latest().toEpochDay() >= first)) {
                unsure = assignment;
            } else {
                elsewhere = true;
            }
        }
        // A dated record of the unit goes before the unit he came home with.
        if (unsure != null && !(elsewhere && unsure.atSeparation())) {
            return Answer.open(FactKind.UNIT_PRESENCE, () -> inTheAction(credit), unsure.basis(), credit.basis());
        }
        if (elsewhere) {
            return Answer.notMet(
                    () -> "he was with %s at another time".formatted(credit.designation()), credit.basis());
        }
        return Answer.open(FactKind.UNIT_PRESENCE, () -> inTheAction(credit), credit.basis());
    }

    private static Answer member(Assignment assignment, UnitCredit credit) {
        return Answer.met(
                () -> "with %s in the credited time%s".formatted(assignment.designation(), dates(credit)),
                assignment.basis(),
                credit.basis());
    }

    private static String inTheAction(UnitCredit credit) {
        return credit.designation() + dates(credit);
    }

    private static String dates(UnitCredit credit) {
        if (credit.from().isEmpty() && credit.to().isEmpty()) {
            return " in the credited action";
        }
        var words = new StringBuilder();
        credit.from().ifPresent(from -> words.append(" from ").append(InWords.date(from)));
        credit.to().ifPresent(to -> words.append(" to ").append(InWords.date(to)));
        return words.toString();
    }

    /** By the unit tables where both are in them: the credited unit is his own or one above it; else by the words. */
    static boolean isIn(Assignment assignment, UnitCredit credit) {
        if (!credit.units().isEmpty() && !assignment.units().isEmpty()) {
            return assignment.units().contains(credit.units().get(0));
        }
        return plain(assignment.designation()).endsWith(plain(credit.designation()));
    }

    private static String plain(String designation) {
        return designation.replace(".", "").strip().toLowerCase(Locale.ROOT);
    }
}
