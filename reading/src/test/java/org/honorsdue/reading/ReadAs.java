package org.honorsdue.reading;

import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.casefile.Submission;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.ServiceFact;
import org.honorsdue.service.paper.Entry;

/** The readers on the published tables, built once for all tests. */
public final class ReadAs {
    private static final CasefileReader READER = new CasefileReader(Reference.published(), UnitReader.published());

    private ReadAs() {}

    public static CasefileReader reader() {
        return READER;
    }

    public static EntryReading entry(Entry entry, String text) {
        return READER.entries().read(entry, text);
    }

    public static EntryReading line(String text) {
        return READER.entries().read(text);
    }

    public static <T extends ServiceFact> java.util.List<T> facts(EntryReading reading, Class<T> kind) {
        return reading.facts().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** A sound casefile; fails with its faults otherwise. */
    public static Casefile casefile(String yaml) {
        return CasefileFile.read(yaml, Reference.published()).answer(Submission.Accepted::casefile, refused -> {
            throw new AssertionError("refused: " + refused.faults());
        });
    }
}
