package org.honorsdue.reading.token;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Splits a text into pieces of meaning, the longest first, every word in exactly one piece. */
public final class Pieces {
    private final Lexicon lexicon;
    private final Words words;
    private final Preference preference;
    private final Matcher matcher;
    private final Dates dates;
    private final boolean guess;

    private Pieces(Lexicon lexicon, String text, Preference preference, boolean guess) {
        this.lexicon = lexicon;
        this.preference = preference;
        this.guess = guess;
        words = lexicon.words(text);
        matcher = new Matcher(lexicon, words);
        dates = new Dates(lexicon, words, preference.onlyDates());
    }

    /**
     * The pieces of a text in order.
     *
     * @param preference the kinds of meaning the entry is for
     */
    public static List<Piece> of(Lexicon lexicon, String text, Preference preference) {
        return new Pieces(lexicon, text, preference, true).all();
    }

    /** The pieces of a text of free words, in which misspellings are not looked for. */
    public static List<Piece> ofFreeText(Lexicon lexicon, String text, Preference preference) {
        return new Pieces(lexicon, text, preference, false).all();
    }

    private List<Piece> all() {
        var pieces = new ArrayList<Piece>(Math.max(4, words.count()));
        int word = 0;
        while (word < words.count()) {
            Piece piece = next(word, pieces.isEmpty() ? null : pieces.get(pieces.size() - 1));
            pieces.add(piece);
            word = piece.to();
        }
        dates.settleFigures(pieces);
        return pieces;
    }

    private Piece next(int word, @Nullable Piece before) {
        TypedDate slip = preference.dates() ? dates.slipFirst(word) : null;
        if (slip != null) {
            return Piece.date(words, word, slip);
        }
        Optional<Match> match = matcher.longest(word);
        if (isInitialAfterWith(word, match)) {
            match = matcher.within(word, word + 1);
        }
        boolean months = before != null && before.isNumber() && words.isNumber(word - 1) && dates.isMonths(word);
        if (match.isPresent() && !months && mayBeginOrder(match.get())) {
            Piece order = new OrderCitation(words, matcher, dates).at(word);
            if (order != null && order.to() > match.get().to()) {
                return order;
            }
        }
        if (before != null && before.isOrder() && words.isNumber(word)) {
            Piece order = new OrderCitation(words, matcher, dates)
                    .following(word, before.orders().get(0).type().orElse(""));
            if (order != null) {
                return order;
            }
        }
        TypedDate date = preference.dates() ? dates.at(word) : null;
        if (date != null && (match.isEmpty() || match.get().to() <= date.to())) {
            return Piece.date(words, word, date);
        }
        Optional<Match> exact = match;
        Optional<Match> best = match;
        if (guess) {
            int beyond = match.map(Match::to).orElse(word);
            if (isStrange(beyond, word) || match.isEmpty() && words.isLetters(word)) {
                best = matcher.loosely(word, beyond).or(() -> exact);
            }
        }
        if (best.isPresent() && !(words.isNumber(word) && best.get().to() == word + 1)) {
            return Piece.phrase(words, word, best.get(), preference);
        }
        if (words.isNumber(word)) {
            int year = preference.dates() && words.length(word) == 4 ? dates.year(word) : -1;
            return year >= 1910
                    ? Piece.date(
                            words, word, TypedDate.plain(word + 1, org.honorsdue.service.fact.PartialDate.year(year)))
                    : Piece.number(words, word);
        }
        return Piece.unread(words, word);
    }

    /** {@code w/O.L.C.} begins with "with", not with "without". */
    private boolean isInitialAfterWith(int word, Optional<Match> match) {
        return match.isPresent()
                && match.get().to() == word + 2
                && match.get().senses()[0].id().equals("without")
                && words.isLetters(word + 2)
                && words.length(word + 2) == 1
                && (words.gap(word + 2) & Words.PERIOD) != 0;
    }

    /** An unknown word that stands in one item with the word before. */
    private boolean isStrange(int at, int word) {
        return at < words.count()
                && words.known(at) == null
                && words.isLetters(at)
                && (at == word || (words.gap(at) & (Words.COMMA | Words.SEMICOLON)) == 0);
    }

    private static boolean mayBeginOrder(Match match) {
        for (Sense sense : match.senses()) {
            if (sense.kind() == SenseKind.ORDER && !sense.id().isEmpty() || sense.kind() == SenseKind.THEATER) {
                return true;
            }
        }
        return false;
    }

    /** The lexicon the pieces were read with. */
    Lexicon lexicon() {
        return lexicon;
    }
}
