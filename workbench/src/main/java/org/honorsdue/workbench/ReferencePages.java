package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.casebook.CaseLine;
import org.honorsdue.casebook.CaseQuery;
import org.honorsdue.casebook.SearchTerm;
import org.honorsdue.reading.unit.OrganizationReader;
import org.honorsdue.reference.unit.UnitCards;
import org.honorsdue.reference.unit.UnitTables;

/** The two desks of reference: units, and the law as it is held. */
final class ReferencePages {
    private final Desk desk;
    private final Pages pages;
    private final OrganizationReader units;
    private final UnitCards cards;

    ReferencePages(Desk desk, Pages pages, OrganizationReader units) {
        this.desk = desk;
        this.pages = pages;
        this.units = units;
        this.cards = new UnitCards(UnitTables.published(), desk.reference());
    }

    void install(JavalinConfig config) {
        config.routes.get("/units", this::unit);
        config.routes.get("/law", request -> {
            String words = new Asked(request).query("words").orElse("");
            pages.show(request, "law.jte", Map.of("words", words, "rules", LawSearch.rules(desk.law(), words)));
        });
        config.routes.get("/law/{award}", this::rule);
    }

    private void unit(Context request) {
        String words = new Asked(request).query("words").orElse("");
        var parameters = new HashMap<String, Object>();
        parameters.put("words", words);
        var found = words.isBlank() ? Optional.<UnitSheet>empty() : Optional.of(UnitSheet.of(units.read(words), cards));
        parameters.put("found", found);
        parameters.put(
                "served",
                found.map(sheet -> served(
                                sheet.reading().ids().stream().findFirst().orElse(words)))
                        .orElse(List.of()));
        pages.show(request, "units.jte", parameters);
    }

    /** Cases in the casebook whose unit, or a unit above it, is the one asked for. */
    private List<CaseLine> served(String wanted) {
        return desk.casebook()
                .list(new CaseQuery(wanted, Optional.of(SearchTerm.Field.UNIT), Optional.empty(), false, 0, 100));
    }

    private void rule(Context request) {
        String award = request.pathParam("award");
        var rule =
                desk.law().rule(award).orElseThrow(() -> new NotFoundResponse("No rule is held on \"" + award + "\"."));
        pages.show(request, "rule.jte", Map.of("rule", rule));
    }
}
