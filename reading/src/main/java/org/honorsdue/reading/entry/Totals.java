package org.honorsdue.reading.entry;

import static org.honorsdue.reading.token.SenseKind.LINK;
import static org.honorsdue.reading.token.SenseKind.TERM;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.ServiceTotal;
import org.honorsdue.service.paper.Entry;

/** Totals of years, months and days: {@code 1-6-17}, {@code 1 yr 6 mos 17 days}, {@code 1 6 17}; one or both on a line. */
final class Totals {
    private final EntryText entry;
    private final List<Piece> pieces;
    private final List<Piece> bare = new ArrayList<>();
    private final int[] parts = {-1, -1, -1};
    private final List<Piece> named = new ArrayList<>();
    private ServiceTotal.Kind kind;
    private boolean kindTyped;
    private int read;

    Totals(EntryText entry) {
        this.entry = entry;
        pieces = entry.pieces();
        kind = switch (entry.entry()) {
            case FOREIGN_SERVICE -> ServiceTotal.Kind.FOREIGN;
            case LONGEVITY -> ServiceTotal.Kind.LONGEVITY;
            default -> ServiceTotal.Kind.CONTINENTAL;
        };
    }

    void read() {
        if (entry.saysNothing()) {
            if (!pieces.isEmpty()) {
                Piece none = pieces.get(0);
                entry.add(new ServiceTotal(entry.paper(), kind, 0, 0, 0, entry.basis(none)));
            }
            return;
        }
        for (int i = 0; i < pieces.size(); i++) {
            piece(i);
        }
        finishNamed();
        finishBare();
    }

    private void piece(int at) {
        Piece piece = pieces.get(at);
        if (piece.is(TERM, "continental") || piece.is(TERM, "foreign")) {
            finishNamed();
            finishBare();
            kind = piece.is(TERM, "foreign") ? ServiceTotal.Kind.FOREIGN : ServiceTotal.Kind.CONTINENTAL;
            kindTyped = true;
            piece.take();
        } else if (piece.isNumber() || piece.text().length() <= 2 && piece.readAsFigure()) {
            Piece after = at + 1 < pieces.size() ? pieces.get(at + 1) : piece;
            boolean daysAttached = piece.isOrdinal()
                    && piece.text().toUpperCase(java.util.Locale.ROOT).endsWith("D");
            int part = daysAttached ? 2 : part(after);
            if (daysAttached) {
                parts[2] = piece.number();
                named.add(piece.take(part(2, piece.number())));
            } else if (part >= 0) {
                if (parts[part] >= 0 || part == 0 && !named.isEmpty()) {
                    finishNamed();
                }
                parts[part] = piece.number();
                named.add(piece.take(part(part, piece.number())));
                named.add(after.take(part == 0 ? "years" : part == 1 ? "months" : "days"));
            } else {
                bare.add(piece);
                if (bare.size() == 3) {
                    finishBare();
                }
            }
        } else if (piece.is(LINK) || piece.isPhrase()) {
            piece.take();
        }
    }

    private static int part(Piece piece) {
        switch (piece.text()) {
            case "Y", "y" -> {
                return 0;
            }
            case "M", "m" -> {
                return 1;
            }
            case "D", "d" -> {
                return 2;
            }
            default -> {}
        }
        if (!piece.isPhrase()) {
            return -1;
        }
        if (piece.settle(TERM, "years")) {
            return 0;
        }
        if (piece.settle(TERM, "months")) {
            return 1;
        }
        return piece.settle(TERM, "days") ? 2 : -1;
    }

    private void finishNamed() {
        if (!named.isEmpty()) {
            emit(Math.max(0, parts[0]), Math.max(0, parts[1]), Math.max(0, parts[2]), named);
            named.clear();
        }
        parts[0] = -1;
        parts[1] = -1;
        parts[2] = -1;
    }

    private void finishBare() {
        if (bare.size() == 3) {
            emit(bare.get(0).number(), bare.get(1).number(), bare.get(2).number(), bare);
        } else if (bare.size() == 2 && bare.get(0).number() <= 11 && bare.get(1).number() <= 30) {
            bare.forEach(piece -> piece.doubt(
                    "two figures where three are expected; read as months and days", List.of("years and months")));
            emit(0, bare.get(0).number(), bare.get(1).number(), bare);
        }
        bare.clear();
    }

    private void emit(int years, int months, int days, List<Piece> of) {
        Certainty certainty = Certainty.PLAIN;
        for (Piece piece : of) {
            certainty = EntryText.worse(certainty, piece.certainty());
        }
        Piece first = of.get(0);
        Piece last = of.get(of.size() - 1);
        if (years > 60 || months > 99 || days > 366) {
            return;
        }
        if (months > 11 || days > 31) {
            first.doubt("more months than eleven or more days than thirty-one", List.of());
            certainty = Certainty.DOUBTFUL;
        }
        for (int i = 0; i < of.size(); i++) {
            if (!of.get(i).isTaken()) {
                of.get(i).take(part(i, of.get(i).number()));
            }
        }
        if (read == 1 && !kindTyped && entry.entry() == Entry.LENGTH_OF_SERVICE) {
            kind = ServiceTotal.Kind.FOREIGN;
        }
        read++;
        entry.add(new ServiceTotal(entry.paper(), kind, years, months, days, entry.basis(first, last, certainty)));
    }

    private static String part(int index, int number) {
        String unit = index == 0 ? "year" : index == 1 ? "month" : "day";
        return number + " " + unit + (number == 1 ? "" : "s");
    }
}
