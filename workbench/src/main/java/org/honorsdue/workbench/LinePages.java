package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import java.util.Map;
import org.honorsdue.determination.line.ServiceLine;

/** The service line: his own dates against the campaigns, drawn and told. */
final class LinePages {
    private final Desk desk;
    private final Pages pages;

    LinePages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void install(JavalinConfig config) {
        config.routes.get("/cases/{id}/line", request -> {
            var study = desk.study(new Asked(request).id(), desk.today());
            pages.show(
                    request,
                    "line.jte",
                    Map.of(
                            "study",
                            study,
                            "line",
                            LineDrawing.of(ServiceLine.of(study.facts(), study.findings(), desk.reference())),
                            "tour",
                            Tour.at(study.casefile(), "line")));
        });
    }
}
