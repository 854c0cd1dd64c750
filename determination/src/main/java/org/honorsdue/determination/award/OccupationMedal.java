package org.honorsdue.determination.award;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.honorsdue.determination.dossier.Abroad;
import org.honorsdue.determination.dossier.Dossier;
import org.honorsdue.determination.dossier.InWords;
import org.honorsdue.determination.law.Answer;
import org.honorsdue.determination.law.Clause;
import org.honorsdue.determination.law.FactKind;
import org.honorsdue.determination.law.Rule;
import org.honorsdue.determination.law.Statutes;
import org.honorsdue.determination.law.Tally;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.OccupationArea;
import org.honorsdue.reference.history.Place;
import org.honorsdue.reference.law.LawClause;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Device;

/**
 * Army of Occupation Medal: thirty days running at a normal post while assigned to an army of occupation in a named
 * area. Authority: 32 CFR 578.46(a), 2006 revision; for Japan and Korea 578.48(a)(5) and (6), 1999 edition.
 *
 * <p>The gate: days up to 8 November 1945 in Europe, or up to 2 March 1946 in the Far East, count only for a man who had
 * earned the theatre medal by service before 9 May or 3 September 1945. A replacement who landed in June 1945 starts
 * counting on 9 November 1945.
 *
 * <p>How papers are taken. A place in a named area, from the paper or from evidence of a station, is taken as a normal
 * post while assigned. A theatre word such as ETO names no area: with thirty days there after the surrender and the
 * Central Europe campaign behind him it is presumed, for the unit then stood in Germany or Austria (the records center
 * has issued it on less: docket AR2002071921); without that campaign it stays open. France, Belgium and Britain are no
 * occupied areas.
 */
final class OccupationMedal {
    private static final String AWARD = "army-of-occupation-medal";
    private static final int THIRTY_DAYS = 30;

    private OccupationMedal() {}

    /** One side of the world: its theatre, its gate, its clasp. */
    private enum Side {
        EUROPE(Theater.EAME, Place.Occupation.GERMANY, "in Germany, Austria or another occupied area of Europe"),
        FAR_EAST(
                Theater.ASIATIC_PACIFIC,
                Place.Occupation.JAPAN,
                "in Japan, Okinawa, Korea or another occupied area of the Far East");

        private final Theater theater;
        private final Place.Occupation clasp;
        private final String areas;

        Side(Theater theater, Place.Occupation clasp, String areas) {
            this.theater = theater;
            this.clasp = clasp;
            this.areas = areas;
        }
    }

    static Rule rule(Statutes law) {
        var draft = law.award(AWARD);
        var germany = draft.law("germany-clasp");
        var japan = draft.law("japan-clasp");
        area(draft, Side.EUROPE, "Germany", "germany");
        area(draft, Side.EUROPE, "Berlin", "berlin");
        area(draft, Side.EUROPE, "Austria", "austria");
        area(draft, Side.EUROPE, "Northeastern Italy", "italy");
        area(draft, Side.FAR_EAST, "Japan", "japan");
        area(draft, Side.FAR_EAST, "Korea", "korea");
        return draft.route("Europe, the place not shown", somewhere(draft, Side.EUROPE))
                .route("Far East, the place not shown", somewhere(draft, Side.FAR_EAST))
                .told("assigned", "A place on the paper or a station in evidence is taken as duty while assigned.")
                .told("normal-post", "A place on the paper or a station in evidence is taken as a normal post.")
                .told("liberated-countries", "Only days in a named area are counted.")
                .told("temporary-duty", "A place on the paper or a station in evidence is taken as a normal post.")
                .device("germany-clasp")
                .device("japan-clasp")
                .told("berlin-airlift-device", "The airlift lies outside the forms this program reads.")
                .counted((soldier, tally) -> {
                    clasp(soldier, tally, Side.EUROPE, Device.GERMANY_CLASP, germany);
                    clasp(soldier, tally, Side.FAR_EAST, Device.JAPAN_CLASP, japan);
                })
                .pointedAtWhen(soldier -> laterPart(soldier, Side.EUROPE).isUnknown()
                        || laterPart(soldier, Side.FAR_EAST).isUnknown()
                        || soldier.abroad().stream().anyMatch(OccupationMedal::inNamedArea))
                .expectedWhen(soldier -> soldier.abroad().stream()
                        .anyMatch(stay -> stay.kind() != Abroad.Kind.CAPTIVITY
                                && (stay.surelyIn(Theater.EAME)
                                                && stay.there().mayTouch(gate(soldier, Side.EUROPE), Long.MAX_VALUE)
                                        || inNamedArea(stay)
                                                && stay.there().mayTouch(gate(soldier, Side.EUROPE), Long.MAX_VALUE))))
                .rule();
    }

    private static void area(Statutes.Draft draft, Side side, String title, String area) {
        draft.route(
                title,
                draft.clause(area, soldier -> atPlace(soldier, area)),
                draft.clause("thirty-days", soldier -> thirtyDays(soldier, side, area)),
                gateClause(draft, side));
    }

    private static Clause[] somewhere(Statutes.Draft draft, Side side) {
        return new Clause[] {
            draft.clause("named-area", soldier -> laterPart(soldier, side)),
            draft.clause("thirty-days", soldier -> thirtyDaysSomewhere(soldier, side)),
            gateClause(draft, side)
        };
    }

    private static Clause gateClause(Statutes.Draft draft, Side side) {
        return draft.clause(
                side == Side.EUROPE ? "gate-europe" : "gate-far-east", soldier -> gateAnswer(soldier, side));
    }

    /** The first day on which duty can count on that side. */
    private static long gate(Dossier soldier, Side side) {
        return areas(soldier, side).get(0).gated().first().toEpochDay();
    }

    private static long gateEnds(Dossier soldier, Side side) {
        return areas(soldier, side).get(0).gated().last().toEpochDay();
    }

    private static List<OccupationArea> areas(Dossier soldier, Side side) {
        return soldier.history().occupationAreas(side.clasp);
    }

    /** Which named area a place lies in: by the place itself, else by the clasp that the tables give it. */
    private static String areaOf(Abroad stay) {
        if (stay.kind() == Abroad.Kind.CAPTIVITY || stay.place().isEmpty()) {
            return "";
        }
        String name = stay.place().get().name().toLowerCase(Locale.ROOT);
        return switch (name) {
            case "berlin" -> "berlin";
            case "austria", "vienna", "salzburg", "linz" -> "austria";
            case "italy", "trieste", "gorizia", "udine" -> "italy";
            case "korea", "seoul", "pusan" -> "korea";
            default ->
                switch (stay.place().get().occupation()) {
                    case GERMANY -> "germany";
                    case JAPAN -> "japan";
                    case NONE, DEPENDS -> "";
                };
        };
    }

    private static boolean inNamedArea(Abroad stay) {
        return !areaOf(stay).isEmpty();
    }

    private static Answer atPlace(Dossier soldier, String area) {
        for (var stay : soldier.abroad()) {
            if (areaOf(stay).equals(area)) {
                if (stay.occupation() == Place.Occupation.DEPENDS) {
                    return Answer.open(
                            FactKind.STATION,
                            () -> "in Venezia Giulia, Zara or Udine, or with a unit named in DA GO 4, 1947",
                            stay.basis());
                }
                return Answer.met(stay::inWords, stay.basis());
            }
        }
        return Answer.no();
    }

    private static Answer thirtyDays(Dossier soldier, Side side, String area) {
        var dates = soldier.history().occupationArea(area);
        if (dates.isEmpty()) {
            return Answer.no();
        }
        long from = countsFrom(soldier, side);
        long to = dates.get().dates().last().toEpochDay();
        var there = new ArrayList<Abroad>();
        for (var stay : soldier.abroad()) {
            if (areaOf(stay).equals(area)) {
                there.add(stay);
            }
        }
        return enough(there, from, to);
    }

    private static Answer enough(List<Abroad> there, long from, long to) {
        if (there.isEmpty()) {
            return Answer.no();
        }
        var bases = there.stream().map(Abroad::basis).toList();
        long sure = longestRun(there, from, to, true);
        if (sure >= THIRTY_DAYS) {
            return Answer.met(() -> "%d days running from %s on".formatted(sure, InWords.day(from)), bases);
        }
        long possible = longestRun(there, from, to, false);
        return possible < THIRTY_DAYS
                ? Answer.notMet(() -> "%d days at most from %s on".formatted(possible, InWords.day(from)), bases)
                : Answer.open(
                        FactKind.STATION, () -> "there for thirty days running after " + InWords.day(from - 1), bases);
    }

    /** The longest unbroken run of days inside the span; stays that touch or follow at once are one run. */
    private static long longestRun(List<Abroad> there, long from, long to, boolean sure) {
        var runs = new ArrayList<long[]>();
        for (var stay : there) {
            var days = stay.there();
            long first = Math.max(from, sure ? days.firstLatest() : days.firstEarliest());
            long last = Math.min(to, sure ? days.lastEarliest() : days.lastLatest());
            if (last >= first) {
                runs.add(new long[] {first, last});
            }
        }
        runs.sort(Comparator.comparingLong(run -> run[0]));
        long longest = 0;
        long begun = Long.MIN_VALUE;
        long reached = Long.MIN_VALUE;
        for (var run : runs) {
            if (reached == Long.MIN_VALUE || run[0] > reached + 1) {
                begun = run[0];
            }
            reached = Math.max(reached, run[1]);
            longest = Math.max(longest, reached - begun + 1);
        }
        return longest;
    }

    /** The day from which his duty counts: the surrender if the gate is passed or may be, else the day after it closes. */
    private static long countsFrom(Dossier soldier, Side side) {
        return throughTheGate(soldier, side).isNotMet() ? gateEnds(soldier, side) + 1 : gate(soldier, side);
    }

    /** Whether the theatre medal was earned by service before the surrender on that side. */
    private static Answer throughTheGate(Dossier soldier, Side side) {
        long gate = gate(soldier, side);
        long began = soldier.history().window(side.theater).first();
        Abroad unsure = null;
        for (var stay : soldier.abroad()) {
            if (stay.surelyIn(side.theater) && stay.there().surelyTouches(began, gate - 1)) {
                return Answer.met(
                        () -> "in the theatre before %s: %s".formatted(InWords.day(gate), stay.inWords()),
                        stay.basis());
            }
            if (stay.mayBeIn(side.theater) && stay.there().mayTouch(began, gate - 1)) {
                unsure = stay;
            }
        }
        for (var claim : soldier.campaigns()) {
            var fought = soldier.history().campaign(claim.campaign());
            if (fought.isPresent()
                    && fought.get().campaign().theater() == side.theater
                    && fought.get().ground().first() < gate
                    && (soldier.overseasUnknown() || unsure != null)) {
                return Answer.met(() -> "in the campaign \"" + claim.asTyped() + "\"", claim.basis());
            }
        }
        if (unsure != null || soldier.overseasUnknown()) {
            var bases = unsure == null ? List.<Basis>of() : List.of(unsure.basis());
            return Answer.open(FactKind.OVERSEAS_DATES, () -> "in the theatre before " + InWords.day(gate), bases);
        }
        return Answer.notMet(() -> "not in the theatre before " + InWords.day(gate));
    }

    /** A man who missed the gate is not barred: his days count from the day after it closes. */
    private static Answer gateAnswer(Dossier soldier, Side side) {
        var through = throughTheGate(soldier, side);
        return through.isNotMet()
                ? Answer.met(() -> "not in the theatre before %s, so his days count only from %s on"
                        .formatted(InWords.day(gate(soldier, side)), InWords.day(gateEnds(soldier, side) + 1)))
                : through;
    }

    /** Stays whose destination is only a theatre word, running on after the surrender. */
    private static List<Abroad> wordsOnly(Dossier soldier, Side side) {
        var found = new ArrayList<Abroad>();
        long gate = gate(soldier, side);
        for (var stay : soldier.abroad()) {
            boolean namesNoPlace = stay.occupation() == Place.Occupation.DEPENDS && !inNamedArea(stay);
            if (stay.kind() == Abroad.Kind.DESTINATION
                    && namesNoPlace
                    && stay.surelyIn(side.theater)
                    && stay.there().mayTouch(gate, Long.MAX_VALUE)) {
                found.add(stay);
            }
        }
        return found;
    }

    private static Answer thirtyDaysSomewhere(Dossier soldier, Side side) {
        long from = countsFrom(soldier, side);
        long to = areas(soldier, side).get(0).dates().last().toEpochDay();
        var words = wordsOnly(soldier, side);
        var answer = enough(words, from, to);
        if (answer.isNotMet() || words.isEmpty()) {
            return answer;
        }
        var elsewhere = outsideTheAreas(soldier);
        if (!elsewhere.isEmpty() && longestGap(words, elsewhere, from, to) < THIRTY_DAYS) {
            return Answer.notMet(
                    () -> "the days after the surrender were spent elsewhere: "
                            + elsewhere.get(0).inWords(),
                    elsewhere.stream().map(Abroad::basis).toList());
        }
        return answer;
    }

    /** Stations known to lie outside every named area. */
    private static List<Abroad> outsideTheAreas(Dossier soldier) {
        return soldier.abroad().stream()
                .filter(stay -> stay.kind() == Abroad.Kind.STATION && !inNamedArea(stay))
                .filter(stay -> stay.place().isPresent() && stay.occupation() == Place.Occupation.NONE)
                .toList();
    }

    /** The longest run of days of the theatre stays that no station elsewhere surely covers. */
    private static long longestGap(List<Abroad> words, List<Abroad> elsewhere, long from, long to) {
        long longest = 0;
        for (var stay : words) {
            long run = 0;
            long last = Math.min(to, stay.there().lastLatest());
            for (long day = Math.max(from, stay.there().firstEarliest()); day <= last; day++) {
                long here = day;
                boolean known = elsewhere.stream()
                        .anyMatch(station -> station.there().firstLatest() <= here
                                && station.there().lastEarliest() >= here);
                run = known ? 0 : run + 1;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }

    private static Answer laterPart(Dossier soldier, Side side) {
        var words = wordsOnly(soldier, side);
        if (words.isEmpty() || thirtyDaysSomewhere(soldier, side).isNotMet()) {
            return Answer.no();
        }
        var basis = words.get(0).basis();
        long first = gate(soldier, side);
        long last = gateEnds(soldier, side);
        boolean unitElsewhere = UnitPlaces.outsideOnly(soldier, first, last);
        for (var claim : soldier.campaigns()) {
            if (claim.campaign().equals("EA-CEN")
                    && side == Side.EUROPE
                    && !unitElsewhere
                    && outsideTheAreas(soldier).isEmpty()) {
                return Answer.usually(
                        FactKind.STATION,
                        () -> side.areas + " for thirty days running" + UnitPlaces.inWords(soldier, first, last),
                        basis,
                        claim.basis());
            }
        }
        if (UnitPlaces.readInOccupiedArea(soldier, first, last)) {
            return Answer.usually(
                    FactKind.STATION,
                    () -> side.areas + " for thirty days running" + UnitPlaces.inWords(soldier, first, last),
                    basis);
        }
        return Answer.open(
                FactKind.STATION,
                () -> side.areas + " for thirty days running" + UnitPlaces.inWords(soldier, first, last),
                basis);
    }

    private static void clasp(Dossier soldier, Tally tally, Side side, Device device, LawClause law) {
        for (var area : areas(soldier, side)) {
            if (atPlace(soldier, area.id()).isMet()
                    && thirtyDays(soldier, side, area.id()).isMet()) {
                String name = area.id().substring(0, 1).toUpperCase(Locale.ROOT)
                        + area.id().substring(1);
                tally.worn(device, 1, List.of(name));
                tally.because(law, Answer.met(() -> name));
                return;
            }
        }
        if (laterPart(soldier, side).usual()
                        && thirtyDaysSomewhere(soldier, side).isMet()
                || soldier.claims(AWARD).devices(device) > 0) {
            tally.worn(device, 1, List.of());
            tally.because(law, Answer.met(() -> side == Side.EUROPE ? "Europe" : "the Far East"));
        }
    }
}
