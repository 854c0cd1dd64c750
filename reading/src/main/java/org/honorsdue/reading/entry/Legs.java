package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.SenseKind.LINK;
import static org.honorsdue.reading.token.SenseKind.PLACE;
import static org.honorsdue.reading.token.SenseKind.TERM;
import static org.honorsdue.reading.token.SenseKind.THEATER;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.reading.token.Sense;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.history.Place;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.OverseasStay;
import org.honorsdue.service.fact.PartialDate;
import org.jspecify.annotations.Nullable;

/**
 * Crossings in one run of text or line by line: departure, destination, arrival. Two crossings, out and home, make one
 * stay abroad.
 */
final class Legs {
    private static final LocalDate WAR_OVER_IN_AUSTRIA = LocalDate.of(1945, 4, 1);

    /** As clerks and copyists type it (common practice, no source). */
    private static final Set<String> NOT_KNOWN = Set.of("UNKNOWN", "UNK", "UNKN", "ILLEGIBLE");

    private final EntryText entry;
    private final List<Part> parts = new ArrayList<>();
    private final List<Leg> legs = new ArrayList<>();

    /** A date or a destination of one or more pieces. */
    private record Part(boolean isDate, List<Piece> pieces) {
        Piece first() {
            return pieces.get(0);
        }

        Piece last() {
            return pieces.get(pieces.size() - 1);
        }
    }

    /** One crossing; parts not typed are null. */
    private record Leg(
            @Nullable Part departed,
            @Nullable Part destination,
            @Nullable Part arrived) {
        int start() {
            int start = Integer.MAX_VALUE;
            for (Part part : present()) {
                start = Math.min(start, part.first().start());
            }
            return start;
        }

        int end() {
            int end = 0;
            for (Part part : present()) {
                end = Math.max(end, part.last().end());
            }
            return end;
        }

        List<Part> present() {
            var all = new ArrayList<Part>(3);
            for (Part part : new Part[] {departed, destination, arrived}) {
                if (part != null) {
                    all.add(part);
                }
            }
            return all;
        }
    }

    Legs(EntryText entry) {
        this.entry = entry;
    }

    void read() {
        if (entry.saysNothing()) {
            return;
        }
        split();
        gather();
        stays();
    }

    private void split() {
        var words = new ArrayList<Piece>();
        boolean origin = false;
        List<Piece> pieces = entry.pieces();
        for (int at = 0; at < pieces.size(); at++) {
            Piece piece = pieces.get(at);
            if (standsForADate(pieces, at)) {
                endPlace(words);
                parts.add(new Part(true, List.of(piece.take("date not known"))));
            } else if (piece.isDate() && piece.date() != null) {
                if (origin && !words.isEmpty()) {
                    words.forEach(word -> word.take("place he left"));
                    words.clear();
                }
                origin = false;
                endPlace(words);
                parts.add(new Part(true, List.of(piece.take())));
            } else if (piece.is(LINK) && words.isEmpty()
                    || piece.is(TERM, "departed")
                    || piece.is(TERM, "arrived")
                    || piece.is(TERM, "returned")) {
                endPlace(words);
                piece.take();
                origin = piece.is(TERM, "departed") || origin && !piece.is(LINK, "for") && !piece.is(LINK, "to");
            } else if (piece.isDate()) {
                endPlace(words);
                piece.take();
            } else {
                if (!words.isEmpty() && (piece.beginsAnew() || bothKnown(words, piece))) {
                    endPlace(words);
                }
                words.add(piece);
            }
        }
        endPlace(words);
    }

    /** {@code UNKNOWN} in the place of a date; between two dates it is the destination that is not known. */
    private static boolean standsForADate(List<Piece> pieces, int at) {
        if (!NOT_KNOWN.contains(pieces.get(at).text().toUpperCase(Locale.ROOT))) {
            return false;
        }
        boolean dateBefore = at > 0 && pieces.get(at - 1).date() != null;
        boolean dateAfter = at + 1 < pieces.size() && pieces.get(at + 1).date() != null;
        return !(dateBefore && dateAfter);
    }

    /** Two known places side by side are two destinations, as when the columns were copied one after the other. */
    private static boolean bothKnown(List<Piece> words, Piece piece) {
        return words.size() == 1 && isPlace(words.get(0)) && isPlace(piece) && isHome(piece) != isHome(words.get(0));
    }

    private static boolean isPlace(Piece piece) {
        return piece.may(PLACE) || piece.may(THEATER);
    }

    private void endPlace(List<Piece> words) {
        if (words.isEmpty()) {
            return;
        }
        while (words.size() > 1 && words.get(words.size() - 1).is(LINK)) {
            words.remove(words.size() - 1).take();
        }
        boolean onlyNumbers = words.stream().allMatch(Piece::isNumber);
        if (!onlyNumbers) {
            for (Piece word : words) {
                if (!word.settle(PLACE)) {
                    word.settle(THEATER);
                }
                word.take(
                        isPlace(word) && !word.sense().words().isEmpty()
                                ? word.sense().words()
                                : "place, as typed");
            }
            parts.add(new Part(false, List.copyOf(words)));
        }
        words.clear();
    }

    /** Date, place, date; or the three columns one after the other. */
    private void gather() {
        if (columns()) {
            return;
        }
        int i = 0;
        while (i < parts.size()) {
            Part departed = null;
            Part destination = null;
            Part arrived = null;
            if (parts.get(i).isDate()) {
                departed = parts.get(i++);
            }
            if (i < parts.size() && !parts.get(i).isDate()) {
                destination = parts.get(i++);
            }
            if (i < parts.size() && parts.get(i).isDate() && destination != null && arrivalBelongs(i, departed)) {
                arrived = parts.get(i++);
            }
            legs.add(new Leg(departed, destination, arrived));
        }
    }

    /** A date after the destination is the arrival, unless it is the departure of the next line. */
    private boolean arrivalBelongs(int at, @Nullable Part departed) {
        Part date = parts.get(at);
        boolean placeNext = at + 1 < parts.size() && !parts.get(at + 1).isDate();
        if (!placeNext) {
            return true;
        }
        if (date.first().beginsAnew() || date.first().isSetOff()) {
            return false;
        }
        return departed == null || !isFarAfter(departed, date);
    }

    /** No crossing took three months. */
    private static boolean isFarAfter(Part departed, Part date) {
        PartialDate from = departed.first().date();
        PartialDate to = date.first().date();
        return from != null && to != null && to.earliest().isAfter(from.latest().plusDays(92));
    }

    private boolean columns() {
        int places = 0;
        int leading = 0;
        for (Part part : parts) {
            if (!part.isDate()) {
                places++;
            } else if (places == 0) {
                leading++;
            }
        }
        if (places < 2 || leading != places || parts.size() != 3 * places) {
            return false;
        }
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).isDate() != (i < places || i >= 2 * places)) {
                return false;
            }
        }
        for (int i = 0; i < places; i++) {
            legs.add(new Leg(parts.get(i), parts.get(places + i), parts.get(2 * places + i)));
        }
        return true;
    }

    private void stays() {
        for (Leg leg : legs) {
            entry.add(new Crossing(date(leg.departed()), destination(leg), date(leg.arrived())));
        }
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            if (leg.destination() == null || isHome(leg.destination().last())) {
                continue;
            }
            Leg after = i + 1 < legs.size() ? legs.get(i + 1) : null;
            stay(leg, after);
        }
    }

    private void stay(Leg leg, @Nullable Leg after) {
        boolean home = after != null
                && after.destination() != null
                && isHome(after.destination().last());
        var destination = java.util.Objects.requireNonNull(leg.destination());
        Optional<Place> place = place(destination);
        Set<Theater> theaters = place.map(Place::theaters).orElse(Set.of());
        Certainty certainty = Certainty.PLAIN;
        if (place.isEmpty()) {
            destination.first().doubt("not in the table of places; the theater is not known", List.of());
        }
        for (Part part : leg.present()) {
            if (place.isEmpty() && part == destination) {
                continue;
            }
            for (Piece piece : part.pieces()) {
                certainty = EntryText.worse(certainty, piece.certainty());
            }
        }
        if (isAustOrAus(destination)) {
            theaters = austriaOrAustralia(leg, destination);
            place = entry.reference().place("Australia").filter(found -> isBeforeAustria(leg));
            certainty = EntryText.worse(certainty, destination.first().certainty());
        }
        int end = home && after != null ? after.end() : leg.end();
        entry.add(new OverseasStay(
                entry.paper(),
                date(leg.departed()),
                date(leg.arrived()),
                after == null ? Optional.empty() : date(after.departed()),
                home && after != null ? date(after.arrived()) : Optional.empty(),
                destination(leg),
                theaters,
                place.map(Place::name),
                entry.basis(leg.start(), end, certainty)));
    }

    private static boolean isAustOrAus(Part destination) {
        String text = destination.first().text();
        return text.equalsIgnoreCase("Aust") || text.equalsIgnoreCase("Aus");
    }

    /** Nobody sailed for Austria before the last weeks of the war; after that the word is open. */
    private static boolean isBeforeAustria(Leg leg) {
        return date(leg.departed())
                .or(() -> date(leg.arrived()))
                .filter(day -> day.latest().isBefore(WAR_OVER_IN_AUSTRIA))
                .isPresent();
    }

    private static Set<Theater> austriaOrAustralia(Leg leg, Part destination) {
        if (isBeforeAustria(leg)) {
            return Set.of(Theater.ASIATIC_PACIFIC);
        }
        destination.first().doubt("Australia or Austria", List.of("Austria"));
        return Set.of(Theater.ASIATIC_PACIFIC, Theater.EAME);
    }

    private Optional<Place> place(Part destination) {
        for (Piece piece : destination.pieces()) {
            if (isPlace(piece)) {
                var found = entry.reference().place(piece.sense().id());
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return entry.reference()
                .place(entry.typed(
                        destination.first().start(), destination.last().end()));
    }

    private static boolean isHome(Piece piece) {
        for (Sense sense : piece.senses()) {
            if (sense.id().equals("USA")) {
                return true;
            }
        }
        return false;
    }

    private String destination(Leg leg) {
        Part destination = leg.destination();
        return destination == null
                ? ""
                : entry.typedWithStop(
                        destination.first().start(), destination.last().end());
    }

    private static Optional<PartialDate> date(@Nullable Part part) {
        return part == null
                ? Optional.empty()
                : Optional.ofNullable(part.first().date());
    }
}
