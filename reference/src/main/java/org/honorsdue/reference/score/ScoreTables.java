package org.honorsdue.reference.score;

import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** The four small tables in {@code score/}. Each read notes faults and leaves faulty rows out. */
public final class ScoreTables {
    /** File name of the factors, as faults name it. */
    public static final String FACTORS = "factors.csv";
    /** File name of the items. */
    public static final String ITEMS = "items.csv";
    /** File name of the rating days. */
    public static final String DAYS = "rating_days.csv";
    /** File name of the critical scores. */
    public static final String CRITICAL = "critical_scores.csv";

    private ScoreTables() {}

    /** {@code score/factors.csv}: one row a source of points. */
    public static List<Located<ScoreFactor>> factors(TableSource source, FaultList faults) {
        return Table.read(
                source,
                "score/" + FACTORS,
                List.of("id", "points", "unit", "from", "maximum", "rule", "source", "grade"),
                faults,
                row -> new ScoreFactor(
                        row.id("id"),
                        row.number("points"),
                        row.text("unit"),
                        row.optionalDate("from"),
                        row.optionalNumber("maximum"),
                        row.text("rule"),
                        row.provenance()));
    }

    /** {@code score/items.csv}: one row an award or device. */
    public static List<Located<ScoreItem>> items(TableSource source, FaultList faults) {
        return Table.read(
                source,
                "score/" + ITEMS,
                List.of("item", "counts", "note", "source", "grade"),
                faults,
                row -> new ScoreItem(row.id("item"), row.flag("counts"), row.textOrEmpty("note"), row.provenance()));
    }

    /** {@code score/rating_days.csv}: one row a day of computation. */
    public static List<Located<RatingDay>> days(TableSource source, FaultList faults) {
        return Table.read(
                source,
                "score/" + DAYS,
                List.of("day", "name", "note", "source", "grade"),
                faults,
                row -> new RatingDay(row.date("day"), row.text("name"), row.textOrEmpty("note"), row.provenance()));
    }

    /** {@code score/critical_scores.csv}: one row a group and a time. */
    public static List<Located<CriticalScore>> critical(TableSource source, FaultList faults) {
        return Table.read(
                source,
                "score/" + CRITICAL,
                List.of("who", "points", "from", "until", "note", "source", "grade"),
                faults,
                ScoreTables::criticalScore);
    }

    private static CriticalScore criticalScore(Row row) {
        var from = row.date("from");
        var until = row.optionalDate("until");
        row.inOrder("from", Optional.of(from), "until", until);
        return new CriticalScore(
                row.text("who"), row.number("points"), from, until, row.textOrEmpty("note"), row.provenance());
    }
}
