package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.honorsdue.determination.dossier.Claims;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.AwardClaim;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Specialty;
import org.honorsdue.service.fact.Tour;

/**
 * Combat Infantryman Badge and Medical Badge. Authority: WD Circular 269 of 27 October 1943 and WD Circular 66 of 1945.
 *
 * <p>The badge stands in the entry of qualifications or of decorations; such an entry is taken as the record of the
 * order. An infantry specialty and a campaign star are not the badge: they only make it worth asking for. A Combat
 * Infantryman Badge of a medical man was withdrawn in 1945 for the Medical Badge.
 */
final class CombatBadges {
    static final String INFANTRYMAN = "combat-infantryman-badge";
    static final String MEDICAL = "combat-medical-badge";

    private static final long WAR_BEGAN = LocalDate.of(1941, 12, 7).toEpochDay();
    private static final long WAR_ENDED = LocalDate.of(1945, 9, 2).toEpochDay();
    private static final long EUROPE_ENDED = LocalDate.of(1945, 5, 11).toEpochDay();

    private CombatBadges() {}

    static List<Rule> rules(Statutes law) {
        return List.of(infantryman(law), medical(law));
    }

    private static Rule infantryman(Statutes law) {
        var draft = law.award(INFANTRYMAN);
        var oneAward = draft.law("one-award");
        return draft.route(
                        "Infantryman in ground combat",
                        draft.clause("infantryman", CombatBadges::infantryman),
                        draft.clause("infantry-unit-in-combat", soldier -> inCombat(soldier, INFANTRYMAN)),
                        draft.clause(
                                "in-orders", soldier -> inOrders(soldier, INFANTRYMAN, "Combat Infantryman Badge")))
                .bar("medical-men", CombatBadges::withdrawn)
                .told("satisfactory-duty", "The commander who gave the badge decided it.")
                .told("specialty-is-not-proof", "The route asks for the order or the entry of the badge.")
                .device("one-award")
                .counted((soldier, tally) -> {
                    onlyOne(soldier, tally, INFANTRYMAN, oneAward);
                    if (soldier.claims(INFANTRYMAN).any() && !infantryLeaning(soldier)) {
                        tally.caution(
                                () ->
                                        "Neither arm nor specialty on the paper is infantry; he may have changed both after the fight.");
                    }
                })
                .pointedAtWhen(soldier -> pointedAt(soldier) && !medicalMan(soldier))
                .expectedWhen(soldier -> infantryLeaning(soldier))
                .rule();
    }

    private static Rule medical(Statutes law) {
        var draft = law.award(MEDICAL);
        var oneAward = draft.law("one-award");
        return draft.route(
                        "Medical man with the infantry in combat",
                        draft.clause("medical-man", CombatBadges::medical),
                        draft.clause("infantry-medical-detachment", soldier -> inCombat(soldier, MEDICAL)),
                        draft.clause("in-orders", soldier -> inOrders(soldier, MEDICAL, "Medical Badge")))
                .told("satisfactory-duty", "The commander who gave the badge decided it.")
                .told("hospital-work", "The route asks for the order or the entry of the badge.")
                .device("one-award")
                .counted((soldier, tally) -> onlyOne(soldier, tally, MEDICAL, oneAward))
                .pointedAtWhen(soldier -> pointedAt(soldier) && medicalMan(soldier))
                .rule();
    }

    private static void onlyOne(Dossier soldier, Tally tally, String badge, LawClause oneAward) {
        if (soldier.claims(badge).awards() > 1) {
            tally.because(
                    oneAward,
                    Answer.notMet(
                            () -> "the paper names it twice; it is worn once",
                            soldier.claims(badge).bases()));
        }
    }

    /** Whether what the papers show makes a combat badge worth asking for. */
    static boolean pointedAt(Dossier soldier) {
        boolean man = medicalMan(soldier) ? withInfantry(soldier) : infantryLeaning(soldier);
        return man && !soldier.campaigns().isEmpty();
    }

    static boolean medicalMan(Dossier soldier) {
        return soldier.armed("Medical")
                || soldier.specialty(MilitarySpecialty::medicalUnit)
                || soldier.specialty(MilitarySpecialty::medicalDepartment);
    }

    private static boolean infantryLeaning(Dossier soldier) {
        return soldier.armed("Infantry") || soldier.specialty(MilitarySpecialty::infantry);
    }

    private static boolean withInfantry(Dossier soldier) {
        for (var assignment : soldier.facts().every(Assignment.class)) {
            String words = assignment.designation().toLowerCase(Locale.ROOT);
            if (words.contains("inf")) {
                return true;
            }
        }
        return false;
    }

    private static boolean shown(Dossier soldier, String badge) {
        return soldier.claims(badge).sure().isPresent()
                || !soldier.orders(badge).isEmpty();
    }

    /** Specialty and arm of the paper are those of the last days; either may have been changed after the fight. */
    private static Answer infantryman(Dossier soldier) {
        if (soldier.specialty(MilitarySpecialty::infantry)) {
            return Answer.met(() -> "infantry by specialty");
        }
        if (shown(soldier, INFANTRYMAN)) {
            return Answer.met(
                    () -> "the badge was not given without",
                    soldier.claims(INFANTRYMAN).bases());
        }
        boolean officer = soldier.duties().stream().anyMatch(duty -> duty.category() == Tour.Category.OFFICER);
        if (officer && soldier.armed("Infantry")) {
            return Answer.met(() -> "an officer of the infantry");
        }
        return soldier.armed("Infantry")
                        && soldier.facts().every(Specialty.class).isEmpty()
                ? Answer.usually(FactKind.SPECIALTY, () -> "an infantryman's")
                : Answer.open(FactKind.SPECIALTY, () -> "an infantryman's while he was with the unit");
    }

    private static Answer medical(Dossier soldier) {
        if (medicalMan(soldier)) {
            return Answer.met(() -> "of the Medical Department by arm or specialty");
        }
        return shown(soldier, MEDICAL)
                ? Answer.met(
                        () -> "the badge was not given without",
                        soldier.claims(MEDICAL).bases())
                : Answer.open(FactKind.SPECIALTY, () -> "that of a medical man");
    }

    private static Answer inCombat(Dossier soldier, String badge) {
        if (soldier.claims(badge).any() || !soldier.orders(badge).isEmpty()) {
            return earnedInTheWar(soldier, badge);
        }
        if (!soldier.duties().isEmpty() && !soldier.maybeOnDuty(WAR_BEGAN, WAR_ENDED)) {
            return Answer.notMet(() -> "he was not in the service between 7 December 1941 and 2 September 1945");
        }
        if (!wasAbroadWhileTheyFought(soldier)) {
            return Answer.notMet(() -> "he reached no theatre while there was ground combat in it");
        }
        return Answer.open(
                FactKind.COMBAT_DUTY,
                () -> badge.equals(MEDICAL)
                        ? "with the medical detachment of an infantry unit while it fought"
                        : "with an infantry unit of regimental or smaller size while it fought");
    }

    /** Whether a badge that is shown was earned in the war: by its date, its order, or else his service. */
    static Answer earnedInTheWar(Dossier soldier, String badge) {
        var orders = soldier.orders(badge);
        if (!orders.isEmpty()) {
            var order = orders.get(0);
            return dated(soldier, order.date().map(PartialDate::earliest), order.basis());
        }
        var claims = soldier.claims(badge).all();
        if (!claims.isEmpty()) {
            var claim = claims.get(0);
            return dated(soldier, claim.date().map(PartialDate::earliest).or(() -> yearOfOrder(claim)), claim.basis());
        }
        return Answer.no();
    }

    private static Optional<LocalDate> yearOfOrder(AwardClaim claim) {
        var order = Claims.orderOf(claim);
        return order.isPresent() && order.get().year().isPresent()
                ? Optional.of(LocalDate.of(order.get().year().getAsInt(), 1, 1))
                : Optional.empty();
    }

    private static Answer dated(Dossier soldier, Optional<LocalDate> date, Basis basis) {
        if (!soldier.duties().isEmpty() && !soldier.maybeOnDuty(WAR_BEGAN, WAR_ENDED)) {
            return Answer.notMet(() -> "he was not in the service between 7 December 1941 and 2 September 1945", basis);
        }
        if (!wasAbroadWhileTheyFought(soldier)) {
            return Answer.notMet(() -> "he reached no theatre while there was ground combat in it", basis);
        }
        if (date.isPresent() && date.get().toEpochDay() > WAR_ENDED + 365 * 4L) {
            return Answer.notMet(() -> "the badge is of " + InWords.day(date.get()), basis);
        }
        if (date.isPresent() && date.get().toEpochDay() > WAR_ENDED) {
            return soldier.campaigns().isEmpty()
                    ? Answer.usually(
                            FactKind.COMBAT_DUTY,
                            () -> "in ground combat before 3 September 1945 (the order is of %s)"
                                    .formatted(InWords.day(date.get())),
                            basis)
                    : Answer.met(() -> "the order came after the fight, his campaigns lie in the war", basis);
        }
        return Answer.met(() -> "in ground combat of the war", basis);
    }

    /** Ground combat ended on 11 May 1945 in Europe (Central Europe campaign) and on 2 September 1945 in the Pacific. */
    private static boolean wasAbroadWhileTheyFought(Dossier soldier) {
        if (soldier.overseasUnknown()) {
            return true;
        }
        for (var stay : soldier.abroad()) {
            boolean pacific =
                    stay.mayBeIn(Theater.ASIATIC_PACIFIC) && stay.there().mayTouch(WAR_BEGAN, WAR_ENDED);
            boolean europe = stay.mayBeIn(Theater.EAME) && stay.there().mayTouch(WAR_BEGAN, EUROPE_ENDED);
            if (pacific || europe) {
                return true;
            }
        }
        return false;
    }

    private static Answer inOrders(Dossier soldier, String badge, String name) {
        var orders = soldier.orders(badge);
        if (!orders.isEmpty()) {
            return Answer.met(() -> "the order was seen", orders.get(0).basis());
        }
        var claims = soldier.claims(badge);
        if (claims.any()) {
            return Answer.met(
                    () -> "the paper shows the badge", claims.all().get(0).basis());
        }
        return Answer.open(FactKind.AWARD_ORDER, () -> "the " + name);
    }

    /** A medical man's infantry badge. */
    private static Answer withdrawn(Dossier soldier) {
        if (!soldier.armed("Medical") || soldier.armed("Infantry")) {
            return Answer.no();
        }
        if (!soldier.claims(INFANTRYMAN).any() && soldier.orders(INFANTRYMAN).isEmpty()) {
            return Answer.met(() -> "his arm is the Medical Department");
        }
        return Answer.open(
                FactKind.SPECIALTY,
                () -> "an infantryman's when he earned the badge, and not a medical man's",
                soldier.claims(INFANTRYMAN).bases());
    }
}
