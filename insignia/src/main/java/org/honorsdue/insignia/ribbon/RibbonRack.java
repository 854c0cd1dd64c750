package org.honorsdue.insignia.ribbon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.honorsdue.determination.finding.Finding;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.determination.finding.Standing;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.reference.insignia.InsigniaTables;
import org.honorsdue.reference.insignia.RibbonDesign;
import org.honorsdue.reference.insignia.WearOrder;

/**
 * The ribbons that findings authorize, in the order of wear, as somebody sees them who stands before the wearer: the
 * first ribbon is at the viewer's upper left, unit awards stand apart at the viewer's left, on the wearer's right
 * breast. A rack adds nothing to the findings: what is not authorized is not drawn, what is open is at most an empty
 * place.
 *
 * @param leftBreast rows from the top, each from the viewer's left
 * @param rightBreast unit awards, the same way
 * @param remarks what a reader should know: where two practices differ, what was left out and why
 */
public record RibbonRack(
        List<List<Worn>> leftBreast, List<List<Worn>> rightBreast, List<String> remarks, RackStyle style) {
    public RibbonRack {
        leftBreast = leftBreast.stream().map(List::copyOf).toList();
        rightBreast = rightBreast.stream().map(List::copyOf).toList();
        remarks = List.copyOf(remarks);
    }

    /**
     * One ribbon of the rack.
     *
     * @param name of the award, as the finding has it
     * @param further a second ribbon of the same award, worn because its devices do not fit on the first
     */
    public record Worn(RibbonDesign design, String name, DeviceRow devices, Standing standing, boolean further) {
        public boolean isPlaceKept() {
            return standing != Standing.AUTHORIZED;
        }

        /** {@code Bronze Star Medal, letter V, bronze oak leaf cluster}. */
        public String says() {
            if (isPlaceKept()) {
                return name + " (not settled: place kept)";
            }
            String further = this.further ? " (further ribbon)" : "";
            return name + further + (devices.isEmpty() ? "" : ", " + devices.says());
        }
    }

    /** The rack of findings, from the published tables. */
    public static RibbonRack of(Findings findings, RackStyle style) {
        return of(findings, style, InsigniaTables.published());
    }

    /** The rack of findings, from given tables. */
    public static RibbonRack of(Findings findings, RackStyle style, InsigniaTables tables) {
        var left = new ArrayList<Placed>();
        var right = new ArrayList<Placed>();
        var remarks = new RackRemarks(style);
        for (Finding finding : findings.findings()) {
            Optional<RibbonDesign> design = tables.ribbon(finding.award());
            Optional<WearOrder> order = tables.wearOrder(finding.award());
            if (design.isEmpty() || order.isEmpty()) {
                continue;
            }
            boolean drawn = finding.standing() == Standing.AUTHORIZED;
            if (!drawn && !style.placesFor().contains(finding.standing())) {
                remarks.leftOut(finding);
                continue;
            }
            if (style.practice() == RackStyle.Practice.WARTIME
                    && finding.award().equals("meritorious-unit-commendation")) {
                remarks.wreath();
                continue;
            }
            remarks.drawn(finding, order.get());
            var group = order.get().place() == WearOrder.Place.LEFT_BREAST ? left : right;
            group.add(new Placed(order.get(), worn(finding, design.get(), drawn, tables)));
        }
        left.sort(order(style));
        right.sort(order(style));
        return new RibbonRack(rows(left, style), rows(right, style), remarks.all(), style);
    }

    /** An award and its ribbons, before they stand in rows. */
    private record Placed(WearOrder order, List<Worn> ribbons) {}

    private static List<Worn> worn(Finding finding, RibbonDesign design, boolean drawn, InsigniaTables tables) {
        if (!drawn) {
            return List.of(new Worn(design, finding.name(), new DeviceRow(List.of()), finding.standing(), false));
        }
        var ribbons = new ArrayList<Worn>();
        for (DeviceRow row : DeviceRow.rows(finding.devices(), design.width(), tables)) {
            ribbons.add(new Worn(design, finding.name(), row, finding.standing(), !ribbons.isEmpty()));
        }
        return ribbons;
    }

    private static Comparator<Placed> order(RackStyle style) {
        return Comparator.<Placed, WearOrder.Block>comparing(placed -> placed.order.block())
                .thenComparing(placed -> {
                    int known = style.serviceOrder().indexOf(placed.order.award());
                    return known < 0 ? Integer.MAX_VALUE : known;
                })
                .thenComparing(placed -> style.practice() == RackStyle.Practice.PRESENT
                        ? placed.order.present()
                        : placed.order.wartime());
    }

    /** Full rows below, the short one on top. */
    private static List<List<Worn>> rows(List<Placed> placed, RackStyle style) {
        List<Worn> all = placed.stream().flatMap(one -> one.ribbons.stream()).toList();
        var rows = new ArrayList<List<Worn>>();
        // No second row before there are four ribbons (AR 670-1, 2005).
        int shortRow = all.size() % style.perRow();
        int from = 0;
        if (shortRow > 0) {
            rows.add(all.subList(0, shortRow));
            from = shortRow;
        }
        for (; from < all.size(); from += style.perRow()) {
            rows.add(all.subList(from, from + style.perRow()));
        }
        return rows;
    }

    public boolean isEmpty() {
        return leftBreast.isEmpty() && rightBreast.isEmpty();
    }

    /** The number of ribbons and kept places on both sides. */
    public int size() {
        return leftBreast.stream().mapToInt(List::size).sum()
                + rightBreast.stream().mapToInt(List::size).sum();
    }

    /** Every ribbon in words, row by row, as a screen reader reads it. */
    public String description() {
        if (isEmpty()) {
            return "No ribbon is authorized by the findings.";
        }
        var words = new StringBuilder("As the viewer sees it. ");
        if (!leftBreast.isEmpty()) {
            words.append("Wearer's left breast, from the viewer's left, top row first: ");
            describe(words, leftBreast);
        }
        if (!rightBreast.isEmpty()) {
            words.append(leftBreast.isEmpty() ? "" : " ").append("Wearer's right breast, at the viewer's left: ");
            describe(words, rightBreast);
        }
        return words.toString();
    }

    private static void describe(StringBuilder words, List<List<Worn>> rows) {
        for (int row = 0; row < rows.size(); row++) {
            if (rows.size() > 1) {
                words.append(row == 0 ? "row 1: " : " Row " + (row + 1) + ": ");
            }
            words.append(String.join(
                            "; ", rows.get(row).stream().map(Worn::says).toList()))
                    .append('.');
        }
    }

    /** The rows of one breast in true size, without margins or captions. */
    public Drawing group(List<List<Worn>> rows) {
        return RackDrawing.group(rows, style);
    }

    /** The rack in true size. An empty rack is a small sheet that says so. */
    public Drawing drawing() {
        return RackDrawing.of(this);
    }

    public Svg svg() {
        return Svg.of(drawing(), "Ribbon rack", description());
    }
}
