package org.honorsdue.benchmarks;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.honorsdue.reading.unit.OrganizationReader;
import org.honorsdue.reading.unit.OrganizationReading;
import org.honorsdue.reference.Reference;
import org.honorsdue.reference.table.TableSource;
import org.honorsdue.reference.unit.Unit;
import org.honorsdue.reference.unit.UnitCard;
import org.honorsdue.reference.unit.UnitCards;
import org.honorsdue.reference.unit.UnitKind;
import org.honorsdue.reference.unit.UnitTables;
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

/** Units: looking one up, reading a line, making a card, loading the tables. Time of one operation, one thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class UnitBenchmark {
    private UnitTables tables;
    private OrganizationReader reader;
    private UnitCards cards;

    @Setup
    public void prepare() {
        tables = UnitTables.published();
        reader = new OrganizationReader(tables);
        cards = new UnitCards(tables, Reference.published());
    }

    @Benchmark
    public List<Unit> byKindAndNumber() {
        return tables.units(UnitKind.INFANTRY_REGIMENT, 331);
    }

    @Benchmark
    public OrganizationReading cleanLine() {
        return reader.read("Co B 331st Inf");
    }

    @Benchmark
    public OrganizationReading lineRunTogetherWithASlip() {
        return reader.read("CoB33lstInf");
    }

    @Benchmark
    public OrganizationReading lineNotInTheTables() {
        return reader.read("3509th QM Truck Co (Cld) APO 350");
    }

    @Benchmark
    public Optional<UnitCard> card() {
        return cards.card("infantry-regiment-331/company-b");
    }

    @Benchmark
    public UnitTables loadTheTables() {
        return UnitTables.load(TableSource.beside(Reference.class));
    }

    @Benchmark
    public OrganizationReader makeTheReader() {
        return new OrganizationReader(tables);
    }
}
