package org.honorsdue.documents.letter;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.determination.finding.Findings;
import org.honorsdue.documents.page.Block;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.insignia.ribbon.RibbonDrawing;
import org.honorsdue.insignia.ribbon.RibbonRack;

/** The ribbons of a case: the rack in true size, and each ribbon small, to stand beside its words. */
final class Ribbons {
    /** Of a small ribbon, in inches: what fits before a line of words. */
    private static final double SMALL = 0.76;

    private final RibbonRack rack;
    private final RackStyle style =
            RackStyle.standard().withPlacesFor(List.of()).withCaptions(false);
    private final Map<String, Block.Drawing> small = new HashMap<>();

    Ribbons(Findings findings) {
        rack = RibbonRack.of(findings, style);
        rack.leftBreast().forEach(row -> row.forEach(this::small));
        rack.rightBreast().forEach(row -> row.forEach(this::small));
    }

    /** Empty when no ribbon is authorized. */
    Optional<Block.Drawing> rack() {
        if (rack.isEmpty()) {
            return Optional.empty();
        }
        String words = "The ribbons. " + rack.description();
        return Optional.of(new Block.Drawing(Svg.of(rack.drawing(), words, "").text(), words));
    }

    /** The ribbon of an award by the award's name, when it is authorized and has one. */
    Optional<Block.Drawing> of(String name) {
        return Optional.ofNullable(small.get(name));
    }

    private void small(RibbonRack.Worn worn) {
        if (worn.further()) {
            return;
        }
        var full = RibbonDrawing.of(worn.design(), worn.devices(), style.finish());
        double scale = SMALL / full.width();
        var drawing = new Drawing(
                full.width() * scale,
                full.height() * scale,
                List.of(Mark.group(Placement.scaled(scale), full.marks())));
        String words = "Ribbon: " + worn.says();
        small.put(worn.name(), new Block.Drawing(Svg.of(drawing, words, "").text(), words));
    }
}
