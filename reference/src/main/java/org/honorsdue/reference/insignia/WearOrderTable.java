package org.honorsdue.reference.insignia;

import java.util.HashSet;
import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code insignia/precedence.csv}: one row an award that is worn among ribbons. */
final class WearOrderTable {
    private static final String FILE = "precedence.csv";

    private WearOrderTable() {}

    static List<WearOrder> read(TableSource source, FaultList faults, List<RibbonDesign> ribbons) {
        var rows = Table.read(
                source,
                "insignia/" + FILE,
                List.of("award", "place", "block", "present", "wartime", "note", "source", "grade"),
                faults,
                row -> new WearOrder(
                        row.id("award"),
                        row.choice("place", WearOrder.Place.class),
                        row.choice("block", WearOrder.Block.class),
                        row.number("present"),
                        row.number("wartime"),
                        row.textOrEmpty("note"),
                        row.provenance()));
        var awards = new HashSet<String>();
        var present = new HashSet<Integer>();
        var wartime = new HashSet<Integer>();
        for (Located<WearOrder> row : rows) {
            WearOrder order = row.value();
            if (!awards.add(order.award()) || !present.add(order.present()) || !wartime.add(order.wartime())) {
                faults.add(
                        FILE,
                        row.line(),
                        "award",
                        "\"%s\" or one of its two places stands twice.".formatted(order.award()),
                        "Give every award one row and places of its own.");
            }
            if (ribbons.stream().noneMatch(ribbon -> ribbon.id().equals(order.award()))) {
                faults.add(
                        FILE,
                        row.line(),
                        "award",
                        "\"%s\" has no ribbon in ribbons.csv.".formatted(order.award()),
                        "Add the ribbon or correct the id.");
            }
        }
        for (RibbonDesign ribbon : ribbons) {
            if (!awards.contains(ribbon.id())) {
                faults.add(
                        FILE,
                        0,
                        "award",
                        "The ribbon \"%s\" has no place in the order.".formatted(ribbon.id()),
                        "Add a row for it.");
            }
        }
        return rows.stream().map(Located::value).toList();
    }
}
