package org.honorsdue.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reading.entry.EntryReaders;
import org.honorsdue.reading.entry.EntryText;
import org.honorsdue.reading.token.Lexicon;
import org.honorsdue.reading.token.Piece;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.paper.Entry;

/** Reads one entry and shows how, token by token. Immutable and thread-safe; build one and keep it. */
public final class EntryReader {
    private final EntryReaders readers;

    /** @param units finds units in the unit tables; {@link UnitReader#none()} keeps designations as typed */
    public EntryReader(Reference reference, UnitReader units) {
        readers = new EntryReaders(Lexicon.of(reference), reference, units);
    }

    EntryReaders readers() {
        return readers;
    }

    /** Reads the text of an entry. */
    public EntryReading read(Entry entry, String text) {
        if (!EntryReaders.isRead(entry)) {
            return kept(entry, text);
        }
        return shown(Optional.of(entry), readers.read(1, entry, text));
    }

    /** Reads a line of which nobody says where it stands. What only the entry could settle stays in doubt. */
    public EntryReading read(String text) {
        return shown(Optional.empty(), readers.readAnything(text));
    }

    /** An entry that is kept as typed and not read further. */
    private static EntryReading kept(Entry entry, String text) {
        String typed = text.strip();
        if (typed.isEmpty()) {
            return new EntryReading(
                    Optional.of(entry), text, List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        }
        int start = text.indexOf(typed);
        var token =
                new ReadToken(start, start + typed.length(), typed, "kept as typed", Certainty.PLAIN, List.of(), "");
        return new EntryReading(
                Optional.of(entry), text, List.of(token), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    private static EntryReading shown(Optional<Entry> entry, EntryText read) {
        var tokens = new ArrayList<ReadToken>();
        var dates = new ArrayList<PartialDate>();
        for (Piece piece : read.pieces()) {
            PartialDate date = piece.date();
            if (date != null) {
                dates.add(date);
            }
            if (!isUnread(piece)) {
                tokens.add(new ReadToken(
                        piece.start(),
                        piece.end(),
                        piece.text(),
                        piece.meaning(),
                        piece.certainty(),
                        piece.alternatives(),
                        piece.note()));
            }
        }
        return new EntryReading(
                entry, read.text(), tokens, unread(read), read.facts(), read.orders(), read.crossings(), dates);
    }

    private static boolean isUnread(Piece piece) {
        return !piece.isTaken() && (piece.type() == Piece.Type.UNREAD || piece.isNumber());
    }

    /** What stayed unread, neighbouring words together. */
    static List<Unread> unread(EntryText read) {
        List<Unread> all = List.of();
        int from = -1;
        int to = -1;
        for (Piece piece : read.pieces()) {
            if (isUnread(piece)) {
                from = from < 0 ? piece.start() : from;
                to = piece.end();
            } else if (from >= 0) {
                all = with(all, read, from, to);
                from = -1;
            }
        }
        return from < 0 ? all : with(all, read, from, to);
    }

    private static List<Unread> with(List<Unread> all, EntryText read, int from, int to) {
        List<Unread> list = all.isEmpty() ? new ArrayList<>() : all;
        list.add(new Unread(read.paper(), read.entry(), from, to, read.text().substring(from, to)));
        return list;
    }
}
