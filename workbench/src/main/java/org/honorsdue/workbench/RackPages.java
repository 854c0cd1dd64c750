package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import org.honorsdue.insignia.ribbon.RackStyle;
import org.honorsdue.insignia.ribbon.RibbonRack;

/** The ribbon rack, drawn to scale. */
final class RackPages {
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

    private void show(Context request) {
        var study = desk.study(new Asked(request).id(), desk.today());
        var style = style(request);
        var parameters = new HashMap<String, Object>();
        parameters.put("study", study);
        parameters.put("rack", RibbonRack.of(study.findings(), style));
        parameters.put("style", style);
        parameters.put("tour", Tour.at(study.casefile(), "rack"));
        pages.show(request, "rack.jte", parameters);
    }
}
