package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.honorsdue.determination.dossier.Abroad;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.Clause;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Device;

/**
 * The Philippine Defense, Liberation and Independence Ribbons. Authority: DoD 1348.33-M and the text of 32 CFR part 578
 * as reported; the ribbons only, by DA Circular 59 of 8 March 1948.
 *
 * <p>A campaign star for the islands shows an engagement. The texts differ on the stars of the Liberation Ribbon: the
 * DoD manual, read, counts three conditions (first landings, an engagement, thirty days), the Army text, from memory,
 * four (engagements on Leyte and elsewhere apart). The manual is followed; the finding says when the other would give
 * one star more.
 */
final class PhilippineAwards {
    private static final String DEFENSE = "philippine-defense-ribbon";
    private static final String LIBERATION = "philippine-liberation-ribbon";
    private static final String INDEPENDENCE = "philippine-independence-ribbon";

    private static final long DEFENSE_BEGAN = LocalDate.of(1941, 12, 8).toEpochDay();
    private static final long DEFENSE_ENDED = LocalDate.of(1942, 6, 15).toEpochDay();
    private static final long LIBERATION_BEGAN = LocalDate.of(1944, 10, 17).toEpochDay();
    private static final long FIRST_LANDINGS_ENDED = LocalDate.of(1944, 10, 20).toEpochDay();
    private static final long LIBERATION_ENDED = LocalDate.of(1945, 9, 3).toEpochDay();
    private static final long INDEPENDENCE_DAY = LocalDate.of(1946, 7, 4).toEpochDay();
    private static final long WAR_BEGAN = LocalDate.of(1941, 12, 7).toEpochDay();
    private static final long CORREGIDOR_FELL = LocalDate.of(1942, 5, 10).toEpochDay();
    private static final long LUZON_ENDED = LocalDate.of(1945, 7, 4).toEpochDay();

    private static final Set<String> LEYTE = Set.of("AP-LEY");
    private static final Set<String> OTHER_ISLANDS = Set.of("AP-LUZ", "AP-SPH");
    private static final Set<String> DEFENDERS = Set.of("AP-PHI");

    private PhilippineAwards() {}

    static List<Rule> rules(Statutes law) {
        return List.of(defense(law), liberation(law), independence(law));
    }

    private static Rule defense(Statutes law) {
        var draft = law.award(DEFENSE);
        var star = draft.law("star-for-both");
        var engagement = draft.clause("engagement", PhilippineAwards::defended);
        var thirty = draft.clause("thirty-days", soldier -> thirtyDays(soldier, DEFENSE_BEGAN, DEFENSE_ENDED));
        return draft.route("In an engagement", engagement)
                .route("Thirty days there", thirty)
                .told("window", "Asked together with the engagement and with the days.")
                .device("star-for-both")
                .counted((soldier, tally) -> {
                    if (engagement.about(soldier).isMet()
                            && thirty.about(soldier).isMet()) {
                        tally.worn(Device.BRONZE_SERVICE_STAR, 1, List.of());
                        tally.because(star, Answer.met(() -> "both conditions are met"));
                        if (soldier.claims(DEFENSE).any() && stars(soldier, DEFENSE) == 0) {
                            tally.shortOnPaper();
                        }
                    }
                })
                .pointedAtWhen(soldier -> inTheIslands(soldier, DEFENSE_BEGAN, DEFENSE_ENDED))
                .expectedWhen(soldier -> false)
                .rule();
    }

    private static Rule liberation(Statutes law) {
        var draft = law.award(LIBERATION);
        var star = draft.law("star-for-further-condition");
        var landings = draft.clause("first-landings", PhilippineAwards::firstLandings);
        var leyte = draft.clause("leyte-engagement", soldier -> campaign(soldier, LEYTE, LIBERATION));
        var others = draft.clause("other-engagement", soldier -> campaign(soldier, OTHER_ISLANDS, LIBERATION));
        var thirty = draft.clause("thirty-days", soldier -> thirtyDays(soldier, LIBERATION_BEGAN, LIBERATION_ENDED));
        return draft.route("In the first landings", landings)
                .route("In an engagement on Leyte", leyte)
                .route("In an engagement on other islands", others)
                .route("Thirty days there", thirty)
                .told("window", "Asked together with each condition.")
                .device("star-for-further-condition")
                .counted((soldier, tally) -> {
                    boolean engaged = leyte.about(soldier).isMet()
                            || others.about(soldier).isMet();
                    boolean both = leyte.about(soldier).isMet()
                            && others.about(soldier).isMet();
                    var conditions = new ArrayList<Clause>();
                    if (landings.about(soldier).isMet()) {
                        conditions.add(landings);
                    }
                    if (engaged) {
                        conditions.add(leyte.about(soldier).isMet() ? leyte : others);
                    }
                    if (thirty.about(soldier).isMet()) {
                        conditions.add(thirty);
                    }
                    int due = Math.max(0, conditions.size() - 1);
                    int typed = stars(soldier, LIBERATION);
                    if (due > 0) {
                        tally.worn(Device.BRONZE_SERVICE_STAR, due, List.of());
                        tally.because(star, Answer.met(() -> conditions.size() + " conditions are met"));
                        if (soldier.claims(LIBERATION).any() && typed < due) {
                            tally.shortOnPaper();
                        }
                    } else if (typed > 0) {
                        tally.worn(Device.BRONZE_SERVICE_STAR, Math.min(typed, 2), List.of());
                        tally.because(
                                star,
                                Answer.usually(
                                        FactKind.STATION,
                                        () -> "in the Philippines for thirty days",
                                        soldier.claims(LIBERATION).bases()));
                        tally.caution(() -> "The star is on the paper; the further condition behind it is not shown.");
                    }
                    if (both) {
                        tally.caution(
                                () ->
                                        "Engagements on Leyte and on other islands count as one here (DoD 1348.33-M); the Army text, from memory, counts two and gives one star more.");
                    }
                })
                .pointedAtWhen(soldier -> inTheIslands(soldier, LIBERATION_BEGAN, LIBERATION_ENDED))
                .rule();
    }

    private static Rule independence(Statutes law) {
        var draft = law.award(INDEPENDENCE);
        return draft.route(
                        "Present on 4 July 1946",
                        draft.clause("present-on-independence-day", PhilippineAwards::onIndependenceDay))
                .route(
                        "Holder of both other ribbons",
                        draft.clause("both-other-ribbons", PhilippineAwards::bothRibbons))
                .told("first-rule-on-record", "An old claim is an order or the paper's own entry.")
                .pointedAtWhen(soldier -> false)
                .rule();
    }

    private static int stars(Dossier soldier, String award) {
        return soldier.claims(award).devices(Device.BRONZE_SERVICE_STAR)
                + soldier.claims(award).devices(Device.STAR_UNSPECIFIED);
    }

    /** On Bataan or in the Manila Bay forts, taken prisoner there, or with the campaign on the paper. */
    private static Answer defended(Dossier soldier) {
        for (var stay : soldier.abroad()) {
            String words = stay.destination().toLowerCase(Locale.ROOT);
            boolean fort = words.contains("bataan") || words.contains("corregidor") || words.contains("manila bay");
            boolean taken = stay.kind() == Abroad.Kind.CAPTIVITY
                    && stay.inPhilippines()
                    && stay.there().firstLatest() <= DEFENSE_ENDED;
            if ((fort || taken) && stay.there().surelyTouches(DEFENSE_BEGAN, DEFENSE_ENDED)) {
                return Answer.met(stay::inWords, stay.basis());
            }
        }
        return campaign(soldier, DEFENDERS, DEFENSE);
    }

    private static Answer campaign(Dossier soldier, Set<String> campaigns, String award) {
        for (var claim : soldier.campaigns()) {
            if (campaigns.contains(claim.campaign())) {
                return Answer.met(() -> "the paper names the campaign \"" + claim.asTyped() + "\"", claim.basis());
            }
        }
        for (var id : campaigns) {
            for (var credit : soldier.credits(id)) {
                var member = Membership.during(soldier, credit);
                if (member.isMet()) {
                    return member;
                }
            }
        }
        var claim = soldier.claims(award).sure();
        return claim.isPresent()
                ? Answer.usually(
                        FactKind.STATION,
                        () -> "in the Philippines in an engagement or for thirty days",
                        claim.get().basis())
                : Answer.no();
    }

    /** Captivity on the islands is counted too: he was there. */
    private static Answer thirtyDays(Dossier soldier, long first, long last) {
        Abroad possible = null;
        for (var stay : soldier.abroad()) {
            if (!stay.inPhilippines()) {
                continue;
            }
            // A prisoner was often shipped elsewhere, whatever destination the paper keeps.
            boolean perhapsElsewhere =
                    stay.kind() == Abroad.Kind.DESTINATION && capturedElsewhere(soldier, first, last);
            if (stay.there().sureDays(first, last) >= 30 && !perhapsElsewhere) {
                return Answer.met(stay::inWords, stay.basis());
            }
            if (stay.there().possibleDays(first, last) >= 30) {
                possible = stay;
            }
        }
        return possible == null
                ? Answer.no()
                : Answer.open(FactKind.STATION, () -> "in the Philippines for thirty days", possible.basis());
    }

    private static boolean capturedElsewhere(Dossier soldier, long first, long last) {
        for (var stay : soldier.abroad()) {
            if (stay.kind() == Abroad.Kind.CAPTIVITY
                    && !stay.inPhilippines()
                    && stay.there().mayTouch(first, last)) {
                return true;
            }
        }
        return false;
    }

    private static Answer firstLandings(Dossier soldier) {
        for (var assault : soldier.every(Assault.class)) {
            if (assault.date().isPresent()
                    && assault.date().get().earliest().toEpochDay() >= LIBERATION_BEGAN
                    && assault.date().get().latest().toEpochDay() <= FIRST_LANDINGS_ENDED
                    && (assault.campaign().equals("AP-LEY")
                            || assault.campaign().equalsIgnoreCase("Leyte"))) {
                return Answer.met(() -> "landed on Leyte", assault.basis());
            }
        }
        return Answer.no();
    }

    private static Answer onIndependenceDay(Dossier soldier) {
        for (var stay : soldier.abroad()) {
            if (stay.inPhilippines() && stay.there().surelyTouches(INDEPENDENCE_DAY, INDEPENDENCE_DAY)) {
                return Answer.met(stay::inWords, stay.basis());
            }
        }
        return Answer.no();
    }

    private static Answer bothRibbons(Dossier soldier) {
        var engaged = defended(soldier);
        var defense = engaged.isMet() ? engaged : thirtyDays(soldier, DEFENSE_BEGAN, DEFENSE_ENDED);
        var liberation =
                holds(soldier, LIBERATION, Set.of("AP-LEY", "AP-LUZ", "AP-SPH"), LIBERATION_BEGAN, LIBERATION_ENDED);
        if (defense.isMet() && liberation.isMet()) {
            return Answer.met(() -> "both ribbons are due");
        }
        if (soldier.claims(INDEPENDENCE).any()) {
            return Answer.usually(
                    FactKind.STATION,
                    () -> "in the Philippines on 4 July 1946, or holds both other ribbons",
                    soldier.claims(INDEPENDENCE).bases());
        }
        return Answer.no();
    }

    private static Answer holds(Dossier soldier, String award, Set<String> campaigns, long first, long last) {
        var engaged = campaign(soldier, campaigns, award);
        return engaged.isMet() ? engaged : thirtyDays(soldier, first, last);
    }

    /** In the islands, or in the theatre at the time under a word that names no island. */
    private static boolean inTheIslands(Dossier soldier, long first, long last) {
        for (var stay : soldier.abroad()) {
            if (stay.inPhilippines() && stay.there().mayTouch(first, last)) {
                return true;
            }
        }
        return false;
    }

    static Answer inFirstCitationPeriod(Dossier soldier) {
        return inPeriod(soldier, DEFENDERS, WAR_BEGAN, CORREGIDOR_FELL);
    }

    static Answer inSecondCitationPeriod(Dossier soldier) {
        return inPeriod(soldier, Set.of("AP-LEY", "AP-LUZ", "AP-SPH"), LIBERATION_BEGAN, LUZON_ENDED);
    }

    private static Answer inPeriod(Dossier soldier, Set<String> campaigns, long first, long last) {
        for (var stay : soldier.abroad()) {
            if (stay.inPhilippines() && stay.there().surelyTouches(first, last)) {
                return Answer.met(stay::inWords, stay.basis());
            }
        }
        for (var claim : soldier.campaigns()) {
            if (campaigns.contains(claim.campaign())) {
                return Answer.met(() -> "the paper names the campaign \"" + claim.asTyped() + "\"", claim.basis());
            }
        }
        return soldier.claims(UnitAwards.PHILIPPINE).any()
                ? Answer.open(FactKind.STATION, () -> "in the Philippines in the period")
                : Answer.no();
    }
}
