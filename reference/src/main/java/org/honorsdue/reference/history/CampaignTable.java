package org.honorsdue.reference.history;

import java.util.List;
import org.honorsdue.reference.Theater;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code history/campaigns.csv}: one row a campaign. */
public final class CampaignTable {
    /** File name, as faults name it. */
    public static final String NAME = "campaigns.csv";

    private static final List<String> COLUMNS = List.of(
            "id",
            "theater",
            "medal",
            "name",
            "variants",
            "ground_first",
            "ground_last",
            "air_first",
            "air_last",
            "area",
            "blanket",
            "note",
            "source",
            "grade");

    private CampaignTable() {}

    /** Reads the table; faults are noted, faulty rows left out. */
    public static List<Located<Campaign>> read(TableSource source, FaultList faults) {
        return Table.read(source, "history/" + NAME, COLUMNS, faults, CampaignTable::campaign);
    }

    private static Campaign campaign(Row row) {
        return new Campaign(
                row.text("id"),
                row.choice("theater", Theater.class),
                row.id("medal"),
                row.text("name"),
                row.list("variants"),
                row.span("ground_first", "ground_last"),
                row.span("air_first", "air_last"),
                row.text("area"),
                row.flag("blanket"),
                row.textOrEmpty("note"),
                row.provenance());
    }
}
