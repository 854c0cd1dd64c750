package org.honorsdue.reference.insignia;

import java.util.HashSet;
import java.util.List;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code insignia/devices.csv}: one row a device and the ribbon it is worn on. */
final class DeviceTable {
    private static final String FILE = "devices.csv";

    private DeviceTable() {}

    static List<DeviceDesign> read(TableSource source, FaultList faults, List<RibbonColor> colors) {
        var rows = Table.read(
                source,
                "insignia/" + FILE,
                List.of("device", "worn_on", "metal", "width", "height", "most", "place", "note", "source", "grade"),
                faults,
                row -> device(row, colors));
        var seen = new HashSet<List<Object>>();
        for (Located<DeviceDesign> row : rows) {
            if (!seen.add(List.of(row.value().device(), row.value().wornOn()))) {
                faults.add(
                        FILE,
                        row.line(),
                        "device",
                        "\"%s\" stands twice for the same ribbon."
                                .formatted(row.value().device()),
                        "Take one out.");
            }
        }
        return rows.stream().map(Located::value).toList();
    }

    private static DeviceDesign device(Row row, List<RibbonColor> colors) {
        String metal = row.text("metal");
        if (colors.stream().noneMatch(color -> color.name().equals(metal))) {
            row.fault("metal", "\"%s\" is not in colors.csv.".formatted(metal), "Add the colour or correct the name.");
        }
        int most = row.number("most");
        if (most < 1) {
            row.fault("most", "A device that is never worn.", "Write at least 1.");
        }
        return new DeviceDesign(
                row.id("device"),
                row.choice("worn_on", DeviceDesign.WornOn.class),
                metal,
                Lengths.cell(row, "width"),
                Lengths.cell(row, "height"),
                most,
                row.number("place"),
                row.textOrEmpty("note"),
                row.provenance());
    }
}
