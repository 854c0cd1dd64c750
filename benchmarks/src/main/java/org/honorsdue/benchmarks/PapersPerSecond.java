package org.honorsdue.benchmarks;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.documents.Output;
import org.honorsdue.documents.letter.Correspondence;
import org.honorsdue.documents.letter.Dossier;
import org.honorsdue.documents.pdf.Sheet;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;

/**
 * Documents a second on one thread: all papers of one case, from the casefile to the bytes, in each form. The first
 * round of a fresh program is reported by itself (cold), then the rounds after a warm-up. A plain main, because JMH
 * would hide the cold round.
 */
public final class PapersPerSecond {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String CASE = """
            soldier: { name: "Fairweather, Orrin T", sex: male }
            papers:
              - form: WD AGO 53-55
                entries:
                  name: FAIRWEATHER ORRIN T
                  serial_number: 00 000 001
                  grade: Tec 5
                  arm: FA
                  component: AUS
                  organization: Btry B 391st AFA Bn
                  separated: 11 Nov 45
                  entered_active_service: 3 Feb 43
                  military_specialty: Cannoneer 844
                  qualifications: MM Rifle Dec 43
                  battles_and_campaigns: Rhineland Ardennes Central Europe GO 33 WD 45
                  decorations_and_citations: EAMET Rib w/3 Br Stars; Good Conduct Medal
                  wounds: None
                  service_outside_us:
                    - { departed: 22 Aug 44, destination: ETO, arrived: 29 Aug 44 }
                    - { departed: 1 Nov 45, destination: USA, arrived: 9 Nov 45 }
                  continental_service: 1-6-21
                  foreign_service: 1-2-18
                  remarks: Lapel button issued. No days lost under AW 107
            """;

    private PapersPerSecond() {}

    /** @param args seconds to warm up and seconds to measure, each for one form; 20 and 20 if not given */
    public static void main(String[] args) {
        int warmUp = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        int measure = args.length > 1 ? Integer.parseInt(args[1]) : 20;
        long begun = System.nanoTime();
        var reference = Reference.published();
        var reader = new CasefileReader(reference, UnitReader.published());
        var examiner = new LawExaminer(reference);
        report("tables and rules ready after", 1, System.nanoTime() - begun);
        Map<Output, Long> cold = new EnumMap<>(Output.class);
        for (var output : new Output[] {Output.TEXT, Output.HTML, Output.PDF}) {
            long start = System.nanoTime();
            int papers = round(output, reference, reader, examiner);
            cold.put(output, System.nanoTime() - start);
            report("cold, " + output.id(), papers, cold.get(output));
        }
        for (var output : cold.keySet()) {
            run(output, warmUp, reference, reader, examiner);
            long start = System.nanoTime();
            long papers = run(output, measure, reference, reader, examiner);
            report("warm, " + output.id(), papers, System.nanoTime() - start);
        }
    }

    private static long run(
            Output output, int seconds, Reference reference, CasefileReader reader, LawExaminer examiner) {
        long until = System.nanoTime() + seconds * 1_000_000_000L;
        long papers = 0;
        while (System.nanoTime() < until) {
            papers += round(output, reference, reader, examiner);
        }
        return papers;
    }

    /** All papers of the case once; how many there were. */
    private static int round(Output output, Reference reference, CasefileReader reader, LawExaminer examiner) {
        var casefile = CasefileFile.read(CASE.getBytes(StandardCharsets.UTF_8), reference)
                .answer(accepted -> accepted.casefile(), refused -> {
                    throw new IllegalStateException(refused.faults().toString());
                });
        var pages = Correspondence.all(Dossier.of(casefile, reader, reference, examiner, TODAY, Set.of()));
        long bytes = 0;
        for (var page : pages) {
            bytes += output.of(page, Sheet.LETTER).length;
        }
        if (bytes == 0) {
            throw new IllegalStateException("The papers are empty.");
        }
        return pages.size();
    }

    private static void report(String what, long papers, long nanos) {
        System.out.printf(
                Locale.ROOT,
                "%-30s %6d papers in %8.0f ms, %8.1f a second%n",
                what,
                papers,
                nanos / 1e6,
                papers * 1e9 / nanos);
    }
}
