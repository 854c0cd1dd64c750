package org.honorsdue.reference.insignia;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.Provenance;
import org.honorsdue.reference.table.FaultList;
import org.honorsdue.reference.table.Located;
import org.honorsdue.reference.table.Row;
import org.honorsdue.reference.table.Table;
import org.honorsdue.reference.table.TableSource;

/** {@code insignia/ribbons.csv}, one row a ribbon, and {@code insignia/stripes.csv}, one row a stripe. */
final class RibbonTables {
    private static final String RIBBONS = "ribbons.csv";
    private static final String STRIPES = "stripes.csv";

    private RibbonTables() {}

    /** A ribbon as its own row tells it, before its stripes are known. */
    private record Ground(
            String id,
            String name,
            RibbonDesign.Kind kind,
            Inches width,
            RibbonDesign.Overlay overlay,
            boolean framed,
            String note,
            Provenance provenance) {}

    static List<RibbonDesign> read(TableSource source, FaultList faults, List<RibbonColor> colors) {
        var grounds = Table.read(
                source,
                "insignia/" + RIBBONS,
                List.of("id", "name", "kind", "width", "overlay", "framed", "note", "source", "grade"),
                faults,
                row -> new Ground(
                        row.id("id"),
                        row.text("name"),
                        row.choice("kind", RibbonDesign.Kind.class),
                        Lengths.cell(row, "width"),
                        row.choice("overlay", RibbonDesign.Overlay.class),
                        row.flag("framed"),
                        row.textOrEmpty("note"),
                        row.provenance()));
        var stripes = Table.read(
                source,
                "insignia/" + STRIPES,
                List.of("ribbon", "number", "published", "drawn", "color", "basis", "source", "grade"),
                faults,
                row -> stripe(row, colors));

        Map<String, List<Located<RibbonStripe>>> byRibbon = new LinkedHashMap<>();
        for (Located<RibbonStripe> row : stripes) {
            byRibbon.computeIfAbsent(row.value().ribbon(), ribbon -> new ArrayList<>())
                    .add(row);
        }
        var ribbons = new ArrayList<RibbonDesign>();
        for (Located<Ground> row : grounds) {
            Ground ground = row.value();
            var own = byRibbon.remove(ground.id());
            if (own == null) {
                faults.add(
                        RIBBONS,
                        row.line(),
                        "id",
                        "No stripe of \"%s\" stands in %s, or the ribbon stands twice.".formatted(ground.id(), STRIPES),
                        "Give it at least one stripe, and one row.");
                continue;
            }
            check(ground, own, faults);
            ribbons.add(new RibbonDesign(
                    ground.id(),
                    ground.name(),
                    ground.kind(),
                    ground.width(),
                    ground.overlay(),
                    ground.framed(),
                    ground.note(),
                    own.stream().map(Located::value).toList(),
                    ground.provenance()));
        }
        byRibbon.forEach((ribbon, orphans) -> faults.add(
                STRIPES,
                orphans.get(0).line(),
                "ribbon",
                "\"%s\" is no ribbon of %s.".formatted(ribbon, RIBBONS),
                "Add the ribbon or correct the id."));
        return List.copyOf(ribbons);
    }

    private static void check(Ground ground, List<Located<RibbonStripe>> stripes, FaultList faults) {
        Inches sum = Inches.ZERO;
        int number = 0;
        for (Located<RibbonStripe> row : stripes) {
            RibbonStripe stripe = row.value();
            number++;
            if (stripe.number() != number) {
                faults.add(
                        STRIPES,
                        row.line(),
                        "number",
                        "Stripe %d of \"%s\" stands where number %d is due."
                                .formatted(stripe.number(), ground.id(), number),
                        "Number the stripes 1, 2, 3 from the viewer's left.");
            }
            if (!stripe.drawn().equals(stripe.published()) && ground.note().isEmpty()) {
                faults.add(
                        STRIPES,
                        row.line(),
                        "drawn",
                        "The stripe is drawn %s wide and published as %s."
                                .formatted(
                                        stripe.drawn().text(),
                                        stripe.published().text()),
                        "Say why in the note of the ribbon.");
            }
            sum = sum.plus(stripe.drawn());
        }
        if (!sum.equals(ground.width())) {
            faults.add(
                    STRIPES,
                    stripes.get(0).line(),
                    "drawn",
                    "The stripes of \"%s\" add up to %s in, the ribbon is %s in wide."
                            .formatted(ground.id(), sum.text(), ground.width().text()),
                    "Compare each width with the publication in column 'source'.");
        }
    }

    private static RibbonStripe stripe(Row row, List<RibbonColor> colors) {
        String name = row.text("color");
        Optional<RibbonColor> color =
                colors.stream().filter(known -> known.name().equals(name)).findFirst();
        if (color.isEmpty()) {
            row.fault("color", "\"%s\" is not in colors.csv.".formatted(name), "Add the colour or correct the name.");
        }
        RibbonColor worn = color.orElseGet(
                () -> new RibbonColor(name, "", 0, List.of(), "", new Provenance("memory", Grade.MEMORY)));
        return new RibbonStripe(
                row.id("ribbon"),
                row.number("number"),
                Lengths.cell(row, "published"),
                Lengths.cell(row, "drawn"),
                worn,
                row.choice("basis", RibbonStripe.Basis.class),
                row.provenance());
    }
}
