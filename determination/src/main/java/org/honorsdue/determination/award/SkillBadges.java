package org.honorsdue.determination.award;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.reference.paper.MilitarySpecialty;
import org.honorsdue.service.fact.Assault;
import org.honorsdue.service.fact.Device;
import org.honorsdue.service.fact.Qualification;
import org.honorsdue.service.fact.School;

/**
 * Badges of skill: Expert Infantryman, Parachutist, Glider, aviation, driver and mechanic, marksmanship. The entry of
 * the badge on the paper is the record that the regulations ask for.
 */
final class SkillBadges {
    private static final String EXPERT = "expert-infantryman-badge";
    private static final String PARACHUTIST = "parachutist-badge";
    private static final String GLIDER = "glider-badge";
    private static final String AVIATION = "aviation-badge";
    private static final String DRIVER = "driver-and-mechanic-badge";
    private static final String MARKSMANSHIP = "marksmanship-badge";

    private static final String THE_RECORD_DECIDED = "Whoever entered the badge in the record decided it.";

    private SkillBadges() {}

    static List<Rule> rules(Statutes law) {
        return List.of(
                expertInfantryman(law), parachutist(law), glider(law), aviation(law), driver(law), marksmanship(law));
    }

    private static Answer entered(Dossier soldier, String badge, String name) {
        var orders = soldier.orders(badge);
        if (!orders.isEmpty()) {
            return Answer.met(() -> "the order was seen", orders.get(0).basis());
        }
        var sure = soldier.claims(badge).sure();
        if (sure.isPresent()) {
            return Answer.met(() -> "the paper shows it", sure.get().basis());
        }
        return Answer.open(
                FactKind.QUALIFICATION,
                () -> "the " + name,
                soldier.claims(badge).bases());
    }

    private static Rule expertInfantryman(Statutes law) {
        var draft = law.award(EXPERT);
        var notBoth = draft.law("not-with-combat-badge");
        return draft.route(
                        "Entered in the record",
                        draft.clause("in-orders", soldier -> entered(soldier, EXPERT, "Expert Infantryman Badge")))
                .told("tests", THE_RECORD_DECIDED)
                .device("not-with-combat-badge")
                .counted((soldier, tally) -> {
                    if (soldier.claims(CombatBadges.INFANTRYMAN).any()
                            || !soldier.orders(CombatBadges.INFANTRYMAN).isEmpty()) {
                        tally.because(notBoth, Answer.met(() -> "he has both: wear the Combat Infantryman Badge"));
                    }
                })
                .rule();
    }

    private static Rule parachutist(Statutes law) {
        var draft = law.award(PARACHUTIST);
        var star = draft.law("combat-jump-star");
        return draft.route(
                        "Entered in the record",
                        draft.clause("in-records", soldier -> entered(soldier, PARACHUTIST, "Parachutist Badge")))
                .route(
                        "Completed the course",
                        draft.clause("course", soldier -> schooled(soldier, "parachut", "jump school")))
                .route("Made a combat jump", draft.clause("combat-jump", soldier -> assaulted(soldier, "para", "jump")))
                .device("combat-jump-star")
                .counted((soldier, tally) -> jumpStars(soldier, tally, star))
                .pointedAtWhen(soldier -> soldier.specialty(MilitarySpecialty::airborne))
                .rule();
    }

    private static void jumpStars(Dossier soldier, Tally tally, LawClause star) {
        var jumps = new ArrayList<String>();
        for (var assault : soldier.every(Assault.class)) {
            if (means(assault, "para", "jump")) {
                jumps.add(soldier.history().nameOf(assault));
            }
        }
        int typed = soldier.claims(PARACHUTIST).devices(Device.BRONZE_STAR_ON_PARACHUTIST_BADGE)
                + soldier.claims(PARACHUTIST).devices(Device.BRONZE_SERVICE_STAR)
                + soldier.claims(PARACHUTIST).devices(Device.STAR_UNSPECIFIED);
        int stars = Math.max(jumps.size(), typed);
        if (stars > 0) {
            tally.worn(Device.BRONZE_STAR_ON_PARACHUTIST_BADGE, Math.min(4, stars), jumps);
            tally.because(
                    star,
                    jumps.size() >= typed
                            ? Answer.met(
                                    () -> String.format(Locale.ROOT, "%d combat jumps", jumps.size()),
                                    soldier.every(Assault.class).stream()
                                            .map(Assault::basis)
                                            .toList())
                            : Answer.usually(
                                    FactKind.ASSAULT,
                                    () -> "each combat jump",
                                    soldier.claims(PARACHUTIST).bases()));
            if (soldier.claims(PARACHUTIST).any() && jumps.size() > typed) {
                tally.shortOnPaper();
            }
        }
        if (stars > 4) {
            tally.caution(() -> "For the fifth jump one gold star takes the place of the bronze ones.");
        }
    }

    private static Rule glider(Statutes law) {
        var draft = law.award(GLIDER);
        var noStar = draft.law("no-official-star");
        return draft.route("Completed the course", draft.clause("course", soldier -> gliderCourse(soldier)))
                .route("Made a combat landing", draft.clause("combat-landing", soldier -> assaulted(soldier, "glider")))
                .device("no-official-star")
                .counted((soldier, tally) -> {
                    var claims = soldier.claims(GLIDER);
                    if (claims.devices(Device.BRONZE_SERVICE_STAR) + claims.devices(Device.STAR_UNSPECIFIED) > 0) {
                        tally.because(noStar, Answer.notMet(() -> "the paper types a star", claims.bases()));
                    }
                })
                .rule();
    }

    private static Answer gliderCourse(Dossier soldier) {
        var school = schooled(soldier, "glider");
        return school.speaks() ? school : entered(soldier, GLIDER, "Glider Badge");
    }

    private static Rule aviation(Statutes law) {
        var draft = law.award(AVIATION);
        return draft.route(
                        "Rated",
                        draft.clause(
                                "rating",
                                soldier -> entered(soldier, AVIATION, "aeronautical rating or crew qualification")))
                .counted((soldier, tally) -> {
                    var kinds = new TreeSet<String>();
                    for (var claim : soldier.claims(AVIATION).all()) {
                        kind(claim.asTyped()).ifPresent(kinds::add);
                    }
                    if (!kinds.isEmpty()) {
                        tally.named("Aviation badge: " + String.join(", ", kinds));
                    } else {
                        tally.further(FactKind.QUALIFICATION, () -> "which aviation badge it is");
                    }
                    tally.count(Math.max(1, kinds.size()));
                })
                .pointedAtWhen(soldier -> soldier.airman() && soldier.specialty(MilitarySpecialty::aircrew))
                .rule();
    }

    /** Which badge the words mean. The words: common practice on papers, no source. */
    private static Optional<String> kind(String typed) {
        String words = typed.toLowerCase(Locale.ROOT);
        for (var known : List.of(
                List.of("gunner", "gnr", "gun"),
                List.of("bombardier", "bomb"),
                List.of("navigator", "nav"),
                List.of("flight engineer", "flt eng", "fl eng"),
                List.of("flight surgeon", "flt surg"),
                List.of("flight nurse", "flt nurse"),
                List.of("glider pilot", "gli plt", "gli pilot"),
                List.of("liaison pilot", "ln plt"),
                List.of("service pilot", "svc plt"),
                List.of("command pilot", "comd plt"),
                List.of("senior pilot", "sr plt"),
                List.of("observer", "obs"),
                List.of("pilot", "plt"),
                List.of("air crew member", "air crew", "aircrew", "crew"))) {
            for (var word : known) {
                if (words.contains(word)) {
                    String name = known.get(0);
                    return Optional.of(name.equals("gunner") ? "aerial gunner" : name);
                }
            }
        }
        return Optional.empty();
    }

    private static Rule driver(Statutes law) {
        var draft = law.award(DRIVER);
        var bars = draft.law("bars");
        return draft.route(
                        "Entered in the record",
                        draft.clause("in-records", soldier -> entered(soldier, DRIVER, "Driver and Mechanic Badge")))
                .told("skill", THE_RECORD_DECIDED)
                .device("bars")
                .counted((soldier, tally) -> {
                    var names = new TreeSet<String>();
                    for (var claim : soldier.claims(DRIVER).all()) {
                        String words = claim.asTyped().toLowerCase(Locale.ROOT);
                        if (words.contains("mech")) {
                            names.add("Mechanic");
                        }
                        if (words.contains("dr") || words.contains("mvd")) {
                            names.add("Driver");
                        }
                    }
                    tally.worn(Device.QUALIFICATION_BAR, names.size(), List.copyOf(names));
                    if (!names.isEmpty()) {
                        tally.because(bars, Answer.met(() -> String.join(", ", names)));
                    }
                })
                .rule();
    }

    private static Rule marksmanship(Statutes law) {
        var draft = law.award(MARKSMANSHIP);
        var latest = draft.law("latest-qualification");
        var bars = draft.law("bars");
        return draft.route("Qualified with a weapon", draft.clause("qualified", SkillBadges::qualified))
                .told(
                        "latest-qualification",
                        "Counted below: a later qualification with the same weapon takes the place of the earlier.")
                .told("post-war-bars", "A bar carries the weapon's name as the paper gives it.")
                .device("bars")
                .shownWhen(
                        soldier -> !soldier.facts().every(Qualification.class).isEmpty()
                                || soldier.claims(MARKSMANSHIP).any())
                .counted((soldier, tally) -> marksmanshipBars(soldier, tally, bars, latest))
                .rule();
    }

    private static Answer qualified(Dossier soldier) {
        var all = soldier.every(Qualification.class);
        if (!all.isEmpty()) {
            var qualification = all.get(0);
            return Answer.met(
                    () -> level(qualification.level())
                            + qualification
                                    .weapon()
                                    .map(weapon -> ", " + weapon)
                                    .orElse(""),
                    qualification.basis());
        }
        return entered(soldier, MARKSMANSHIP, "qualification with a weapon");
    }

    private static void marksmanshipBars(Dossier soldier, Tally tally, LawClause bars, LawClause latest) {
        var kept = new ArrayList<Qualification>();
        var all = soldier.every(Qualification.class);
        for (var qualification : all) {
            boolean replaced = all.stream().anyMatch(other -> replaces(other, qualification));
            if (!replaced && kept.stream().noneMatch(other -> same(other, qualification))) {
                kept.add(qualification);
            }
        }
        Map<Qualification.Level, TreeSet<String>> byLevel = new EnumMap<>(Qualification.Level.class);
        for (var qualification : kept) {
            var weapons = byLevel.computeIfAbsent(qualification.level(), level -> new TreeSet<>());
            qualification.weapon().ifPresent(weapons::add);
        }
        var names = new ArrayList<String>();
        var worn = new ArrayList<String>();
        for (int i = Qualification.Level.values().length - 1; i >= 0; i--) {
            var level = Qualification.Level.values()[i];
            var weapons = byLevel.get(level);
            if (weapons == null) {
                continue;
            }
            names.add(level(level));
            if (weapons.isEmpty()) {
                tally.further(
                        FactKind.QUALIFICATION,
                        () -> "the weapon of the %s badge, for its bar".formatted(level(level)));
            }
            for (var weapon : weapons) {
                worn.add(level(level) + ": " + weapon);
            }
        }
        if (!names.isEmpty()) {
            tally.named("Marksmanship badge: " + String.join(", ", names));
        }
        tally.count(Math.max(1, names.size()));
        tally.worn(Device.QUALIFICATION_BAR, worn.size(), worn);
        if (!worn.isEmpty()) {
            tally.because(bars, Answer.met(() -> String.join("; ", worn)));
        }
        if (kept.size() < all.size()) {
            tally.because(latest, Answer.met(() -> "a later qualification with the same weapon counts"));
        }
    }

    private static boolean replaces(Qualification later, Qualification earlier) {
        return later.weapon().isPresent()
                && later.weapon().equals(earlier.weapon())
                && later.date().isPresent()
                && earlier.date().isPresent()
                && later.date().get().earliest().isAfter(earlier.date().get().latest());
    }

    private static boolean same(Qualification one, Qualification other) {
        return one.level() == other.level() && one.weapon().equals(other.weapon());
    }

    private static String level(Qualification.Level level) {
        return switch (level) {
            case MARKSMAN -> "Marksman";
            case SHARPSHOOTER -> "Sharpshooter";
            case EXPERT -> "Expert";
        };
    }

    private static Answer schooled(Dossier soldier, String... words) {
        for (var school : soldier.every(School.class)) {
            String typed = school.school().toLowerCase(Locale.ROOT);
            for (var word : words) {
                if (typed.contains(word)) {
                    return Answer.usually(
                            FactKind.QUALIFICATION,
                            () -> "the badge of the course \"%s\"".formatted(school.school()),
                            school.basis());
                }
            }
        }
        return Answer.no();
    }

    private static Answer assaulted(Dossier soldier, String... means) {
        for (var assault : soldier.every(Assault.class)) {
            if (means(assault, means)) {
                return Answer.met(
                        () -> soldier.history().nameOf(assault)
                                + assault.means().map(how -> ", " + how).orElse(""),
                        assault.basis());
            }
        }
        return Answer.no();
    }

    private static boolean means(Assault assault, String... words) {
        if (assault.means().isEmpty()) {
            return false;
        }
        String means = assault.means().get().toLowerCase(Locale.ROOT);
        for (var word : words) {
            if (means.contains(word)) {
                return true;
            }
        }
        return false;
    }
}
