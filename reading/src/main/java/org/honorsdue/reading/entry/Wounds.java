package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.SenseKind.AWARD;
import static org.honorsdue.reading.token.SenseKind.DEVICE;
import static org.honorsdue.reading.token.SenseKind.LINK;
import static org.honorsdue.reading.token.SenseKind.NOTHING;
import static org.honorsdue.reading.token.SenseKind.PLACE;
import static org.honorsdue.reading.token.SenseKind.TERM;
import static org.honorsdue.reading.token.SenseKind.THEATER;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Wound;
import org.jspecify.annotations.Nullable;

/** Wounds received in action, place and date in either order: {@code Germany 12 Dec 44}, {@code 12 Dec 44 Germany}. */
final class Wounds {
    private final EntryText entry;
    private final List<Piece> place = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private @Nullable Claim claim;
    private @Nullable Piece date;
    private @Nullable Piece placeBefore;
    private boolean dateFirst;
    private boolean dated;
    private boolean begun;

    Wounds(EntryText entry) {
        this.entry = entry;
    }

    void read() {
        if (entry.saysNothing()) {
            return;
        }
        for (Piece piece : entry.pieces()) {
            piece(piece);
        }
        finish();
        claims.forEach(award -> entry.add(award.fact(entry)));
    }

    private void piece(Piece piece) {
        if (piece.isOrder()) {
            entry.addOrders(piece.orders());
            piece.take();
            if (claim != null) {
                claim.cite(piece);
            }
        } else if (piece.is(AWARD)) {
            claim = new Claim(piece.sense().id(), piece.take());
            claims.add(claim);
        } else if (piece.is(DEVICE)) {
            piece.take();
        } else if (piece.isDate()) {
            if (!begun) {
                dateFirst = place.isEmpty();
            } else if (date != null) {
                finish();
            }
            begun = true;
            date = piece.take();
            if (!dateFirst && !place.isEmpty()) {
                finish();
            }
        } else if (piece.is(LINK) || piece.is(TERM) || piece.is(NOTHING)) {
            piece.take();
            if (date != null && piece.is(LINK, "and")) {
                finish();
            }
        } else if (piece.isNumber()) {
            return;
        } else {
            if (date != null && piece.isSetOff() && !dateFirst) {
                finish();
            }
            if (!piece.settle(PLACE)) {
                piece.settle(THEATER);
            }
            place.add(piece.take(
                    piece.may(PLACE) || piece.may(THEATER) ? piece.sense().words() : "place, as typed"));
        }
    }

    private void finish() {
        Piece when = date;
        if (when == null && place.isEmpty()) {
            return;
        }
        if (when == null && dated) {
            place.forEach(piece -> piece.doubt("no date stands with it; taken as part of the wound before", List.of()));
            place.clear();
            return;
        }
        dated |= when != null;
        var all = new ArrayList<>(place);
        if (when != null) {
            all.add(when);
        }
        int start = all.stream().mapToInt(Piece::start).min().orElse(0);
        int end = all.stream().mapToInt(Piece::end).max().orElse(0);
        Certainty certainty = Certainty.PLAIN;
        for (Piece piece : all) {
            certainty = EntryText.worse(certainty, piece.certainty());
        }
        if (!place.isEmpty() && place.stream().noneMatch(piece -> piece.may(PLACE) || piece.may(THEATER))) {
            place.get(0).doubt("not in the table of places; kept as typed", List.of());
        }
        Optional<PartialDate> day = when == null ? Optional.empty() : Optional.ofNullable(when.date());
        if (place.isEmpty() && placeBefore != null && !dateFirst) {
            start = Math.min(start, placeBefore.start());
        }
        Optional<String> where = where();
        entry.add(new Wound(day, where, entry.typed(start, end), entry.basis(start, end, certainty)));
        if (!place.isEmpty()) {
            placeBefore = place.get(place.size() - 1);
        }
        place.clear();
        date = null;
    }

    /** The known place among the words, with the words beside it; for a second date the place of the first. */
    private Optional<String> where() {
        if (place.isEmpty()) {
            Piece same = placeBefore;
            return same == null || dateFirst ? Optional.empty() : Optional.of(same.text());
        }
        return Optional.of(entry.typedWithStop(
                place.get(0).start(), place.get(place.size() - 1).end()));
    }
}
