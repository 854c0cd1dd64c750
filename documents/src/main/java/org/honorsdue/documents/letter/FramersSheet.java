package org.honorsdue.documents.letter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;
import org.honorsdue.insignia.display.Addition;
import org.honorsdue.insignia.display.CasePlan;
import org.honorsdue.insignia.display.CaseWish;
import org.honorsdue.insignia.display.Placed;
import org.honorsdue.insignia.display.SoldiersSleeve;
import org.honorsdue.insignia.drawing.Drawing;
import org.honorsdue.insignia.drawing.Mark;
import org.honorsdue.insignia.drawing.Placement;
import org.honorsdue.insignia.drawing.Svg;
import org.honorsdue.reference.Grade;
import org.honorsdue.reference.insignia.InsigniaTables;

/**
 * For the framer: the plan of the case, the parts, what keeps the things well and what keeps the framer safe.
 * Conservation practice: National Park Service Conserve O Gram 13/4; Australian War Memorial, care notes; Library of
 * Congress leaflet on mat board, as reprinted; the rest is trade practice from memory.
 */
final class FramersSheet {
    /** Inches the plan may take on a sheet of either size. */
    private static final double WIDEST = 5.6;

    private static final double HIGHEST = 5.4;

    /** Inches left round the plan, so that no printer and no renderer cuts its outline. */
    private static final double EDGE = 0.05;

    private FramersSheet() {}

    static Page of(Dossier dossier) {
        var plan = plan(dossier);
        var page = Page.of("framers-sheet", Page.Kind.SHEET, "Framer\u2019s sheet", dossier.soldier(), dossier.dated());
        page.say(
                "Opening of the frame: %s inches wide, %s inches high, %s inch clear between board and glass. Numbers on the"
                                .formatted(
                                        plan.wish().width().text(),
                                        plan.wish().height().text(),
                                        plan.wish().depth().text())
                        + " plan are those of the list.");
        page.add(drawing(plan));
        page.fine("Reduced. The template at true size is printed from the display case itself, not from this sheet.");
        parts(plan, page);
        attention(plan, page);
        care(page);
        slip(dossier, page);
        return page.page();
    }

    /**
     * As somebody laid it out; else the smallest common frame in which everything lies at ease, upright, and 16 by 20
     * inches when there is none.
     */
    private static CasePlan plan(Dossier dossier) {
        if (dossier.display().isPresent()) {
            return CasePlan.of(dossier.findings(), dossier.display().get());
        }
        var wish = SoldiersSleeve.dressed(CaseWish.ofSize("16x20"), dossier.facts(), InsigniaTables.published())
                .adding(new Addition.Nameplate(plate(dossier)));
        var plan = CasePlan.of(dossier.findings(), wish);
        return plan.smallestFrame()
                .map(frame -> CasePlan.of(dossier.findings(), wish.withFrame(frame.width(), frame.height())))
                .orElse(plan);
    }

    // Only settled facts go on a plate: the name, and what the paper says of grade and arm.
    private static List<String> plate(Dossier dossier) {
        var lines = new ArrayList<String>();
        lines.add(dossier.person().full());
        String grade = new ServiceStory(dossier).gradeAndArm();
        if (!grade.isEmpty()) {
            lines.add(grade);
        }
        return lines;
    }

    private static Block.Drawing drawing(CasePlan plan) {
        double width = plan.wish().width().decimal();
        double height = plan.wish().height().decimal();
        double scale = Math.min(1, Math.min(WIDEST / width, HIGHEST / height));
        var full = plan.overview(1 / scale);
        var reduced = new Drawing(
                width * scale + 2 * EDGE,
                height * scale + 2 * EDGE,
                List.of(Mark.group(Placement.scaled(scale).then(Placement.at(EDGE, EDGE)), full.marks())));
        String words = "Plan of the display case. " + plan.description();
        return new Block.Drawing(Svg.of(reduced, words, "").text(), words);
    }

    private static void parts(CasePlan plan, Page.Builder page) {
        page.part("Parts");
        page.table(
                List.of("No.", "Piece", "Wide x high, in", "To have in hand", "Proved in"),
                List.of(5, 26, 15, 36, 18),
                plan.placed().stream().map(FramersSheet::row).toList());
        page.fine(
                "\u201ccheck\u201d marks a size that is trade practice from memory: measure the piece before the board is cut."
                        + " Write beside each whether it is the original or a replacement.");
    }

    private static List<String> row(Placed placed) {
        var piece = placed.piece();
        String size = piece.width().text() + " x " + piece.height().text();
        return List.of(
                Integer.toString(placed.number()),
                piece.name() + (piece.pending() ? " (not settled: leave the place empty, with a printed slip)" : ""),
                piece.sizeGrade() == Grade.MEMORY ? size + ", check" : size,
                piece.parts().stream()
                        .map(part -> (part.count() > 1 ? part.count() + " x " : "")
                                + part.what()
                                + (part.size().isBlank() ? "" : " (" + part.size() + ")"))
                        .collect(Collectors.joining("; ")),
                piece.authority());
    }

    private static void attention(CasePlan plan, Page.Builder page) {
        if (!plan.breaches().isEmpty()) {
            page.part("To be looked at");
            page.points(plan.breaches().stream()
                    .map(breach -> breach.says() + (breach.grade() == Grade.MEMORY ? " (trade practice)" : ""))
                    .distinct()
                    .toList());
        }
    }

    private static void care(Page.Builder page) {
        page.part("Keeping them well");
        page.points(List.of(
                "Everything reversible: no glue, no tape, no hot glue, no fusible web on an original. Medals are tied by the bar"
                        + " or lie in a recess; patches are stitched round the edge; paper lies in corners or channels.",
                "Board of cotton rag or purified pulp, free of lignin, pH 7 to 8.5; unbuffered under photographs, silk and wool."
                        + " No wool felt or velvet, oak, chipboard or ordinary plywood: they tarnish metal.",
                "Glazing with an ultraviolet filter, held off the objects by a window mat or spacer.",
                "Closed but not airtight; brass or stainless pins, not iron; raw wood sealed inside.",
                "18 to 24 C, 45 to 55 percent humidity, no outside wall, kitchen, fireplace or sun.",
                "The original paper does not hang: a facsimile goes into the case, the original into an acid-free folder.",
                "Do not polish. Handle metal with clean gloves."));
        page.part("Keeping everybody safe");
        page.points(List.of(
                "Nothing live: no cartridge, grenade or fuze goes behind glass before somebody licensed has made it safe.",
                "Instrument dials of the time may be painted with radium: do not open, do not enclose, ask a licensed person.",
                "Edged weapons and firearms only as local law allows.",
                "Nothing that is not settled is mounted. The law on buying, selling and claiming decorations is 18 U.S.C. 704;"
                        + " read it as it stands."));
    }

    private static void slip(Dossier dossier, Page.Builder page) {
        page.part("Slip to seal behind the backing");
        page.add(new Block.Particulars(List.of(
                new Block.Particular("In memory of", dossier.person().full(), false),
                new Block.Particular(
                        "Contents as listed on", "the framer\u2019s sheet of " + Wording.day(dossier.dated()), false),
                new Block.Particular("Originals", "", false),
                new Block.Particular("Replacements", "", false),
                new Block.Particular("Made by, on", "", false))));
    }

    /** Whether there is anything to lay in a case. */
    static boolean hasContents(Dossier dossier) {
        return !dossier.authorized().isEmpty();
    }
}
