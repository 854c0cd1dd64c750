package org.honorsdue.benchmarks;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.OnPaper;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.determination.finding.WornDevice;
import org.honorsdue.insignia.display.Addition;
import org.honorsdue.insignia.display.CasePlan;
import org.honorsdue.insignia.display.CaseWish;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.insignia.print.CasePrint;
import org.honorsdue.insignia.print.Paper;
import org.honorsdue.insignia.print.Png;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.insignia.ribbon.RibbonRack;
import org.honorsdue.service.fact.Device;
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

/** Racks and cases of one decorated rifleman: operations a second, one thread. Run with {@code -prof gc} for memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class InsigniaBenchmark {
    private Findings findings;
    private CaseWish wish;
    private CasePlan plan;
    private Svg rack;

    @Setup
    public void prepare() {
        findings = new Findings(
                LocalDate.of(2026, 11, 25),
                List.of(
                        found("silver-star"),
                        found("bronze-star-medal", new WornDevice(Device.LETTER_V, 1, List.of())),
                        found("purple-heart", new WornDevice(Device.BRONZE_OAK_LEAF_CLUSTER, 1, List.of())),
                        found("army-good-conduct-medal"),
                        found("american-campaign-medal"),
                        found(
                                "eame-campaign-medal",
                                new WornDevice(Device.ARROWHEAD, 1, List.of()),
                                new WornDevice(Device.BRONZE_SERVICE_STAR, 4, List.of())),
                        found("ww2-victory-medal"),
                        found("army-of-occupation-medal", new WornDevice(Device.GERMANY_CLASP, 1, List.of())),
                        found("distinguished-unit-citation"),
                        found("combat-infantryman-badge"),
                        found("overseas-service-bars")),
                List.of(),
                List.of(),
                List.of());
        wish = CaseWish.ofSize("16x20")
                .adding(new Addition.Nameplate(List.of("O. T. Fairweather", "999th Infantry")))
                .withPatches("infantry-division-1", List.of("infantry-division-29"));
        plan = CasePlan.of(findings, wish);
        rack = RibbonRack.of(findings, RackStyle.standard()).svg();
    }

    private static Finding found(String award, WornDevice... devices) {
        return new Finding(
                award,
                award,
                Standing.AUTHORIZED,
                OnPaper.YES,
                1,
                List.of(devices),
                List.of(),
                List.of(),
                List.of(),
                "");
    }

    /** Findings to the text of a drawing. */
    @Benchmark
    public String rack() {
        return RibbonRack.of(findings, RackStyle.standard()).svg().text();
    }

    /** The same as dots on a screen. */
    @Benchmark
    public byte[] rackAsDots() {
        return Png.ofWidth(rack, 600);
    }

    /** Findings to a plan, every rule looked at and every common frame tried. */
    @Benchmark
    public CasePlan casePlan() {
        return CasePlan.of(findings, wish);
    }

    /** A finished plan to the text of its picture. */
    @Benchmark
    public String caseDrawing() {
        return plan.svg().text();
    }

    /** A finished plan to sheets for the bench. */
    @Benchmark
    public byte[] casePrint() {
        return CasePrint.pdf(plan, Paper.LETTER, LocalDate.of(2026, 11, 25));
    }
}
