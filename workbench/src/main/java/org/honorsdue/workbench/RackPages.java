package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.honorsdue.insignia.display.Addition;
import org.honorsdue.insignia.display.CasePlan;
import org.honorsdue.insignia.display.CaseWish;
import org.honorsdue.insignia.print.CasePrint;
import org.honorsdue.insignia.print.Paper;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.insignia.ribbon.RibbonRack;
import org.honorsdue.reference.insignia.Inches;
import org.honorsdue.reference.insignia.InsigniaTables;

/** The ribbon rack and the display case, drawn to scale. What is wished for stands in the address, so it can be kept. */
final class RackPages {
    private static final int MOST_MOVED = 80;
    private static final String USUAL_FRAME = "16x20";

    private final Desk desk;
    private final Pages pages;

    RackPages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void install(JavalinConfig config) {
        config.routes.get("/cases/{id}/rack", this::show);
        config.routes.get("/cases/{id}/rack.svg", request -> {
            var study = desk.study(new Asked(request).id(), desk.today());
            request.contentType("image/svg+xml")
                    .header("Content-Disposition", "attachment; filename=\"rack.svg\"")
                    .result(RibbonRack.of(study.findings(), style(request))
                            .svg()
                            .text());
        });
        config.routes.get("/cases/{id}/case.pdf", request -> {
            var study = desk.study(new Asked(request).id(), desk.today());
            var paper = new Asked(request).query("sheet").filter("a4"::equals).isPresent() ? Paper.A4 : Paper.LETTER;
            request.contentType("application/pdf")
                    .header("Content-Disposition", "inline; filename=\"case.pdf\"")
                    .result(CasePrint.pdf(CasePlan.of(study.findings(), wish(request)), paper, desk.today()));
        });
    }

    private static RackStyle style(Context request) {
        var asked = new Asked(request);
        return RackStyle.standard()
                .withPerRow(asked.query("row").filter("4"::equals).isPresent() ? 4 : 3)
                .withPractice(
                        asked.query("practice").filter("wartime"::equals).isPresent()
                                ? RackStyle.Practice.WARTIME
                                : RackStyle.Practice.PRESENT);
    }

    /** The case as wished for; a piece is moved by its id with both coordinates in inches. */
    private static CaseWish wish(Context request) {
        var asked = new Asked(request);
        try {
            var wish = CaseWish.ofSize(asked.query("frame").orElse(USUAL_FRAME))
                    .withRack(style(request).withCaptions(false));
            var plate = asked.query("plate").stream()
                    .flatMap(text -> text.lines().map(String::strip))
                    .filter(line -> !line.isEmpty())
                    .toList();
            if (!plate.isEmpty()) {
                wish = wish.adding(new Addition.Nameplate(plate));
            }
            if (asked.query("tags").isPresent()) {
                wish = wish.adding(new Addition.DogTags());
            }
            var pieces = request.queryParams("piece");
            var across = request.queryParams("x");
            var down = request.queryParams("y");
            int moved = Math.min(MOST_MOVED, Math.min(pieces.size(), Math.min(across.size(), down.size())));
            for (int i = 0; i < moved; i++) {
                if (!across.get(i).isBlank() && !down.get(i).isBlank()) {
                    wish = wish.moving(pieces.get(i), Inches.parse(across.get(i)), Inches.parse(down.get(i)));
                }
            }
            return wish;
        } catch (IllegalArgumentException e) {
            throw new InputFault(String.valueOf(e.getMessage()), List.of());
        }
    }

    /** The wish as it stands in the address, without the leading mark. */
    private static String address(Context request) {
        var parts = new ArrayList<String>();
        request.queryParamMap()
                .forEach((name, values) ->
                        values.forEach(value -> parts.add(URLEncoder.encode(name, StandardCharsets.UTF_8) + "="
                                + URLEncoder.encode(value, StandardCharsets.UTF_8))));
        return String.join("&", parts);
    }

    private void show(Context request) {
        var asked = new Asked(request);
        var study = desk.study(asked.id(), desk.today());
        var style = style(request);
        var parameters = new HashMap<String, Object>();
        parameters.put("study", study);
        parameters.put("rack", RibbonRack.of(study.findings(), style));
        parameters.put("style", style);
        parameters.put("plan", CasePlan.of(study.findings(), wish(request)));
        parameters.put("frames", InsigniaTables.published().frames());
        parameters.put("frame", asked.query("frame").orElse(USUAL_FRAME));
        parameters.put("plate", asked.query("plate").orElse(""));
        parameters.put("tags", asked.query("tags").isPresent());
        parameters.put("wished", address(request));
        parameters.put("tour", Tour.at(study.casefile(), "rack"));
        pages.show(request, "rack.jte", parameters);
    }
}
