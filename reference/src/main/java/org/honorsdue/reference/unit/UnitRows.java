package org.honorsdue.reference.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** The tables of units, row by row. Faults are noted, faulty rows left out. */
final class UnitRows {
    static final String UNITS = "units.csv";
    static final String MEMBERSHIPS = "memberships.csv";
    static final String CAMPAIGNS = "unit_campaigns.csv";
    static final String ASSAULTS = "unit_assaults.csv";
    static final String AWARDS = "unit_awards.csv";
    static final String WHEREABOUTS = "whereabouts.csv";
    static final String OVERSEAS = "overseas.csv";
    static final String PATCHES = "patches.csv";
    static final String LETTERED = "lettered_companies.csv";

    private static final String FOLDER = "unit/";

    private final TableSource source;
    private final FaultList faults;

    UnitRows(TableSource source, FaultList faults) {
        this.source = source;
        this.faults = faults;
    }

    List<Located<Unit>> units() {
        return Table.read(
                source,
                FOLDER + UNITS,
                List.of("id", "kind", "number", "name", "nickname", "aliases", "theater", "note", "source", "grade"),
                faults,
                row -> new Unit(
                        row.id("id"),
                        row.choice("kind", UnitKind.class),
                        row.optionalNumber("number"),
                        row.text("name"),
                        row.textOrEmpty("nickname"),
                        row.list("aliases"),
                        row.textOrEmpty("theater"),
                        row.textOrEmpty("note"),
                        row.provenance()));
    }

    List<Located<Membership>> memberships() {
        return Table.read(
                source,
                FOLDER + MEMBERSHIPS,
                List.of("unit", "parent", "from", "to", "relation", "note", "source", "grade"),
                faults,
                row -> new Membership(
                        row.id("unit"),
                        row.id("parent"),
                        span(row),
                        row.choice("relation", Membership.Relation.class),
                        row.textOrEmpty("note"),
                        row.provenance()));
    }

    List<Located<CampaignCredit>> campaigns() {
        return Table.read(
                source,
                FOLDER + CAMPAIGNS,
                List.of("unit", "campaigns", "note", "source", "grade"),
                faults,
                row -> new CampaignCredit(
                        row.id("unit"), row.list("campaigns"), row.textOrEmpty("note"), row.provenance()));
    }

    List<Located<UnitAssault>> assaults() {
        return Table.read(
                source,
                FOLDER + ASSAULTS,
                List.of(
                        "unit",
                        "parts",
                        "campaign",
                        "place",
                        "from",
                        "to",
                        "means",
                        "reach",
                        "note",
                        "source",
                        "grade"),
                faults,
                row -> new UnitAssault(
                        row.id("unit"),
                        parts(row),
                        row.text("campaign"),
                        row.text("place"),
                        span(row),
                        row.choice("means", UnitAssault.Means.class),
                        row.choice("reach", UnitAssault.Reach.class),
                        row.textOrEmpty("note"),
                        row.provenance()));
    }

    List<Located<UnitAward>> awards() {
        return Table.read(
                source,
                FOLDER + AWARDS,
                List.of(
                        "unit",
                        "parts",
                        "award",
                        "action",
                        "from",
                        "to",
                        "order",
                        "as_named",
                        "note",
                        "source",
                        "grade"),
                faults,
                row -> new UnitAward(
                        row.id("unit"),
                        parts(row),
                        row.choice("award", UnitAward.Kind.class),
                        row.text("action"),
                        span(row),
                        row.textOrEmpty("order"),
                        row.text("as_named"),
                        row.textOrEmpty("note"),
                        row.provenance()));
    }

    List<Located<Whereabouts>> whereabouts() {
        return Table.read(
                source,
                FOLDER + WHEREABOUTS,
                List.of("unit", "from", "to", "place", "area", "note", "source", "grade"),
                faults,
                row -> new Whereabouts(
                        row.id("unit"),
                        span(row),
                        row.text("place"),
                        row.choice("area", Whereabouts.Area.class),
                        row.textOrEmpty("note"),
                        row.provenance()));
    }

    List<Located<OverseasHistory>> overseas() {
        return Table.read(
                source,
                FOLDER + OVERSEAS,
                List.of(
                        "unit",
                        "arrived",
                        "arrived_at",
                        "entered_combat",
                        "returned",
                        "inactivated",
                        "fields_read",
                        "note",
                        "source",
                        "grade"),
                faults,
                row -> new OverseasHistory(
                        row.id("unit"),
                        date(row, "arrived"),
                        row.textOrEmpty("arrived_at"),
                        date(row, "entered_combat"),
                        date(row, "returned"),
                        date(row, "inactivated"),
                        row.list("fields_read"),
                        row.textOrEmpty("note"),
                        row.provenance()));
    }

    List<Located<Patch>> patches() {
        return Table.read(
                source,
                FOLDER + PATCHES,
                List.of("unit", "shape", "description", "approved", "note", "source", "grade"),
                faults,
                row -> new Patch(
                        row.id("unit"),
                        row.textOrEmpty("shape"),
                        row.text("description"),
                        row.textOrEmpty("approved"),
                        row.textOrEmpty("note"),
                        row.provenance()));
    }

    List<Located<LetteredCompanies>> lettered() {
        return Table.read(
                source,
                FOLDER + LETTERED,
                List.of("kind", "battalion", "letters", "note", "source", "grade"),
                faults,
                row -> new LetteredCompanies(
                        row.choice("kind", UnitKind.class),
                        row.number("battalion"),
                        row.list("letters"),
                        row.textOrEmpty("note"),
                        row.provenance()));
    }

    private static List<UnitPart> parts(Row row) {
        var parts = new ArrayList<UnitPart>();
        for (String part : row.list("parts")) {
            try {
                parts.add(new UnitPart(part));
            } catch (IllegalArgumentException e) {
                row.fault("parts", "\"%s\" is not a part of a unit.".formatted(part), "Write battalion-2, company-f.");
            }
        }
        return parts;
    }

    private static LooseSpan span(Row row) {
        var from = date(row, "from");
        var to = date(row, "to");
        try {
            return new LooseSpan(from, to);
        } catch (IllegalArgumentException e) {
            row.fault("to", "The end lies before the start.", "Check whether the two dates were swapped.");
            return LooseSpan.ALWAYS;
        }
    }

    private static Optional<LooseDate> date(Row row, String column) {
        String cell = row.textOrEmpty(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LooseDate.parse(cell));
        } catch (IllegalArgumentException e) {
            row.fault(column, "\"%s\" is not a date.".formatted(cell), "Write yyyy, yyyy-MM or yyyy-MM-dd.");
            return Optional.empty();
        }
    }
}
