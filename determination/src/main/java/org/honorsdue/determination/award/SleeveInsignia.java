package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.honorsdue.determination.dossier.Abroad;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.Duty;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.LapelButton;
import org.honorsdue.service.fact.SeparationReason;
import org.honorsdue.service.fact.ServiceTotal;

/**
 * What is worn on the sleeve and on civilian dress: overseas service bars, service stripes, shoulder sleeve insignia, the
 * lapel button.
 *
 * <p>Overseas bars: one for each six months from leaving to reaching a port of the United States, both days counted,
 * between 7 December 1941 and 2 September 1946; stays are added, a month being thirty days when days of several stays
 * are added up; a fraction earns nothing. The typed total of foreign service is used where the crossings are not shown.
 */
final class SleeveInsignia {
    private static final String BARS = "overseas-service-bars";
    private static final String STRIPES = "service-stripes";
    private static final String PATCH = "shoulder-sleeve-insignia";
    private static final String BUTTON = "honorable-service-lapel-button";

    private static final long BARS_BEGAN = LocalDate.of(1941, 12, 7).toEpochDay();
    private static final long BARS_ENDED = LocalDate.of(1946, 9, 2).toEpochDay();
    private static final long BUTTON_BEGAN = LocalDate.of(1939, 9, 8).toEpochDay();
    private static final long BUTTON_ENDED = LocalDate.of(1946, 12, 31).toEpochDay();
    private static final int MONTH = 30;

    /** Words of a separation that was not for honorable service. Common practice, no source. */
    private static final Pattern NOT_HONORABLE =
            Pattern.compile("undesirable|unfit|misconduct|dishonorable|bad conduct|fraudulent|desertion");

    private SleeveInsignia() {}

    static List<Rule> rules(Statutes law) {
        return List.of(bars(law), stripes(law), patch(law), button(law));
    }

    // Overseas service bars

    /** Time overseas in days of thirty-day months: at least, and at most; and what it rests on. */
    private record Overseas(int sure, int possible, List<Basis> rests) {}

    private static Rule bars(Statutes law) {
        var draft = law.award(BARS);
        var fraction = draft.law("fraction-earns-nothing");
        return draft.route("Six months overseas", draft.clause("six-months", SleeveInsignia::sixMonths))
                .told("periods-add-up", "All stays are added before they are divided.")
                .told("port-to-port", "The crossings of the paper are the ends that are counted.")
                .told("window", "Only days between these dates are counted.")
                .device("fraction-earns-nothing")
                .counted((soldier, tally) -> {
                    var overseas = overseas(soldier);
                    int due = Math.max(1, overseas.sure() / (6 * MONTH));
                    tally.count(due);
                    tally.because(
                            fraction,
                            Answer.met(
                                    () -> inWords(overseas.sure()) + " overseas: " + due
                                            + (due == 1 ? " bar" : " bars"),
                                    overseas.rests()));
                    int typed = soldier.claims(BARS).awards();
                    if (typed > 0 && typed < due) {
                        tally.shortOnPaper();
                    }
                    if (typed > due) {
                        tally.caution(
                                () -> "The paper types %d bars; the time overseas bears out %d.".formatted(typed, due));
                    }
                    if (overseas.possible() / (6 * MONTH) > due) {
                        tally.further(
                                FactKind.OVERSEAS_DATES,
                                () -> "for longer than is surely shown, which would add a bar");
                    }
                })
                .pointedAtWhen(soldier -> overseas(soldier).possible() >= 6 * MONTH
                        && !soldier.abroad().isEmpty())
                .rule();
    }

    private static Answer sixMonths(Dossier soldier) {
        var overseas = overseas(soldier);
        if (overseas.sure() >= 6 * MONTH) {
            return Answer.met(() -> inWords(overseas.sure()) + " overseas", overseas.rests());
        }
        if (overseas.possible() < 6 * MONTH) {
            return Answer.notMet(() -> inWords(overseas.possible()) + " overseas at most", overseas.rests());
        }
        int typed = soldier.claims(BARS).awards();
        return typed > 0
                ? Answer.usually(
                        FactKind.OVERSEAS_DATES,
                        () -> "for six months",
                        soldier.claims(BARS).bases())
                : Answer.open(FactKind.OVERSEAS_DATES, () -> "for six months", overseas.rests());
    }

    private static Overseas overseas(Dossier soldier) {
        var rests = new ArrayList<Basis>();
        int sure = 0;
        int possible = 0;
        boolean crossings = false;
        for (var stay : soldier.abroad()) {
            if (stay.kind() == Abroad.Kind.DESTINATION) {
                crossings = true;
                var days = stay.portToPort();
                sure += months(Math.max(BARS_BEGAN, days.firstLatest()), Math.min(BARS_ENDED, days.lastEarliest()));
                possible += months(Math.max(BARS_BEGAN, days.firstEarliest()), Math.min(BARS_ENDED, days.lastLatest()));
                rests.add(stay.basis());
            }
        }
        if (!crossings) {
            for (var total : soldier.every(ServiceTotal.class)) {
                if (total.kind() == ServiceTotal.Kind.FOREIGN) {
                    int typed = (total.years() * 12 + total.months()) * MONTH + total.days();
                    possible += typed;
                    rests.add(total.basis());
                    if (inTheWar(soldier)) {
                        sure += typed;
                    }
                }
            }
        }
        return new Overseas(sure, Math.max(sure, possible), rests);
    }

    private static boolean inTheWar(Dossier soldier) {
        return !soldier.duties().isEmpty()
                && soldier.duties().stream()
                        .allMatch(duty -> duty.days().firstEarliest() >= BARS_BEGAN
                                && duty.days().lastLatest() <= BARS_ENDED);
    }

    /** Whole months of the calendar and the days over, as days of thirty-day months; both ends count. */
    private static int months(long first, long last) {
        if (last < first) {
            return 0;
        }
        var period = Period.between(LocalDate.ofEpochDay(first), LocalDate.ofEpochDay(last + 1));
        // Days short of a calendar month are never a month, even where the month has thirty-one.
        return (int) period.toTotalMonths() * MONTH + Math.min(MONTH - 1, period.getDays());
    }

    private static String inWords(int days) {
        return "%d months %d days".formatted(days / MONTH, days % MONTH);
    }

    // Service stripes

    private static Rule stripes(Statutes law) {
        var draft = law.award(STRIPES);
        return draft.route(
                        "Three years enlisted",
                        draft.clause("three-years", SleeveInsignia::threeYears),
                        draft.clause(
                                "enlisted",
                                soldier -> soldier.duties().stream().anyMatch(Duty::enlisted)
                                        ? Answer.met(() -> "enlisted service")
                                        : Answer.no()))
                .told("lost-time", "Days lost are taken off before the years are counted.")
                .counted((soldier, tally) -> tally.count((int) Math.max(1, enlistedDays(soldier, true) / 1095)))
                .rule();
    }

    private static Answer threeYears(Dossier soldier) {
        long sure = enlistedDays(soldier, true);
        var bases = soldier.duties().stream().map(Duty::basis).toList();
        if (sure >= 1095) {
            return Answer.met(() -> sure + " days", bases);
        }
        long possible = enlistedDays(soldier, false);
        return possible >= 1095
                        && (soldier.claims(STRIPES).any() || soldier.duties().isEmpty())
                ? Answer.open(FactKind.SERVICE_DATES, () -> "for three years as an enlisted man", bases)
                : Answer.notMet(() -> sure + " days are shown", bases);
    }

    private static long enlistedDays(Dossier soldier, boolean sure) {
        long days = 0;
        for (var duty : soldier.duties()) {
            if (duty.enlisted() || !sure && duty.mayBeEnlisted()) {
                var span = duty.days();
                days += sure
                        ? span.sureDays(Long.MIN_VALUE, Long.MAX_VALUE - 1)
                        : span.possibleDays(Long.MIN_VALUE, Long.MAX_VALUE - 1);
            }
        }
        for (var conduct : soldier.facts().every(Conduct.class)) {
            days -= conduct.lostDays().orElse(0);
        }
        return Math.max(0, days);
    }

    // Shoulder sleeve insignia

    private static Rule patch(Statutes law) {
        var draft = law.award(PATCH);
        var current = draft.law("current-unit");
        var former = draft.law("former-combat-unit");
        return draft.route("Member of the command", draft.clause("unit-authorized", SleeveInsignia::unitWithPatch))
                .device("current-unit")
                .device("former-combat-unit")
                .counted((soldier, tally) -> {
                    whichPatch(soldier, tally);
                    UnitPatches.told(soldier, tally, current, former);
                })
                .rule();
    }

    /** Which units had insignia the unit tables know; without them a named unit is all there is. */
    private static Answer unitWithPatch(Dossier soldier) {
        var known = UnitPatches.authorized(soldier);
        if (known.speaks()) {
            return known;
        }
        var all = soldier.every(Assignment.class);
        if (!all.isEmpty()) {
            var assignment = all.get(0);
            return Answer.open(
                    FactKind.UNIT_PRESENCE,
                    () -> assignment.designation() + " and the command above it",
                    assignment.basis());
        }
        return Answer.open(FactKind.UNIT_PRESENCE, () -> "a unit of a command that had insignia");
    }

    private static void whichPatch(Dossier soldier, Tally tally) {
        long known = UnitPatches.count(soldier);
        if (known > 0) {
            tally.count((int) known);
            return;
        }
        long named = soldier.facts().every(Assignment.class).stream()
                .map(one ->
                        one.units().isEmpty() ? one.designation() : one.units().toString())
                .distinct()
                .count();
        tally.count((int) Math.max(1, named));
    }

    // Lapel button

    private static Rule button(Statutes law) {
        var draft = law.award(BUTTON);
        return draft.route(
                        "Honorable service",
                        draft.clause("honorable-service", SleeveInsignia::honorable),
                        draft.clause("window", SleeveInsignia::inButtonDates))
                .shownWhen(soldier ->
                        soldier.facts().every(LapelButton.class).stream().anyMatch(LapelButton::issued)
                                || soldier.claims(BUTTON).any())
                .rule();
    }

    private static Answer honorable(Dossier soldier) {
        for (var button : soldier.every(LapelButton.class)) {
            if (button.issued()) {
                return Answer.met(() -> "the button was issued", button.basis());
            }
        }
        var withheld = soldier.every(LapelButton.class);
        if (!withheld.isEmpty()) {
            return Answer.open(
                    FactKind.CONDUCT,
                    () -> "worthy of an honorable discharge, the button having been withheld",
                    withheld.get(0).basis());
        }
        for (var reason : soldier.every(SeparationReason.class)) {
            if (NOT_HONORABLE.matcher(reason.reason().toLowerCase(Locale.ROOT)).find()) {
                return Answer.open(FactKind.CONDUCT, () -> "worthy of an honorable discharge", reason.basis());
            }
        }
        if (soldier.death().isPresent()) {
            return Answer.notMet(
                    () -> "he died in the service", soldier.death().get().basis());
        }
        if (soldier.claims(BUTTON).any()) {
            return Answer.met(() -> "the paper names it", soldier.claims(BUTTON).bases());
        }
        if (!soldier.duties().isEmpty()) {
            // Both forms are themselves certificates of honorable service.
            return Answer.met(
                    () -> "the paper is one of honorable service",
                    soldier.duties().get(0).basis());
        }
        return Answer.open(FactKind.CONDUCT, () -> "honorable");
    }

    private static Answer inButtonDates(Dossier soldier) {
        return soldier.duties().isEmpty()
                ? soldier.facts().every(LapelButton.class).isEmpty()
                        ? Answer.open(FactKind.SERVICE_DATES, () -> "between 8 September 1939 and 31 December 1946")
                        : Answer.met(() -> "issued on a paper of the war")
                : soldier.maybeOnDuty(BUTTON_BEGAN, BUTTON_ENDED)
                        ? Answer.met(() -> "he served in these dates")
                        : Answer.notMet(() -> "he did not serve in these dates");
    }
}
