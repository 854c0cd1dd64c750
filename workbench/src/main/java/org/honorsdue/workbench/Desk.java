package org.honorsdue.workbench;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.honorsdue.casebook.CaseContent;
import org.honorsdue.casebook.Casebook;
import org.honorsdue.casebook.KeptCase;
import org.honorsdue.casebook.SearchTerm;
import org.honorsdue.casebook.Stage;
import org.honorsdue.determination.Examiner;
import org.honorsdue.determination.LawBook;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.casefile.CasefileText;
import org.honorsdue.reading.casefile.Submission;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.Assignment;
import org.honorsdue.service.fact.PersonName;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Typed;

/**
 * What every page works with.
 *
 * @param who the name that stands beside each change in the history
 */
record Desk(
        Reference reference,
        Examiner examiner,
        LawBook law,
        CasefileReader reader,
        Casebook casebook,
        Clock clock,
        String who) {
    private static final int LONGEST_TITLE = 400;

    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** Reads and examines a casefile as the law stood on that day. */
    Study study(KeptCase kept, Casefile casefile, LocalDate asOf) {
        ServiceFacts facts = reader.read(casefile);
        return new Study(kept, casefile, facts, examiner.examine(facts, asOf, Set.of()));
    }

    /**
     * Opens a case and examines it.
     *
     * @throws UnreadableCase when the text kept in it is no casefile; it can still be opened as text
     */
    Study study(String id, LocalDate asOf) {
        var kept = casebook.open(id);
        return study(kept, casefile(kept), asOf);
    }

    /** @throws UnreadableCase when the text kept in it is no casefile */
    Casefile casefile(KeptCase kept) {
        return parse(kept.content().casefile()).answer(accepted -> accepted.casefile(), refused -> {
            throw new UnreadableCase(kept.id(), refused.faults());
        });
    }

    Submission parse(String text) {
        return CasefileFile.read(text, reference);
    }

    /**
     * Saves a changed casefile.
     *
     * @param startedFrom the revision the change was made on
     * @throws org.honorsdue.casebook.StaleRevision when another change came first
     * @throws InputFault when the change makes a casefile that could not be read again
     */
    KeptCase save(String id, int startedFrom, Casefile casefile, String what) {
        return save(
                id,
                startedFrom,
                content -> {
                    String text = CasefileText.write(casefile);
                    return content.withCasefile(title(casefile).orElse(content.title()), readable(text));
                },
                what);
    }

    /** A text that is surely read again when the case is opened the next time. */
    String readable(String text) {
        return parse(text).answer(accepted -> text, refused -> {
            throw new InputFault("This cannot be kept as a casefile.", refused.faults());
        });
    }

    /** Saves any change of a case and keeps the words by which it is found. */
    KeptCase save(String id, int startedFrom, Function<CaseContent, CaseContent> change, String what) {
        var content = change.apply(casebook.open(id).content());
        return casebook.save(id, startedFrom, content, terms(content), who, what);
    }

    /** Keeps a new case. */
    KeptCase open(Casefile casefile, String text, String notes) {
        var content = new CaseContent(title(casefile).orElse("Unnamed soldier"), Stage.READING, text, notes);
        return casebook.create(content, terms(content), who);
    }

    /** How the casebook lists a soldier; empty when nobody gave a name. */
    static Optional<String> title(Casefile casefile) {
        return casefile.name()
                .or(() -> typed(casefile, Entry.NAME))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .map(name -> name.length() > LONGEST_TITLE ? name.substring(0, LONGEST_TITLE) : name);
    }

    /** What stands in an entry of the last paper that has it. */
    static Optional<String> typed(Casefile casefile, Entry entry) {
        return casefile.papers().stream()
                .map(paper -> paper.entry(entry))
                .filter(Typed.Text.class::isInstance)
                .map(typed -> ((Typed.Text) typed).text().strip())
                .reduce((first, second) -> second);
    }

    /** The words by which a case can be found. A casefile that cannot be read is found by its title and its text. */
    Set<SearchTerm> terms(CaseContent content) {
        var terms = new LinkedHashSet<SearchTerm>();
        terms.add(new SearchTerm(SearchTerm.Field.NAME, content.title()));
        add(terms, SearchTerm.Field.TEXT, content.notes());
        parse(content.casefile()).answer(accepted -> terms.addAll(terms(accepted.casefile())), refused -> {
            add(terms, SearchTerm.Field.TEXT, content.casefile());
            return false;
        });
        return terms;
    }

    private Set<SearchTerm> terms(Casefile casefile) {
        var terms = new LinkedHashSet<SearchTerm>();
        casefile.name().ifPresent(name -> add(terms, SearchTerm.Field.NAME, name));
        for (var paper : casefile.papers()) {
            paper.entries().forEach((entry, typed) -> {
                if (typed instanceof Typed.Text text) {
                    add(terms, SearchTerm.Field.TEXT, text.text());
                }
            });
        }
        var facts = reader.read(casefile);
        facts.every(PersonName.class).forEach(name -> add(terms, SearchTerm.Field.NAME, name.name()));
        facts.every(Assignment.class).forEach(unit -> {
            add(terms, SearchTerm.Field.UNIT, unit.designation());
            unit.units().forEach(id -> add(terms, SearchTerm.Field.UNIT, id));
        });
        for (var finding : examiner.examine(facts, today(), Set.of()).findings()) {
            if (finding.standing() != Standing.NOT_AUTHORIZED) {
                add(terms, SearchTerm.Field.AWARD, finding.name());
            }
            finding.needs().forEach(need -> add(terms, SearchTerm.Field.QUESTION, need.question()));
        }
        return terms;
    }

    private static void add(Set<SearchTerm> terms, SearchTerm.Field field, String words) {
        if (!words.isBlank()) {
            terms.add(new SearchTerm(field, words));
        }
    }

    /** The revision named by a form or a program. */
    static int revision(Optional<String> digits) {
        return digits.filter(text -> text.matches("\\d{1,9}"))
                .map(Integer::parseInt)
                .orElseThrow(() -> new InputFault(
                        "The page did not say which state of the case it started from. Open the case again.",
                        List.of()));
    }
}
