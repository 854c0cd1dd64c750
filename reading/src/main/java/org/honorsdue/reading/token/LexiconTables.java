package org.honorsdue.reading.token;

import java.util.List;
import java.util.Locale;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** The two tables of this module: spellings of words, and what words say together. */
final class LexiconTables {
    private static final List<String> WORD_COLUMNS = List.of("word", "spellings", "source", "grade");
    private static final List<String> PHRASE_COLUMNS =
            List.of("kind", "id", "pattern", "words", "standing", "note", "source", "grade");

    private LexiconTables() {}

    /** @param spellings capitals, the word itself among them */
    record Word(String idea, List<String> spellings) {}

    record Phrase(Sense sense, List<List<String>> sequences) {}

    static List<Word> words(TableSource source, FaultList faults) {
        return Table.read(source, "words.csv", WORD_COLUMNS, faults, LexiconTables::word).stream()
                .map(Located::value)
                .toList();
    }

    private static Word word(Row row) {
        row.provenance();
        return new Word(row.text("word"), row.list("spellings"));
    }

    static List<Phrase> phrases(TableSource source, FaultList faults) {
        return Table.read(source, "phrases.csv", PHRASE_COLUMNS, faults, LexiconTables::phrase).stream()
                .map(Located::value)
                .toList();
    }

    private static Phrase phrase(Row row) {
        row.provenance();
        var sense = new Sense(
                row.choice("kind", SenseKind.class),
                row.text("id"),
                row.text("words"),
                row.textOrEmpty("note"),
                row.choice("standing", Sense.Standing.class));
        return new Phrase(sense, Pattern.expand(row.text("pattern").toLowerCase(Locale.ROOT)));
    }
}
