package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.stream.Stream;
import org.honorsdue.insignia.display.CasePlan;
import org.honorsdue.insignia.display.Piece;
import org.honorsdue.insignia.display.Placed;
import org.honorsdue.insignia.display.SoldiersSleeve;
import org.honorsdue.insignia.print.CasePrint;
import org.honorsdue.insignia.print.Paper;
import org.honorsdue.insignia.ribbon.RibbonRack;
import org.honorsdue.reference.insignia.InsigniaTables;

/** The ribbon rack and the display case, drawn to scale. How they are wished for is kept with the case. */
final class RackPages {
    private final Desk desk;
    private final Pages pages;

    RackPages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void install(JavalinConfig config) {
        config.routes.get("/cases/{id}/rack", this::show);
        config.routes.post("/cases/{id}/rack", this::layOut);
        config.routes.get("/cases/{id}/rack.svg", request -> {
            var study = desk.study(new Asked(request).id(), desk.today());
            request.contentType("image/svg+xml")
                    .header("Content-Disposition", "attachment; filename=\"rack.svg\"")
                    .result(RibbonRack.of(study.findings(), kept(study).style())
                            .svg()
                            .text());
        });
        config.routes.get("/cases/{id}/case.pdf", request -> {
            var study = desk.study(new Asked(request).id(), desk.today());
            var paper = new Asked(request).query("sheet").filter("a4"::equals).isPresent() ? Paper.A4 : Paper.LETTER;
            request.contentType("application/pdf")
                    .header("Content-Disposition", "inline; filename=\"case.pdf\"")
                    .result(CasePrint.pdf(
                            CasePlan.of(study.findings(), kept(study).wish(study.facts())), paper, desk.today()));
        });
    }

    private static DisplayWish kept(Study study) {
        return DisplayWish.kept(study.kept().content().display());
    }

    private void layOut(Context request) {
        var asked = new Asked(request);
        var wish = DisplayWish.of(request);
        // A frame or a place that is none is told before anything is kept.
        wish.wish(desk.study(asked.id(), desk.today()).facts());
        desk.save(asked.id(), asked.revision(), content -> content.withDisplay(wish.text()), "rack and case laid out");
        request.redirect("/cases/" + asked.id() + "/rack", HttpStatus.SEE_OTHER);
    }

    /** The pieces that are not wanted, so that they can be taken back. */
    private static List<Piece> leftOut(Study study, DisplayWish wish) {
        if (wish.out().isEmpty()) {
            return List.of();
        }
        var whole = CasePlan.of(study.findings(), wish.withEverything().wish(study.facts()));
        return Stream.concat(whole.placed().stream().map(Placed::piece), whole.unplaced().stream())
                .filter(piece -> wish.out().contains(piece.id()))
                .toList();
    }

    private void show(Context request) {
        var study = desk.study(new Asked(request).id(), desk.today());
        var wish = kept(study);
        var parameters = new HashMap<String, Object>();
        parameters.put("study", study);
        parameters.put("wish", wish);
        parameters.put("rack", RibbonRack.of(study.findings(), wish.style()));
        parameters.put("plan", CasePlan.of(study.findings(), wish.wish(study.facts())));
        parameters.put("leftOut", leftOut(study, wish));
        parameters.put("frames", InsigniaTables.published().frames());
        parameters.put("chevrons", SoldiersSleeve.chevrons(study.facts()));
        parameters.put("tour", Tour.at(study.casefile(), "rack"));
        pages.show(request, "rack.jte", parameters);
    }
}
