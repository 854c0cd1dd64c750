package org.honorsdue.benchmarks;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.honorsdue.determination.Examiner;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.EntryReading;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.fact.ServiceFacts;
import org.honorsdue.service.paper.Entry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One paper, step by step and whole, on one thread: operations a second. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(2)
public class PaperBenchmark {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String PAPER = """
            soldier: { name: "Fairweather, Orrin T", sex: male }
            papers:
              - form: WD AGO 53-55
                entries:
                  grade: Tec 5
                  arm: FA
                  component: AUS
                  organization: Btry B 391st AFA Bn
                  separated: 11 Nov 45
                  entered_active_service: 3 Feb 43
                  inducted: 20 Jan 43
                  military_specialty: Cannoneer 844
                  qualifications: MM Rifle Dec 43
                  battles_and_campaigns: Rhineland Ardennes Central Europe GO 33 WD 45
                  decorations_and_citations: EAMET Rib w/3 Br Stars; Good Conduct Medal
                  wounds: None
                  service_outside_us:
                    - { departed: 22 Aug 44, destination: ETO, arrived: 29 Aug 44 }
                    - { departed: 1 Nov 45, destination: USA, arrived: 9 Nov 45 }
                  continental_service: 1-6-17
                  foreign_service: 1-2-18
                  prior_service: None
                  highest_grade: Tec 5
                  reason: AR 615-365 15 Dec 44 RR 1-1 Conv of Govt
                  character: Excellent
                  service_schools: None
                  mustering_out_pay: 300
                  remarks: Lapel button issued. ASR score (2 Sept 45) 60. No days lost under AW 107
            """;

    private Reference reference;
    private CasefileReader reader;
    private Examiner examiner;
    private Casefile casefile;
    private ServiceFacts facts;

    @Setup
    public void prepare() {
        reference = Reference.published();
        reader = new CasefileReader(reference, UnitReader.published());
        examiner = new LawExaminer(reference);
        casefile = open();
        facts = reader.read(casefile);
    }

    private Casefile open() {
        return CasefileFile.read(PAPER.getBytes(StandardCharsets.UTF_8), reference)
                .answer(accepted -> accepted.casefile(), refused -> {
                    throw new IllegalStateException(refused.faults().toString());
                });
    }

    /** The file's text to a casefile. */
    @Benchmark
    public Casefile openFile() {
        return open();
    }

    /** Typed entries to facts. */
    @Benchmark
    public ServiceFacts read() {
        return reader.read(casefile);
    }

    /** Facts to findings, explanations not yet put into words. */
    @Benchmark
    public Findings examine() {
        return examiner.examine(facts, TODAY, Set.of());
    }

    /** Typed entries to findings: the figure that counts for collections. */
    @Benchmark
    public Findings readAndExamine() {
        return examiner.examine(reader.read(casefile), TODAY, Set.of());
    }

    /** One line of the decorations box, token by token. */
    @Benchmark
    public EntryReading decodeLine() {
        return reader.entries().read(Entry.DECORATIONS_AND_CITATIONS, "EAMET Rib w/3 Br Stars; Good Conduct Medal");
    }
}
