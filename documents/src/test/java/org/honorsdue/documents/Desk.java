package org.honorsdue.documents;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.documents.letter.Correspondence;
import org.honorsdue.documents.letter.Dossier;
import org.honorsdue.documents.page.Page;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.Casefile;

/** The whole way from a casefile to its papers, as the tests go it. */
public final class Desk {
    /** The day all test letters bear. */
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    /** Copies of the soldiers of the guided tour. */
    public static final List<String> DEMO =
            List.of("brandvold", "castellan", "fairweather", "lindgate", "marchbanks", "okonsky", "pettigrew");

    private static final Reference REFERENCE = Reference.published();
    private static final LawExaminer EXAMINER = new LawExaminer(REFERENCE);
    private static final CasefileReader READER = new CasefileReader(REFERENCE, UnitReader.published());

    private Desk() {}

    public static Reference reference() {
        return REFERENCE;
    }

    public static LawExaminer examiner() {
        return EXAMINER;
    }

    public static CasefileReader reader() {
        return READER;
    }

    public static Casefile demo(String name) {
        try (var file = Desk.class.getResourceAsStream("demo/" + name + ".yaml")) {
            if (file == null) {
                throw new IllegalArgumentException("No soldier of the tour is called " + name + ".");
            }
            return casefile(new String(file.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Casefile casefile(String yaml) {
        return CasefileFile.read(yaml, REFERENCE).answer(accepted -> accepted.casefile(), refused -> {
            throw new IllegalArgumentException(refused.faults().toString());
        });
    }

    public static Dossier dossier(Casefile casefile) {
        return Dossier.of(casefile, READER, REFERENCE, EXAMINER, TODAY, Set.of());
    }

    /** From facts put together by hand; entries are glossed as the reader reads them. */
    public static Dossier dossier(InventedSoldier soldier) {
        var casefile = soldier.casefile();
        var readings = java.util.stream.IntStream.rangeClosed(
                        1, casefile.papers().size())
                .mapToObj(paper -> READER.readings(casefile, paper))
                .toList();
        return Dossier.of(casefile, soldier.facts(), readings, REFERENCE, EXAMINER, TODAY, soldier.asked());
    }

    public static Page page(Dossier dossier, String name) {
        return Correspondence.all(dossier).stream()
                .filter(page -> page.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
