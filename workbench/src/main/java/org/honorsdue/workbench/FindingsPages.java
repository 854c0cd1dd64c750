package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.determination.nextsteps.NextSteps;
import org.honorsdue.determination.since.ThenAndSince;
import org.honorsdue.reading.casefile.CasefileFault;
import org.honorsdue.service.Casefile;

/** What was found, its proof, and new evidence for what is open. */
public final class FindingsPages {
    private final Desk desk;
    private final Pages pages;

    FindingsPages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /**
     * A form of evidence that was not taken.
     *
     * @param award the finding it was filled in at
     */
    public record Refused(String award, EvidenceForm form, String says, List<CasefileFault> faults) {
        public Refused {
            faults = List.copyOf(faults);
        }
    }

    void install(JavalinConfig config) {
        config.routes.get("/cases/{id}/findings", request -> show(request, Optional.empty()));
        config.routes.get("/cases/{id}/steps", this::steps);
        config.routes.post("/cases/{id}/evidence", this::add);
        config.routes.post("/cases/{id}/evidence/{number}/take-out", this::takeOut);
    }

    private void show(Context request, Optional<Refused> refused) {
        var asked = new Asked(request);
        LocalDate asOf = asked.asOf(desk.today());
        var study = desk.study(asked.id(), asOf);
        var parameters = new HashMap<String, Object>();
        parameters.put("study", study);
        parameters.put("today", desk.today());
        parameters.put("reference", desk.reference());
        parameters.put("refused", refused);
        parameters.put("tour", Tour.at(study.casefile(), "findings"));
        parameters.put("since", ThenAndSince.of(desk.examiner(), study.facts(), desk.reference(), desk.today()));
        pages.show(request, "findings.jte", parameters);
    }

    private void steps(Context request) {
        var study = desk.study(new Asked(request).id(), desk.today());
        pages.show(
                request,
                "steps.jte",
                Map.of(
                        "study",
                        study,
                        "next",
                        NextSteps.of(study.findings(), study.facts(), desk.reference()),
                        "tour",
                        Tour.at(study.casefile(), "steps")));
    }

    private void add(Context request) {
        var asked = new Asked(request);
        var kind = EvidenceForm.Kind.ofId(asked.form("kind").orElse(""))
                .orElseThrow(() -> new InputFault("There is no such kind of evidence.", List.of()));
        var filled = new HashMap<String, String>();
        for (var field : kind.fields()) {
            asked.form(field).ifPresent(value -> filled.put(field, value));
        }
        asked.form("source").ifPresent(value -> filled.put("source", value));
        var form = new EvidenceForm(kind, filled);
        String award =
                asked.form("for").filter(id -> id.matches("[a-z0-9-]{1,80}")).orElse("evidence");
        try {
            var evidence = form.evidence(desk.reference());
            var casefile = desk.casefile(desk.casebook().open(asked.id()));
            var all = new ArrayList<>(casefile.evidence());
            all.add(evidence);
            desk.save(
                    asked.id(),
                    asked.revision(),
                    new Casefile(casefile.name(), casefile.sex(), casefile.papers(), all),
                    "evidence added");
        } catch (InputFault fault) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(request, Optional.of(new Refused(award, form, fault.says(), fault.faults())));
            return;
        }
        request.redirect("/cases/" + asked.id() + "/findings#" + award, HttpStatus.SEE_OTHER);
    }

    private void takeOut(Context request) {
        var asked = new Asked(request);
        int number = Asked.count(request.pathParam("number"));
        var casefile = desk.casefile(desk.casebook().open(asked.id()));
        if (number < 1 || number > casefile.evidence().size()) {
            throw new InputFault("This case has no evidence " + number + ".", List.of());
        }
        var rest = new ArrayList<>(casefile.evidence());
        rest.remove(number - 1);
        desk.save(
                asked.id(),
                asked.revision(),
                new Casefile(casefile.name(), casefile.sex(), casefile.papers(), rest),
                "evidence taken out");
        request.redirect("/cases/" + asked.id() + "/findings#evidence", HttpStatus.SEE_OTHER);
    }
}
