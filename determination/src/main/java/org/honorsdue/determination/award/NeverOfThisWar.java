package org.honorsdue.determination.award;

import java.time.LocalDate;
import java.util.List;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;

/**
 * What families ask for and service of 1939 to 1946 never earns: the National Defense Service Medal, the ribbons of
 * 1981, commemorative medals, and the Medal for Humane Action of the Berlin airlift. Each is answered with its reason;
 * a soldier whose own papers show service in the later period is left open and not refused.
 */
final class NeverOfThisWar {
    private static final long KOREA = LocalDate.of(1950, 6, 27).toEpochDay();
    private static final long AIRLIFT = LocalDate.of(1948, 6, 26).toEpochDay();
    private static final long AIRLIFT_ENDED = LocalDate.of(1949, 9, 30).toEpochDay();
    private static final long RIBBONS = LocalDate.of(1981, 8, 1).toEpochDay();

    private NeverOfThisWar() {}

    static List<Rule> rules(Statutes law) {
        return List.of(nationalDefense(law), ribbonsOf1981(law), commemoratives(law), humaneAction(law), oneMedal(law));
    }

    private static Rule nationalDefense(Statutes law) {
        var draft = law.award("national-defense-service-medal");
        return draft.route(
                        "Service from 27 June 1950",
                        draft.clause("first-period", soldier -> served(soldier, KOREA, Long.MAX_VALUE / 2)))
                .told("war-service-only", "Asked as service in the later period.")
                .rule();
    }

    private static Rule ribbonsOf1981(Statutes law) {
        var draft = law.award("post-1981-ribbons");
        return draft.bar(
                        "not-retroactive",
                        soldier -> served(soldier, RIBBONS, Long.MAX_VALUE / 2).reversed())
                .rule();
    }

    private static Rule commemoratives(Statutes law) {
        var draft = law.award("commemorative-medals");
        return draft.bar("not-authorized", soldier -> Answer.met(() -> "no order of the Army gives one"))
                .rule();
    }

    private static Rule humaneAction(Statutes law) {
        var draft = law.award("medal-for-humane-action");
        return draft.route(
                        "On the airlift", draft.clause("airlift", soldier -> served(soldier, AIRLIFT, AIRLIFT_ENDED)))
                .told("out-before-1948", "Asked as service in the days of the airlift.")
                .rule();
    }

    private static Rule oneMedal(Statutes law) {
        var draft = law.award("service-medal-duplication-rule");
        String why =
                "A general rule: each service medal has its own rule, and the named groups cover those of this war.";
        return draft.route(
                        "No award",
                        draft.clause(
                                "one-medal-a-period",
                                soldier -> Answer.notMet(() -> "a rule about awards, and no award")))
                .told("victory-and-campaign", why)
                .told("humane-action-and-occupation", why)
                .rule();
    }

    private static Answer served(Dossier soldier, long first, long last) {
        for (var duty : soldier.duties()) {
            if (duty.days().surelyTouches(first, last)) {
                return Answer.open(
                        FactKind.SERVICE_DATES,
                        () -> "in that period, on a paper this program does not read",
                        duty.basis());
            }
        }
        return Answer.notMet(() -> soldier.duties().isEmpty()
                ? "no service in that period is shown"
                : "his service ran from " + soldier.duties().get(0).days().inWords());
    }
}
