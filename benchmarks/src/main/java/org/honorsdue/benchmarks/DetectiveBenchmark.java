package org.honorsdue.benchmarks;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.honorsdue.determination.Examiner;
import org.honorsdue.determination.LawExaminer;
import org.honorsdue.determination.crosscheck.Crosschecks;
import org.honorsdue.determination.crosscheck.points.Children;
import org.honorsdue.determination.crosscheck.points.Listed;
import org.honorsdue.determination.crosscheck.points.MonthsAndDays;
import org.honorsdue.determination.crosscheck.points.PointsSheet;
import org.honorsdue.determination.crosscheck.points.PointsSolver;
import org.honorsdue.determination.crosscheck.points.RatingDate;
import org.honorsdue.determination.crosscheck.points.TimeServed;
import org.honorsdue.determination.finding.Crosscheck;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.line.ServiceLine;
import org.honorsdue.determination.nextsteps.NextSteps;
import org.honorsdue.determination.nextsteps.SmallestCover;
import org.honorsdue.determination.since.ThenAndSince;
import org.honorsdue.reading.CasefileReader;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.unit.UnitReader;
import org.honorsdue.reference.Reference;
import org.honorsdue.service.fact.ServiceFacts;
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

/** The detective work on one soldier, on one thread: microseconds an operation. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class DetectiveBenchmark {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String PAPER = """
            soldier: { name: "Fairweather, Orrin T", sex: male }
            papers:
              - form: WD AGO 53-55
                entries:
                  grade: Pfc
                  arm: Inf
                  component: AUS
                  organization: Co F 999th Inf
                  separated: 6 Dec 45
                  date_of_birth: 14 Mar 22
                  dependents: 1
                  inducted: 12 Jan 43
                  entered_active_service: 19 Jan 43
                  military_specialty: Rifleman 745
                  qualifications: Combat Infantryman Badge GO 7 Hq 999th Inf 44
                  battles_and_campaigns: Normandy Northern France Rhineland GO 33 WD 45
                  decorations_and_citations: EAME Theater Ribbon w/3 Bronze Stars
                  wounds: France 12 Jul 44
                  service_outside_us:
                    - { departed: 8 Apr 44, destination: ETO, arrived: 19 Apr 44 }
                    - { departed: 12 Nov 45, destination: USA, arrived: 24 Nov 45 }
                  continental_service: 1-3-1
                  foreign_service: 1-7-17
                  prior_service: None
                  reason: AR 615-365 15 Dec 44 RR 1-1 Conv of Govt
                  mustering_out_pay: 300
                  remarks: Lapel button issued. ASR Score (2 Sep 45) 72. No days lost under AW 107. 3 Overseas Bars
            """;

    private Reference reference;
    private Crosschecks checks;
    private Examiner examiner;
    private ServiceFacts facts;
    private Findings findings;
    private List<TimeServed> lives;
    private List<List<Set<Integer>>> fewNeeds;
    private List<List<Set<Integer>>> manyNeeds;

    @Setup
    public void prepare() {
        reference = Reference.published();
        checks = Crosschecks.of(reference);
        examiner = new LawExaminer(reference);
        var casefile = CasefileFile.read(PAPER.getBytes(StandardCharsets.UTF_8), reference)
                .answer(accepted -> accepted.casefile(), refused -> {
                    throw new IllegalStateException(refused.faults().toString());
                });
        facts = new CasefileReader(reference, UnitReader.published()).read(casefile);
        findings = examiner.examine(facts, TODAY, Set.of());
        lives = List.of(
                new TimeServed(RatingDate.SECOND, new MonthsAndDays(31, 14), new MonthsAndDays(16, 25), false),
                new TimeServed(RatingDate.FIRST, new MonthsAndDays(27, 23), new MonthsAndDays(13, 4), false));
        fewNeeds = needs(8, 14);
        manyNeeds = needs(24, 60);
    }

    private static List<List<Set<Integer>>> needs(int count, int things) {
        var random = new Random(1945);
        var needs = new ArrayList<List<Set<Integer>>>();
        for (int i = 0; i < count; i++) {
            var ways = new ArrayList<Set<Integer>>();
            for (int way = 0; way < 4; way++) {
                var all = new TreeSet<Integer>();
                for (int thing = 0; thing <= random.nextInt(2); thing++) {
                    all.add(random.nextInt(things));
                }
                ways.add(all);
            }
            needs.add(ways);
        }
        return needs;
    }

    /** A score worked backwards: two rating dates, nine pairs of roundings, no child to three. */
    @Benchmark
    public PointsSheet scoreSolver() {
        return PointsSolver.solve(72, Listed.exactly(4), new Children(OptionalInt.of(1)), lives);
    }

    /** Every cross-check, with its sentences. */
    @Benchmark
    public List<Crosscheck> crosschecks() {
        return checks.run(facts);
    }

    /** A choice of documents as one soldier has it: 8 questions, 14 documents. */
    @Benchmark
    public SmallestCover.Choice<Integer> coverOfEight() {
        return SmallestCover.of(fewNeeds, thing -> 1 + thing % 5);
    }

    /** Three times as many questions as any soldier has: 24 over 60 documents. */
    @Benchmark
    public SmallestCover.Choice<Integer> coverOfTwentyFour() {
        return SmallestCover.of(manyNeeds, thing -> 1 + thing % 5);
    }

    /** From the findings to the steps, needs put into words. */
    @Benchmark
    public NextSteps nextSteps() {
        return NextSteps.of(findings, facts, reference);
    }

    /** Every milestone of later law tried. */
    @Benchmark
    public ThenAndSince thenAndSince() {
        return ThenAndSince.of(examiner, facts, reference, TODAY);
    }

    @Benchmark
    public ServiceLine serviceLine() {
        return ServiceLine.of(facts, findings, reference);
    }
}
