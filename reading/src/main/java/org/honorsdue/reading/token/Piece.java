package org.honorsdue.reading.token;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.PartialDate;
import org.jspecify.annotations.Nullable;

/**
 * Some words of a text that mean something together, with what they may mean. The reader of the entry settles it by the
 * neighbours. Belongs to one reading; not thread-safe.
 */
public final class Piece {
    /** What sort of piece it is. */
    public enum Type {
        PHRASE,
        NUMBER,
        DATE,
        ORDER,
        UNREAD
    }

    private static final Sense[] NO_SENSES = {};

    private Type type;
    private final Words words;
    private final int from;
    private final int to;
    private Sense[] senses = NO_SENSES;
    private int chosen;
    private int number = -1;
    private boolean ordinal;
    private @Nullable TypedDate date;
    private List<OrderReference> orders = List.of();
    private Certainty certainty = Certainty.PLAIN;
    private String note = "";
    private String meaning = "";
    private List<String> alternatives = List.of();
    private boolean taken;

    private Piece(Type type, Words words, int from, int to) {
        this.type = type;
        this.words = words;
        this.from = from;
        this.to = to;
        for (int i = from; i < to; i++) {
            String slip = words.note(i);
            if (slip != null) {
                correct(slip);
            }
        }
    }

    static Piece phrase(Words words, int from, Match match, Preference preference) {
        var piece = new Piece(Type.PHRASE, words, from, match.to());
        piece.senses = match.senses();
        piece.choose(preference);
        String correction = match.correction();
        if (correction != null) {
            piece.correct(correction);
        }
        return piece;
    }

    static Piece number(Words words, int at) {
        var piece = new Piece(Type.NUMBER, words, at, at + 1);
        piece.number = words.number(at);
        piece.ordinal = words.isOrdinal(at);
        return piece;
    }

    static Piece date(Words words, int from, TypedDate date) {
        var piece = new Piece(Type.DATE, words, from, date.to());
        piece.date = date;
        piece.certainty = worse(piece.certainty, date.certainty());
        piece.addNote(date.note());
        piece.alternatives = date.alternatives();
        return piece;
    }

    static Piece order(Words words, int from, int to, List<OrderReference> orders) {
        var piece = new Piece(Type.ORDER, words, from, to);
        piece.orders = List.copyOf(orders);
        return piece;
    }

    static Piece unread(Words words, int at) {
        return new Piece(Type.UNREAD, words, at, at + 1);
    }

    private void choose(Preference preference) {
        int best = Integer.MAX_VALUE;
        for (int i = 0; i < senses.length; i++) {
            int rank = rank(senses[i], preference);
            if (rank < best) {
                best = rank;
                chosen = i;
            }
        }
        takeStanding(preference);
    }

    /** A place may stand for a campaign only where campaigns are what the entry is for. */
    private static int rank(Sense sense, Preference preference) {
        int rank = preference.rank(sense.kind());
        boolean outOfPlace = sense.standing() == Sense.Standing.LOOSE && sense.kind() == SenseKind.CAMPAIGN && rank > 0;
        return (outOfPlace ? rank + 50 : rank) * 4 + sense.standing().ordinal();
    }

    private static boolean mayDoubt(SenseKind kind) {
        return switch (kind) {
            case AWARD, DEVICE, CAMPAIGN, LEVEL, WEAPON, GRADE, ARM, COMPONENT, PLACE, THEATER -> true;
            default -> false;
        };
    }

    private void takeStanding(Preference preference) {
        Sense sense = senses[chosen];
        switch (sense.standing()) {
            case NAME -> {}
            case POPULAR -> correct(sense.note());
            case LOOSE -> {
                certainty = Certainty.DOUBTFUL;
                addNote(sense.note());
            }
        }
        if (senses.length == 1) {
            return;
        }
        int rank = rank(sense, preference);
        var others = new ArrayList<String>(senses.length);
        boolean equal = false;
        for (int i = 0; i < senses.length; i++) {
            boolean same = senses[i].words().equals(sense.words())
                    || senses[i].id().equals(sense.id()) && !sense.id().isEmpty();
            if (i != chosen && !same) {
                others.add(senses[i].words());
                equal |= rank(senses[i], preference) == rank
                        && preference.expects(sense.kind())
                        && mayDoubt(sense.kind())
                        && mayDoubt(senses[i].kind());
            }
        }
        if (equal) {
            certainty = Certainty.DOUBTFUL;
        }
        if (certainty == Certainty.DOUBTFUL) {
            alternatives = others;
        }
    }

    public Type type() {
        return type;
    }

    /** First character, from 0. */
    public int start() {
        return words.start(from);
    }

    /** One past the last character. */
    public int end() {
        return words.end(to - 1);
    }

    public String text() {
        return words.text().substring(start(), end());
    }

    /** Number of its first word. */
    int from() {
        return from;
    }

    int to() {
        return to;
    }

    /** The number of words. */
    public int length() {
        return to - from;
    }

    /** Whether a comma, semicolon or closing bracket parts it from what stands before. A line end does not: boxes are narrow. */
    public boolean isSetOff() {
        return (words.gap(from) & (Words.COMMA | Words.SEMICOLON | Words.COLON | Words.CLOSE)) != 0;
    }

    /** Whether a semicolon or line end parts it from what stands before. */
    public boolean beginsAnew() {
        return (words.gap(from) & (Words.SEMICOLON | Words.NEWLINE)) != 0;
    }

    public boolean afterSlash() {
        return (words.gap(from) & Words.SLASH) != 0;
    }

    public boolean afterHyphen() {
        return (words.gap(from) & Words.HYPHEN) != 0;
    }

    public boolean afterBracket() {
        return (words.gap(from) & Words.OPEN) != 0;
    }

    public boolean afterComma() {
        return (words.gap(from) & Words.COMMA) != 0;
    }

    public boolean isPhrase() {
        return type == Type.PHRASE;
    }

    public boolean isNumber() {
        return type == Type.NUMBER;
    }

    public boolean isDate() {
        return type == Type.DATE;
    }

    public boolean isOrder() {
        return type == Type.ORDER;
    }

    /** The meaning taken; only of a phrase. */
    public Sense sense() {
        return senses[chosen];
    }

    public boolean is(SenseKind kind) {
        return type == Type.PHRASE && sense().kind() == kind;
    }

    public boolean is(SenseKind kind, String id) {
        return is(kind) && sense().id().equals(id);
    }

    /** Whether one of its possible meanings is of that kind. */
    public boolean may(SenseKind kind) {
        for (Sense sense : senses) {
            if (sense.kind() == kind) {
                return true;
            }
        }
        return false;
    }

    public boolean may(SenseKind kind, String id) {
        for (Sense sense : senses) {
            if (sense.kind() == kind && sense.id().equals(id)) {
                return true;
            }
        }
        return false;
    }

    /** The possible meanings of a phrase. */
    public List<Sense> senses() {
        return List.of(senses);
    }

    /** Takes the meaning of that kind, because the neighbours call for it; what else it may mean no longer counts. */
    public boolean settle(SenseKind kind) {
        for (int i = 0; i < senses.length; i++) {
            if (senses[i].kind() == kind) {
                chosen = i;
                return true;
            }
        }
        return false;
    }

    public boolean settle(SenseKind kind, String id) {
        for (int i = 0; i < senses.length; i++) {
            if (senses[i].kind() == kind && senses[i].id().equals(id)) {
                chosen = i;
                return true;
            }
        }
        return false;
    }

    /** Drops the doubt between meanings of the word, once the neighbours have settled it; slips remain corrected. */
    public void makeSure(String why) {
        if (certainty == Certainty.DOUBTFUL && senses.length > 0 && sense().standing() != Sense.Standing.LOOSE) {
            certainty = Certainty.PLAIN;
            alternatives = List.of();
            addNote(why);
        }
    }

    /** Settles the doubt by what stands elsewhere; it stays marked as put right. */
    public void settleDoubt(String why) {
        certainty = Certainty.CORRECTED;
        alternatives = List.of();
        addNote(why);
    }

    public int number() {
        return number;
    }

    public boolean isOrdinal() {
        return ordinal;
    }

    /** The number of figures typed. */
    public int figures() {
        return end() - start();
    }

    public @Nullable TypedDate typedDate() {
        return date;
    }

    /** The date as far as typed; null when this is no date or lacks a year. */
    public @Nullable PartialDate date() {
        return date == null ? null : date.date();
    }

    /** Reads the date as another one, for a reason that the entry gives. */
    public void redate(PartialDate other) {
        date = new TypedDate(to, other, certainty, note, List.of());
        type = Type.DATE;
    }

    void settle(PartialDate meant, String why) {
        certainty = Certainty.CORRECTED;
        note = why;
        alternatives = List.of();
        date = new TypedDate(to, meant, certainty, note, alternatives);
    }

    /** Reads an unknown word as the one meaning that the entry can hold. */
    public void readAs(Sense meant) {
        type = Type.PHRASE;
        senses = new Sense[] {meant};
        chosen = 0;
        correct("read as " + meant.words() + ", the only word of this entry that is a letter off");
    }

    /** Reads a letter that looks like a figure as that figure; gives back whether it does. */
    public boolean readAsFigure() {
        if (type == Type.NUMBER || !words.isLetters(from) || to - from != 1) {
            return type == Type.NUMBER;
        }
        int value = Words.slipOfNumber(words.plain(from));
        if (value < 0) {
            return false;
        }
        type = Type.NUMBER;
        number = value;
        certainty = Certainty.CORRECTED;
        note = "read as " + value + ": a letter typed for a figure";
        alternatives = List.of();
        return true;
    }

    public List<OrderReference> orders() {
        return orders;
    }

    public Certainty certainty() {
        return certainty;
    }

    public String note() {
        return note;
    }

    public List<String> alternatives() {
        return alternatives;
    }

    public boolean isTaken() {
        return taken;
    }

    /** Marks the piece as read into something. */
    public Piece take() {
        taken = true;
        return this;
    }

    /** Takes the piece and says what it means here. */
    public Piece take(String meaningHere) {
        taken = true;
        meaning = meaningHere;
        return this;
    }

    public void correct(String how) {
        certainty = worse(certainty, Certainty.CORRECTED);
        addNote(how);
    }

    public void doubt(String why, List<String> others) {
        certainty = Certainty.DOUBTFUL;
        addNote(why);
        alternatives = List.copyOf(others);
    }

    /** Puts what the whole line was read as into the note of its first piece. */
    public void noteUnit(String unit, Certainty how, List<String> notes) {
        certainty = worse(certainty, how);
        if (!unit.isEmpty()) {
            addNote("the line is read as " + unit);
        }
        notes.forEach(this::addNote);
    }

    private void addNote(String more) {
        if (!more.isEmpty() && !note.contains(more)) {
            note = note.isEmpty() ? more : note + "; " + more;
        }
    }

    static Certainty worse(Certainty a, Certainty b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    /** What it means, in plain words; empty for what is not read. */
    public String meaning() {
        if (!meaning.isEmpty()) {
            return meaning;
        }
        return switch (type) {
            case PHRASE -> sense().words();
            case NUMBER -> taken ? Integer.toString(number) : "";
            case DATE -> date == null ? "" : date.words();
            case ORDER -> OrderCitation.words(orders);
            case UNREAD -> "";
        };
    }

    @Override
    public String toString() {
        return type + " \"" + text() + "\" " + meaning();
    }
}
