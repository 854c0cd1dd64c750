package org.honorsdue.reading.entry;

import java.util.ArrayList;
import java.util.List;
import org.honorsdue.reading.token.Lexicon;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.reading.token.Pieces;
import org.honorsdue.reading.token.Preference;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.NoneTyped;
import org.honorsdue.service.fact.OrderReference;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.paper.Entry;

/** The text of one entry while it is read: its pieces, and the facts found so far. Used by one thread. */
public final class EntryText {
    private final int paper;
    private final Entry entry;
    private final String text;
    private final Lexicon lexicon;
    private final Reference reference;
    private final List<Piece> pieces;
    private final List<ServiceFact> facts = new ArrayList<>();
    private final List<OrderReference> orders = new ArrayList<>();
    private final List<Crossing> crossings = new ArrayList<>();

    EntryText(
            int paper,
            Entry entry,
            String text,
            Lexicon lexicon,
            Reference reference,
            Preference preference,
            boolean free) {
        this.paper = paper;
        this.entry = entry;
        this.text = text;
        this.lexicon = lexicon;
        this.reference = reference;
        pieces = free ? Pieces.ofFreeText(lexicon, text, preference) : Pieces.of(lexicon, text, preference);
    }

    public int paper() {
        return paper;
    }

    public Entry entry() {
        return entry;
    }

    public String text() {
        return text;
    }

    Lexicon lexicon() {
        return lexicon;
    }

    Reference reference() {
        return reference;
    }

    public List<Piece> pieces() {
        return pieces;
    }

    public List<ServiceFact> facts() {
        return facts;
    }

    public List<OrderReference> orders() {
        return orders;
    }

    /** Crossings of the sea, in the order typed, the way home among them. */
    public List<Crossing> crossings() {
        return crossings;
    }

    void add(ServiceFact fact) {
        facts.add(fact);
    }

    void addOrders(List<OrderReference> cited) {
        orders.addAll(cited);
    }

    void add(Crossing crossing) {
        crossings.add(crossing);
    }

    /** What stands from one character to another. */
    String typed(int start, int end) {
        return text.substring(start, end);
    }

    /** The same, with the full stop of a last abbreviation: {@code A.P.T.}. */
    String typedWithStop(int start, int end) {
        boolean stop = end < text.length() && text.charAt(end) == '.' && text.indexOf('.', start) < end;
        return text.substring(start, stop ? end + 1 : end);
    }

    Origin origin(int start, int end) {
        return new Origin.OnPaper(paper, entry, start, end, text.substring(start, end));
    }

    Basis basis(Piece first, Piece last, Certainty certainty) {
        return basis(first.start(), last.end(), certainty);
    }

    Basis basis(int start, int end, Certainty certainty) {
        return new Basis(List.of(origin(start, end)), certainty);
    }

    Basis basis(Piece piece) {
        return basis(piece, piece, piece.certainty());
    }

    /** The whole text, read as surely as its least sure piece that counts. */
    Basis whole(Certainty certainty) {
        int start = 0;
        while (start < text.length() && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        int end = text.length();
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return basis(start, end, certainty);
    }

    static Certainty worse(Certainty a, Certainty b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    /** Whether the clerk typed that there is nothing. */
    boolean saysNothing() {
        if (pieces.isEmpty()) {
            return true;
        }
        Piece first = pieces.get(0);
        if (pieces.size() == 1 && first.settle(org.honorsdue.reading.token.SenseKind.NOTHING)) {
            if (!first.isTaken()) {
                add(new NoneTyped(paper, entry, basis(first)));
            }
            first.take();
            return true;
        }
        return false;
    }
}
