package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.SenseKind.COMPONENT;
import static org.honorsdue.reading.token.SenseKind.LINK;
import static org.honorsdue.reading.token.SenseKind.NOTHING;
import static org.honorsdue.reading.token.SenseKind.PLACE;
import static org.honorsdue.reading.token.SenseKind.TERM;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.Captivity;
import org.honorsdue.service.fact.Conduct;
import org.honorsdue.service.fact.LapelButton;
import org.honorsdue.service.fact.MusteringOutPay;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.PointsScore;
import org.honorsdue.service.fact.PriorService;
import org.honorsdue.service.fact.Wound;
import org.jspecify.annotations.Nullable;

/** The fixed sentences of the remarks: lapel button, score, days lost, captivity, reserve time, wounds. */
final class RemarkTerms {
    private static final int REACH = 9;

    private final EntryText entry;
    private final List<Piece> pieces;

    RemarkTerms(EntryText entry) {
        this.entry = entry;
        pieces = entry.pieces();
    }

    /** Reads the sentence whose key word is that piece; gives back the last piece that it used. */
    int read(int at) {
        Piece key = pieces.get(at).take();
        return switch (key.sense().id()) {
            case "lapel-button" -> lapelButton(at);
            case "lapel-button-issued" -> {
                entry.add(new LapelButton(entry.paper(), true, entry.basis(key)));
                yield at;
            }
            case "asr" -> score(at);
            case "lost", "aw107" -> lost(at);
            case "pow", "interned" -> captivity(at);
            case "inactive" -> reserve(at);
            case "wounded" -> wound(at);
            case "mustering-out" -> pay(at);
            default -> at;
        };
    }

    private @Nullable Piece piece(int at) {
        return at >= 0 && at < pieces.size() ? pieces.get(at) : null;
    }

    private boolean is(int at, String term) {
        Piece piece = piece(at);
        return piece != null && piece.is(TERM, term);
    }

    private boolean isNo(int at) {
        Piece piece = piece(at);
        if (piece == null) {
            return false;
        }
        return piece.settle(LINK, "no") || piece.is(NOTHING) || piece.is(TERM, "not");
    }

    private int lapelButton(int at) {
        int first = at;
        int last = at;
        boolean issued = true;
        boolean said = false;
        if (isNo(at - 1)) {
            first = at - 1;
            issued = false;
            said = true;
        }
        if (is(at - 1, "issued")) {
            first = at - 1;
            said = true;
        }
        if (isNo(at + 1)) {
            issued = false;
            said = true;
            last = at + 1;
            pieces.get(last).take("not");
        }
        if (is(last + 1, "issued")) {
            last = last + 1;
            said = true;
            pieces.get(last).take();
        }
        Piece key = pieces.get(at);
        if (!said) {
            key.correct("that it was issued is understood");
        }
        entry.add(new LapelButton(
                entry.paper(), issued, entry.basis(pieces.get(first), pieces.get(last), key.certainty())));
        return last;
    }

    private int score(int at) {
        Piece number = null;
        Piece date = null;
        int last = at;
        for (int i = at + 1; i < Math.min(pieces.size(), at + REACH); i++) {
            Piece piece = pieces.get(i);
            if (piece.isDate() && date == null && piece.date() != null) {
                date = piece;
                last = i;
            } else if (piece.isNumber() && number == null && piece.number() <= 300) {
                number = piece;
                last = i;
            } else if (!piece.is(LINK) && !piece.is(TERM, "score") && !piece.is(TERM, "asr")) {
                break;
            }
            if (number != null && date != null) {
                break;
            }
        }
        Piece prior = piece(at - 1);
        if (number == null && prior != null && prior.isNumber() && prior.number() <= 300) {
            number = prior;
        }
        if (number == null) {
            return at;
        }
        Certainty certainty = EntryText.worse(pieces.get(at).certainty(), number.certainty());
        Optional<PartialDate> asOf = Optional.empty();
        if (date != null) {
            asOf = Optional.ofNullable(date.date());
            certainty = EntryText.worse(certainty, date.certainty());
        }
        number.take("score " + number.number());
        for (int i = at + 1; i <= last; i++) {
            pieces.get(i).take();
        }
        Piece first = number.start() < pieces.get(at).start() ? number : pieces.get(at);
        entry.add(
                new PointsScore(entry.paper(), number.number(), asOf, entry.basis(first, pieces.get(last), certainty)));
        return date == null ? last : furtherScore(last);
    }

    /** A second score with its day: {@code ASR score (12 May 45) 85 (2 Sep 45) 93}. */
    private int furtherScore(int at) {
        Piece date = piece(at + 1);
        Piece number = piece(at + 2);
        boolean further = date != null
                && number != null
                && date.isDate()
                && date.date() != null
                && number.isNumber()
                && number.number() <= 300
                && !number.isOrdinal();
        if (!further || date == null || number == null) {
            return at;
        }
        date.take();
        number.take("score " + number.number());
        entry.add(new PointsScore(
                entry.paper(),
                number.number(),
                Optional.ofNullable(date.date()),
                entry.basis(date, number, EntryText.worse(date.certainty(), number.certainty()))));
        return at + 2;
    }

    /** {@code No days lost under AW 107}, {@code Time lost 10 days AW 107}, {@code AW 107: none}. */
    private int lost(int at) {
        int first = at;
        int days = -1;
        if (isNo(at - 1)) {
            days = 0;
            first = at - 1;
        } else if (number(at - 1)) {
            days = pieces.get(at - 1).number();
            first = at - 1;
        } else if (is(at - 1, "days") && number(at - 2)) {
            days = pieces.get(at - 2).number();
            first = at - 2;
        } else if (is(at - 1, "days") && isNo(at - 2)) {
            days = 0;
            first = at - 2;
        }
        int last = at;
        for (int i = at + 1; i < Math.min(pieces.size(), at + REACH); i++) {
            Piece piece = pieces.get(i);
            if (days < 0 && number(i)) {
                days = piece.number();
                last = i;
            } else if (days < 0 && isNo(i)) {
                days = 0;
                last = i;
            } else if (is(i, "days") || is(i, "aw107") || is(i, "lost")) {
                last = i;
            } else if (!piece.is(LINK) && !piece.text().equalsIgnoreCase("under")) {
                break;
            }
        }
        if (days < 0) {
            return at;
        }
        Certainty certainty = Certainty.PLAIN;
        for (int i = first; i <= last; i++) {
            Piece piece = pieces.get(i);
            piece.take();
            certainty = EntryText.worse(certainty, piece.certainty());
        }
        entry.add(new Conduct(
                Optional.empty(),
                Optional.empty(),
                OptionalInt.of(days),
                OptionalInt.empty(),
                entry.basis(pieces.get(first), pieces.get(last), certainty)));
        return last;
    }

    private boolean number(int at) {
        Piece piece = piece(at);
        return piece != null && piece.isNumber() && piece.number() >= 0 && piece.number() <= 2000;
    }

    private int captivity(int at) {
        Piece key = pieces.get(at);
        Piece from = null;
        Piece to = null;
        Piece place = null;
        int last = at;
        for (int i = at + 1; i < Math.min(pieces.size(), at + REACH); i++) {
            Piece piece = pieces.get(i);
            if (piece.isDate() && piece.date() != null) {
                if (from == null) {
                    from = piece;
                } else if (to == null) {
                    to = piece;
                } else {
                    break;
                }
                last = i;
            } else if (to != null && place != null && !piece.may(PLACE)) {
                break;
            } else if (place == null && (piece.settle(PLACE) || piece.is(PLACE))) {
                place = piece;
                last = i;
            } else if (place != null && piece.settle(PLACE)) {
                last = i;
            } else if (!piece.is(LINK) && !isGovernment(piece)) {
                break;
            }
        }
        Certainty certainty = key.certainty();
        for (int i = at; i <= last; i++) {
            pieces.get(i).take();
            certainty = EntryText.worse(certainty, pieces.get(i).certainty());
        }
        entry.add(new Captivity(
                Optional.ofNullable(from).map(Piece::date),
                Optional.ofNullable(to).map(Piece::date),
                Optional.ofNullable(place).map(Piece::text),
                key.is(TERM, "interned"),
                entry.basis(key, pieces.get(last), certainty)));
        return last;
    }

    private static boolean isGovernment(Piece piece) {
        return piece.text().toUpperCase(java.util.Locale.ROOT).startsWith("GOV");
    }

    private int reserve(int at) {
        Piece key = pieces.get(at);
        Piece from = null;
        Piece to = null;
        Piece component = null;
        int last = at;
        for (int i = at + 1; i < Math.min(pieces.size(), at + REACH); i++) {
            Piece piece = pieces.get(i);
            if (piece.isDate() && piece.date() != null) {
                if (from == null) {
                    from = piece;
                } else {
                    to = piece;
                    last = i;
                    break;
                }
                last = i;
            } else if (component == null && piece.settle(COMPONENT)) {
                component = piece;
                last = i;
            } else if (!piece.is(LINK) && !piece.is(TERM, "inactive")) {
                break;
            }
        }
        Certainty certainty = key.certainty();
        for (int i = at; i <= last; i++) {
            pieces.get(i).take();
            certainty = EntryText.worse(certainty, pieces.get(i).certainty());
        }
        if (from == null) {
            return last;
        }
        boolean reserveNamed = key.text().toUpperCase(java.util.Locale.ROOT).contains("ERC");
        entry.add(new PriorService(
                entry.paper(),
                PriorService.Duty.INACTIVE,
                component != null
                        ? Optional.of(component.sense().id())
                        : reserveNamed ? Optional.of("Enlisted Reserve Corps") : Optional.empty(),
                Optional.ofNullable(from.date()),
                Optional.ofNullable(to).map(Piece::date),
                entry.typed(key.start(), pieces.get(last).end()),
                entry.basis(key, pieces.get(last), certainty)));
        return last;
    }

    private int pay(int at) {
        int next = at + 1;
        Piece sign = piece(next);
        if (sign != null && sign.text().equals("$")) {
            sign.take("dollars");
            next++;
        }
        Piece amount = piece(next);
        if (amount == null || !amount.isNumber() || amount.number() < 50 || amount.number() > 1000) {
            return at;
        }
        amount.take("$" + amount.number());
        entry.add(new MusteringOutPay(entry.paper(), amount.number(), entry.basis(amount)));
        return next;
    }

    private int wound(int at) {
        Piece place = null;
        Piece date = null;
        int last = at;
        for (int i = at + 1; i < Math.min(pieces.size(), at + 5); i++) {
            Piece piece = pieces.get(i);
            if (date == null && piece.isDate() && piece.date() != null) {
                date = piece;
                last = i;
            } else if (place == null && piece.settle(PLACE)) {
                place = piece;
                last = i;
            } else if (!piece.is(LINK)) {
                break;
            }
        }
        if (date == null) {
            return at;
        }
        for (int i = at; i <= last; i++) {
            pieces.get(i).take();
        }
        Piece key = pieces.get(at);
        entry.add(new Wound(
                Optional.ofNullable(date.date()),
                Optional.ofNullable(place).map(Piece::text),
                entry.typed(key.start(), pieces.get(last).end()),
                entry.basis(key, pieces.get(last), EntryText.worse(key.certainty(), date.certainty()))));
        return last;
    }
}
