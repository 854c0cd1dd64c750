package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.honorsdue.determination.dossier.Abroad;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.HospitalAdmission;
import org.honorsdue.service.fact.Wound;
import org.honorsdue.service.paper.Entry;

/**
 * Purple Heart: an entitlement that follows from the facts. A wound by the enemy, treated by a medical officer, the
 * treatment on record. Authority: AR 600-8-22 (25 February 1995), paragraph 2-8; AR 600-45 (22 September 1943) for the
 * wartime meaning of a wound.
 *
 * <p>How the papers are taken. The entry of wounds received in action is itself a record that the enemy caused them;
 * treatment by a medical officer is then the usual case and the one fact to be shown (presumed). An award named on the
 * paper beside a wound shows the treatment too: it was not given without. A report of death in action is enough by
 * itself (docket AR20090007142). Trench foot was not a ground; severe frostbite in combat was, until 1951 (file 9508440).
 */
final class PurpleHeart {
    private static final String AWARD = "purple-heart";
    private static final Pattern TRENCH_FOOT = Pattern.compile("trench\\s*f(oo|ee)t|immersion\\s*f(oo|ee)t");
    private static final Pattern COLD = Pattern.compile("frost\\s*-?bit|frozen|cold injur");
    private static final Pattern DISEASE = Pattern.compile(
            "malaria|jaundice|hepatitis|dysentery|pneumonia|fatigue|neurosis|exhaustion|fever|typhus|typhoid|hernia|appendic");
    private static final long MERIT_ENDED = LocalDate.of(1942, 9, 19).toEpochDay();
    /** Admissions so many days after a wound belong to it. Common practice, no source. */
    private static final long SAME_WOUND = 21;

    private PurpleHeart() {}

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var clusters = draft.law("oak-leaf-cluster");
        var occasions = draft.law("one-award-an-occasion");
        return draft.route("Killed or died of wounds", draft.clause("killed-or-died-of-wounds", PurpleHeart::killed))
                .route(
                        "Wounded in action",
                        draft.clause("wound-by-enemy", PurpleHeart::wounded),
                        draft.clause("treated-by-medical-officer", PurpleHeart::treated),
                        draft.clause("treatment-of-record", PurpleHeart::onRecord))
                .route(
                        "Severe frostbite in combat",
                        draft.clause("severe-frostbite", PurpleHeart::frostbite),
                        draft.clause("treated-by-medical-officer", PurpleHeart::treatedForTheCold))
                .route(
                        "Wounded as a prisoner",
                        draft.clause("prisoner-wounded", PurpleHeart::woundedInCaptivity),
                        draft.clause("treated-by-medical-officer", PurpleHeart::treated))
                .route("Died in captivity", draft.clause("died-in-captivity", PurpleHeart::diedInCaptivity))
                .route(
                        "For merit, before the change of 1942",
                        draft.clause("merit-awards-stand", PurpleHeart::forMerit))
                .bar("trench-foot", PurpleHeart::onlyTrenchFoot)
                .bar("accident", PurpleHeart::onlyAccident)
                .told("illness", "Disease is read from the diagnosis and answers the clause on accidents.")
                .told("merit-until-1942", "Asked as the merit award that stays valid.")
                .device("oak-leaf-cluster")
                .device("one-award-an-occasion")
                .counted((soldier, tally) -> count(soldier, tally, clusters, occasions))
                .pointedAtWhen(soldier -> !soldier.facts().every(Wound.class).isEmpty()
                        || frostbite(soldier).speaks()
                        || soldier.facts().every(HospitalAdmission.class).stream()
                                .anyMatch(
                                        admission -> admission.cause() != Evidence.HospitalAdmission.Cause.NON_BATTLE))
                .expectedWhen(soldier -> !soldier.facts().every(Wound.class).isEmpty()
                        || !soldier.facts().every(HospitalAdmission.class).isEmpty())
                .rule();
    }

    private static Answer killed(Dossier soldier) {
        var death = soldier.death();
        if (death.isEmpty()) {
            return Answer.no();
        }
        var basis = death.get().basis();
        return switch (death.get().manner()) {
            case KILLED_IN_ACTION -> Answer.met(() -> "killed in action" + on(death.get()), basis);
            case DIED_OF_WOUNDS -> Answer.met(() -> "died of wounds" + on(death.get()), basis);
            case FINDING_OF_DEATH ->
                Answer.usually(
                        FactKind.DEATH, () -> "by enemy action (a finding of death is all that is shown)", basis);
            case NOT_STATED -> Answer.open(FactKind.DEATH, () -> "by enemy action", basis);
            case DIED_IN_CAPTIVITY, NON_BATTLE -> Answer.no();
        };
    }

    private static String on(Death death) {
        return death.date().map(date -> " on " + InWords.date(date)).orElse("");
    }

    private static Answer diedInCaptivity(Dossier soldier) {
        return soldier.death()
                .filter(death -> death.manner() == Evidence.Death.Manner.DIED_IN_CAPTIVITY)
                .map(death -> Answer.met(() -> "died a prisoner" + on(death), death.basis()))
                .orElse(Answer.no());
    }

    private static Answer wounded(Dossier soldier) {
        var orders = soldier.orders(AWARD);
        if (!orders.isEmpty() && !perhapsForMerit(soldier)) {
            return Answer.met(() -> "the order was given for it", orders.get(0).basis());
        }
        var battle = admissions(soldier, Evidence.HospitalAdmission.Cause.BATTLE);
        if (!battle.isEmpty()) {
            return Answer.met(
                    () -> "the admission is marked as a battle casualty",
                    battle.get(0).basis());
        }
        var wounds = wounds(soldier);
        for (var wound : wounds) {
            if (!inCaptivity(soldier, wound)) {
                return Answer.met(() -> "the paper lists the wound under wounds received in action", wound.basis());
            }
        }
        var claim = soldier.claims(AWARD).sure();
        if (claim.isPresent()) {
            return soldier.noneTyped(Entry.WOUNDS)
                    ? Answer.open(
                            FactKind.WOUND_BY_ENEMY,
                            () -> "a wound, though the entry of wounds says none",
                            claim.get().basis())
                    : Answer.usually(
                            FactKind.WOUND_BY_ENEMY,
                            () -> "a wound on a day and at a place to be found",
                            claim.get().basis());
        }
        if (soldier.claims(AWARD).any()) {
            return Answer.open(
                    FactKind.WOUND_BY_ENEMY,
                    () -> "a wound",
                    soldier.claims(AWARD).bases());
        }
        for (var admission : admissions(soldier, Evidence.HospitalAdmission.Cause.NOT_STATED)) {
            if (!matches(DISEASE, admission.diagnosis())
                    && !matches(TRENCH_FOOT, admission.diagnosis())
                    && !matches(COLD, admission.diagnosis())) {
                return Answer.open(
                        FactKind.WOUND_BY_ENEMY, () -> "the injury of the hospital record", admission.basis());
            }
        }
        return soldier.facts().supplied(Entry.WOUNDS)
                ? Answer.notMet(() -> "the entry of wounds shows none, and nothing else does")
                : Answer.open(FactKind.WOUND_BY_ENEMY, () -> "a wound");
    }

    private static Answer treated(Dossier soldier) {
        var orders = soldier.orders(AWARD);
        if (!orders.isEmpty()) {
            return Answer.met(() -> "the order was given on it", orders.get(0).basis());
        }
        for (var admission : soldier.every(HospitalAdmission.class)) {
            if (admission.cause() != Evidence.HospitalAdmission.Cause.NON_BATTLE) {
                return Answer.met(() -> "admitted to hospital" + describe(admission), admission.basis());
            }
        }
        var claim = soldier.claims(AWARD).sure();
        if (claim.isPresent()) {
            return Answer.met(
                    () -> "the award on the paper was not given without",
                    claim.get().basis());
        }
        var wounds = soldier.every(Wound.class);
        return wounds.isEmpty()
                ? Answer.open(FactKind.MEDICAL_TREATMENT, () -> "the wound")
                : Answer.usually(
                        FactKind.MEDICAL_TREATMENT,
                        () -> describe(wounds.get(0)),
                        wounds.get(0).basis());
    }

    private static Answer treatedForTheCold(Dossier soldier) {
        for (var admission : soldier.every(HospitalAdmission.class)) {
            if (matches(COLD, admission.diagnosis())) {
                return Answer.met(() -> "admitted to hospital" + describe(admission), admission.basis());
            }
        }
        return treated(soldier);
    }

    private static Answer onRecord(Dossier soldier) {
        var treated = treated(soldier);
        if (treated.isMet()) {
            return treated;
        }
        var wounds = wounds(soldier);
        return wounds.isEmpty()
                ? Answer.open(FactKind.MEDICAL_TREATMENT, () -> "the wound")
                : Answer.met(
                        () -> "the wound stands on the paper", wounds.get(0).basis());
    }

    private static Answer frostbite(Dossier soldier) {
        for (var wound : soldier.every(Wound.class)) {
            if (cold(wound)) {
                return Answer.open(
                        FactKind.COMBAT_DUTY,
                        () -> "in actual combat when the cold hurt him, and severely",
                        wound.basis());
            }
        }
        for (var admission : soldier.every(HospitalAdmission.class)) {
            if (matches(COLD, admission.diagnosis())) {
                return Answer.open(
                        FactKind.COMBAT_DUTY,
                        () -> "in actual combat when the cold hurt him, and severely",
                        admission.basis());
            }
        }
        return Answer.no();
    }

    private static Answer woundedInCaptivity(Dossier soldier) {
        for (var wound : wounds(soldier)) {
            if (inCaptivity(soldier, wound)) {
                return Answer.met(() -> "wounded while a prisoner", wound.basis());
            }
        }
        return Answer.no();
    }

    private static Answer forMerit(Dossier soldier) {
        var ordered = OrderedAward.earliestOrder(soldier, AWARD);
        if (ordered.isEmpty() || ordered.get() > MERIT_ENDED) {
            return Answer.no();
        }
        return OrderedAward.inOrders(soldier, AWARD, "Purple Heart");
    }

    /** Ordered while merit was still a ground, with no wound on the paper. */
    private static boolean perhapsForMerit(Dossier soldier) {
        return OrderedAward.earliestOrder(soldier, AWARD)
                        .filter(day -> day <= MERIT_ENDED)
                        .isPresent()
                && wounds(soldier).isEmpty();
    }

    private static Answer onlyTrenchFoot(Dossier soldier) {
        if (!wounds(soldier).isEmpty() || hasProof(soldier)) {
            return Answer.no();
        }
        for (var wound : soldier.every(Wound.class)) {
            if (matches(TRENCH_FOOT, Optional.of(wound.asTyped()))) {
                return Answer.met(() -> "\"" + wound.asTyped() + "\"", wound.basis());
            }
        }
        for (var admission : soldier.every(HospitalAdmission.class)) {
            if (matches(TRENCH_FOOT, admission.diagnosis())) {
                return Answer.met(() -> "the diagnosis is trench foot", admission.basis());
            }
        }
        return Answer.no();
    }

    private static Answer onlyAccident(Dossier soldier) {
        if (!wounds(soldier).isEmpty() || hasProof(soldier)) {
            return Answer.no();
        }
        HospitalAdmission found = null;
        for (var admission : soldier.every(HospitalAdmission.class)) {
            boolean disease = matches(DISEASE, admission.diagnosis());
            if (matches(COLD, admission.diagnosis())
                    || (!disease && admission.cause() == Evidence.HospitalAdmission.Cause.NOT_STATED)) {
                return Answer.no();
            }
            found = admission;
        }
        if (found == null) {
            return Answer.no();
        }
        var admission = found;
        return Answer.met(
                () -> matches(DISEASE, admission.diagnosis())
                        ? "disease" + describe(admission)
                        : "the record marks it as no battle casualty" + describe(admission),
                admission.basis());
    }

    /** An order, an award on the paper, a battle admission or a death that speaks for it whatever else is on record. */
    private static boolean hasProof(Dossier soldier) {
        return !soldier.orders(AWARD).isEmpty()
                || soldier.claims(AWARD).any()
                || !admissions(soldier, Evidence.HospitalAdmission.Cause.BATTLE).isEmpty()
                || soldier.death()
                        .filter(death -> death.manner() != Evidence.Death.Manner.NON_BATTLE)
                        .isPresent();
    }

    private static List<HospitalAdmission> admissions(Dossier soldier, Evidence.HospitalAdmission.Cause cause) {
        return soldier.every(HospitalAdmission.class).stream()
                .filter(admission -> admission.cause() == cause)
                .filter(admission ->
                        !matches(TRENCH_FOOT, admission.diagnosis()) && !matches(COLD, admission.diagnosis()))
                .toList();
    }

    /** Wounds of the paper that are not the cold. */
    private static List<Wound> wounds(Dossier soldier) {
        var all = soldier.every(Wound.class);
        if (all.isEmpty()) {
            return all;
        }
        return all.stream()
                .filter(wound -> !cold(wound) && !matches(TRENCH_FOOT, Optional.of(wound.asTyped())))
                .toList();
    }

    private static boolean cold(Wound wound) {
        return matches(COLD, Optional.of(wound.asTyped()));
    }

    private static boolean matches(Pattern pattern, Optional<String> words) {
        return words.isPresent()
                && pattern.matcher(words.get().toLowerCase(Locale.ROOT)).find();
    }

    private static boolean inCaptivity(Dossier soldier, Wound wound) {
        if (wound.date().isEmpty()) {
            return false;
        }
        for (var stay : soldier.abroad()) {
            if (stay.kind() == Abroad.Kind.CAPTIVITY
                    && stay.there().firstLatest()
                            < wound.date().get().earliest().toEpochDay()
                    && stay.there().lastLatest() >= wound.date().get().latest().toEpochDay()) {
                return true;
            }
        }
        return false;
    }

    private static String describe(Wound wound) {
        return "the wound"
                + wound.date().map(date -> " of " + InWords.date(date)).orElse("")
                + wound.place().map(place -> " at " + place).orElse("");
    }

    private static String describe(HospitalAdmission admission) {
        return admission.date().map(date -> " on " + InWords.date(date)).orElse("")
                + admission.diagnosis().map(diagnosis -> ": " + diagnosis).orElse("");
    }

    private static void count(Dossier soldier, Tally tally, LawClause clusters, LawClause occasions) {
        var found = occasions(soldier);
        var claims = soldier.claims(AWARD);
        int seen = OrderedAward.ordersSeen(soldier, AWARD);
        int awards = Math.max(1, Math.max(found.size(), Math.max(seen, claims.awards())));
        tally.count(awards);
        OrderedAward.clusters(awards, tally, clusters);
        if (found.size() > 1) {
            tally.because(occasions, Answer.met(() -> String.join("; ", found)));
        }
        if (claims.any() && awards > claims.awards()) {
            tally.shortOnPaper();
            tally.caution(() -> "The paper lists more wounds than awards: have the treatment of each shown.");
            if (seen < awards) {
                tally.further(
                        FactKind.MEDICAL_TREATMENT, () -> "each of the wounds (" + String.join("; ", found) + ")");
            }
        }
        if (claims.awards() > Math.max(1, Math.max(found.size(), seen))) {
            tally.caution(() -> "The paper claims %d awards; wounds or orders are shown for %d."
                    .formatted(claims.awards(), Math.max(found.size(), seen)));
        }
        if (claims.any() && found.isEmpty() && seen == 0) {
            tally.caution(() -> "No wound is shown beside the award: ask for the day and the place.");
        }
        if (soldier.claims(AWARD).devices(Device.BRONZE_SERVICE_STAR) > 0) {
            tally.caution(() -> "A star on the Purple Heart is a clerk's slip for an oak leaf cluster.");
        }
    }

    /** Each wound on another occasion, in words; a death of wounds belongs to the wound, admissions to the one before. */
    private static List<String> occasions(Dossier soldier) {
        var days = new ArrayList<Long>();
        var found = new ArrayList<String>();
        for (var wound : wounds(soldier)) {
            if (inCaptivity(soldier, wound) && !found.isEmpty()) {
                continue;
            }
            long day = wound.date().map(date -> date.earliest().toEpochDay()).orElse(Long.MIN_VALUE);
            if (!days.contains(day)
                    || day == Long.MIN_VALUE && wound.place().isPresent() && !found.contains(describe(wound))) {
                days.add(day);
                found.add(describe(wound));
            }
        }
        for (var admission : admissions(soldier, Evidence.HospitalAdmission.Cause.BATTLE)) {
            var day = admission.date().map(date -> date.earliest().toEpochDay());
            boolean known = day.isEmpty()
                    ? !found.isEmpty()
                    : days.stream()
                            .anyMatch(wound -> Math.abs(day.get() - wound) <= SAME_WOUND || wound == Long.MIN_VALUE);
            if (!known) {
                days.add(day.orElse(Long.MIN_VALUE));
                found.add("the battle casualty" + describe(admission));
            }
        }
        soldier.death().ifPresent(death -> {
            long day = death.date().map(date -> date.earliest().toEpochDay()).orElse(Long.MIN_VALUE);
            boolean another = death.manner() == Evidence.Death.Manner.KILLED_IN_ACTION && !days.contains(day);
            boolean only = death.manner() == Evidence.Death.Manner.DIED_OF_WOUNDS && found.isEmpty();
            if (another || only) {
                found.add("his death" + on(death));
            }
        });
        return found;
    }
}
