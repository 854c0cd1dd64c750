package org.honorsdue.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.reading.entry.EntryReaders;
import org.honorsdue.reading.entry.EntryText;
import org.honorsdue.service.evidence.Evidence;
import org.honorsdue.service.fact.Basis;
import org.honorsdue.service.fact.Basis.Certainty;
import org.honorsdue.service.fact.Conflict;
import org.honorsdue.service.fact.Death;
import org.honorsdue.service.fact.MilitaryGrade;
import org.honorsdue.service.fact.Origin;
import org.honorsdue.service.fact.PartialDate;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.fact.Tour;
import org.honorsdue.service.fact.Unread;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/** Reads one paper: every entry that bears on the service, and the tour that its dates make. */
final class PaperReader {
    private static final Entry[] DATES = {Entry.ENTERED_ACTIVE_SERVICE, Entry.INDUCTED, Entry.ENLISTED, Entry.SEPARATED
    };

    private final EntryReaders readers;
    private final int number;
    private final Paper paper;
    private final List<ServiceFact> facts;
    private final List<Unread> unread;
    private final List<Conflict> conflicts;
    private final Map<Entry, EntryText> dates = new EnumMap<>(Entry.class);
    private Tour.Category category = Tour.Category.NOT_SHOWN;

    PaperReader(
            EntryReaders readers,
            int number,
            Paper paper,
            List<ServiceFact> facts,
            List<Unread> unread,
            List<Conflict> conflicts) {
        this.readers = readers;
        this.number = number;
        this.paper = paper;
        this.facts = facts;
        this.unread = unread;
        this.conflicts = conflicts;
    }

    /** Reads the paper into the lists; gives back the entries that were supplied. */
    Set<Entry> read() {
        var supplied = EnumSet.noneOf(Entry.class);
        for (var typed : paper.entries().entrySet()) {
            Entry entry = typed.getKey();
            if (typed.getValue() instanceof Typed.NotSupplied) {
                continue;
            }
            supplied.add(entry);
            if (typed.getValue() instanceof Typed.Text text && EntryReaders.isRead(entry)) {
                EntryText read = readers.read(number, entry, text.text());
                facts.addAll(read.facts());
                unread.addAll(EntryReader.unread(read));
                if (EntryReaders.isDate(entry)) {
                    dates.put(entry, read);
                }
                noteCategory(entry, read);
            }
        }
        tour();
        return supplied;
    }

    private void noteCategory(Entry entry, EntryText read) {
        if (entry == Entry.GRADE) {
            for (ServiceFact fact : read.facts()) {
                if (fact instanceof MilitaryGrade grade) {
                    category = grade.category();
                }
            }
        }
    }

    /** A warrant officer may hold either form; for anybody else the form itself tells. */
    private Tour.Category categoryOfPaper() {
        return switch (paper.form()) {
            case ENLISTED_53_55 ->
                category == Tour.Category.NOT_SHOWN || category == Tour.Category.OFFICER
                        ? Tour.Category.ENLISTED
                        : category;
            case OFFICER_53_98 -> category == Tour.Category.WARRANT_OFFICER ? category : Tour.Category.OFFICER;
            case REPORT_OF_DEATH, OTHER -> category;
        };
    }

    private void tour() {
        boolean report = paper.form() == Form.REPORT_OF_DEATH;
        if (report) {
            death();
        }
        var entered = date(Entry.ENTERED_ACTIVE_SERVICE);
        var separated = date(Entry.SEPARATED);
        var tourDates = report ? List.of(entered) : List.of(entered, separated);
        var origins = new ArrayList<Origin>();
        Certainty certainty = Certainty.PLAIN;
        for (Entry entry : DATES) {
            EntryText read = dates.get(entry);
            if (read != null && date(entry).isPresent()) {
                origins.add(origin(read));
                certainty = worse(certainty, certainty(read));
            }
        }
        if (origins.isEmpty() && paper.form() == Form.OTHER && category == Tour.Category.NOT_SHOWN) {
            return;
        }
        facts.add(new Tour(
                number,
                categoryOfPaper(),
                entered,
                date(Entry.INDUCTED),
                date(Entry.ENLISTED),
                separated,
                new Basis(origins, certainty)));
        if (tourDates.size() == 2) {
            inOrder(Entry.ENTERED_ACTIVE_SERVICE, Entry.SEPARATED);
        }
        inOrder(Entry.INDUCTED, Entry.ENTERED_ACTIVE_SERVICE);
        inOrder(Entry.INDUCTED, Entry.SEPARATED);
        inOrder(Entry.ENLISTED, Entry.SEPARATED);
        inOrder(Entry.DATE_OF_BIRTH, Entry.ENTERED_ACTIVE_SERVICE);
    }

    private void death() {
        EntryText read = dates.get(Entry.SEPARATED);
        var origins = read == null ? List.<Origin>of() : List.of(origin(read));
        Evidence.Death.Manner manner = Evidence.Death.Manner.NOT_STATED;
        for (var typed : paper.entries().entrySet()) {
            if (typed.getValue() instanceof Typed.Text text && typed.getKey() == Entry.REMARKS) {
                manner = manner(readers.read(number, Entry.REMARKS, text.text()));
            }
        }
        facts.add(new Death(
                date(Entry.SEPARATED), manner, new Basis(origins, read == null ? Certainty.PLAIN : certainty(read))));
    }

    private static Evidence.Death.Manner manner(EntryText remarks) {
        for (var piece : remarks.pieces()) {
            if (piece.is(org.honorsdue.reading.token.SenseKind.TERM, "killed")) {
                return Evidence.Death.Manner.KILLED_IN_ACTION;
            }
            if (piece.is(org.honorsdue.reading.token.SenseKind.TERM, "died-of-wounds")) {
                return Evidence.Death.Manner.DIED_OF_WOUNDS;
            }
        }
        return Evidence.Death.Manner.NOT_STATED;
    }

    private Optional<PartialDate> date(Entry entry) {
        EntryText read = dates.get(entry);
        return read == null ? Optional.empty() : EntryReaders.dateOf(read);
    }

    private static Origin origin(EntryText read) {
        return new Origin.OnPaper(read.paper(), read.entry(), 0, read.text().length(), read.text());
    }

    private static Certainty certainty(EntryText read) {
        Certainty worst = Certainty.PLAIN;
        for (var piece : read.pieces()) {
            worst = worse(worst, piece.certainty());
        }
        return worst;
    }

    private static Certainty worse(Certainty a, Certainty b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private void inOrder(Entry first, Entry last) {
        EntryText readFirst = dates.get(first);
        EntryText readLast = dates.get(last);
        var from = date(first);
        var to = date(last);
        if (readFirst != null
                && readLast != null
                && from.isPresent()
                && to.isPresent()
                && to.get().latest().isBefore(from.get().earliest())) {
            conflicts.add(new Conflict(
                    "%s (%s) lies before %s (%s).".formatted(last.caption(), to.get(), first.caption(), from.get()),
                    List.of(origin(readFirst), origin(readLast))));
        }
    }
}
