package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.honorsdue.casebook.Stage;
import org.honorsdue.casebook.StaleRevision;
import org.honorsdue.reading.casefile.CasefileFault;
import org.honorsdue.service.paper.Form;
import org.honorsdue.service.paper.Paper;

/** What belongs to the folder rather than to the paper in it: stage, notes, the text itself, the history. */
final class FolderPages {
    private static final int LONGEST_NOTES = 200_000;

    private final Desk desk;
    private final Pages pages;

    FolderPages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void install(JavalinConfig config) {
        config.routes.post("/cases/{id}/stage", this::stage);
        config.routes.get(
                "/cases/{id}/notes",
                request -> pages.show(
                        request, "notes.jte", Map.of("kept", desk.casebook().open(new Asked(request).id()))));
        config.routes.post("/cases/{id}/notes", this::notes);
        config.routes.get("/cases/{id}/history", this::history);
        config.routes.post("/cases/{id}/go-back", this::goBack);
        config.routes.post("/cases/{id}/undo", this::undo);
        config.routes.get("/cases/{id}/text", this::text);
        config.routes.post("/cases/{id}/text", this::saveText);
    }

    /** A paper of that form on which nothing was shown to us yet. */
    static Paper emptyPaper(String title) {
        for (var form : Form.values()) {
            if (form.title().equals(title)) {
                return new Paper(form, title, Map.of(), List.of());
            }
        }
        return new Paper(Form.OTHER, title, Map.of(), List.of());
    }

    private void stage(Context request) {
        var asked = new Asked(request);
        var stage = Asked.choice(Stage.values(), asked.form("stage").orElse(""));
        desk.save(asked.id(), asked.revision(), content -> content.withStage(stage), "stands at " + stage.words());
        request.redirect(backTo(request, "/cases/" + asked.id()), HttpStatus.SEE_OTHER);
    }

    /** The page of this room the request came from; the other place when it came from elsewhere. */
    static String backTo(Context request, String otherwise) {
        String from = request.header("Referer");
        String own = request.scheme() + "://" + request.host() + "/";
        return from != null && from.startsWith(own) ? from.substring(own.length() - 1) : otherwise;
    }

    private void notes(Context request) {
        var asked = new Asked(request);
        String given = java.util.Optional.ofNullable(request.formParam("notes")).orElse("");
        String notes = given.replace("\r\n", "\n");
        if (notes.length() > LONGEST_NOTES) {
            throw new InputFault(
                    "The notes hold %,d characters; %,d are kept. Put the rest in a file of its own."
                            .formatted(notes.length(), LONGEST_NOTES),
                    List.of());
        }
        var saved = desk.save(asked.id(), asked.revision(), content -> content.withNotes(notes), "notes");
        if (asked.fromScript()) {
            request.json(Map.of("revision", saved.revision()));
        } else {
            request.redirect("/cases/" + asked.id() + "/notes", HttpStatus.SEE_OTHER);
        }
    }

    private void history(Context request) {
        String id = new Asked(request).id();
        var kept = desk.casebook().open(id);
        pages.show(
                request,
                "history.jte",
                Map.of("kept", kept, "changes", Change.of(desk, desk.casebook().history(id))));
    }

    private void goBack(Context request) {
        var asked = new Asked(request);
        goBack(asked.id(), asked.revision(), Desk.revision(asked.form("to")));
        request.redirect("/cases/" + asked.id() + "/history", HttpStatus.SEE_OTHER);
    }

    private void goBack(String id, int startedFrom, int to) {
        var earlier = desk.casebook().history(id).stream()
                .filter(revision -> revision.number() == to)
                .findFirst()
                .orElseThrow(() -> new InputFault("This case never had a state " + to + ".", List.of()));
        desk.casebook().restore(id, startedFrom, to, desk.terms(earlier.content()), desk.who());
    }

    /** Takes back the last change. */
    private void undo(Context request) {
        var asked = new Asked(request);
        var kept = desk.casebook().open(asked.id());
        if (kept.revision() != asked.revision()) {
            // Let the casebook say it in its own words.
            desk.save(asked.id(), asked.revision(), content -> content, "undo");
        }
        var before = desk.casebook().history(asked.id()).stream()
                .filter(revision -> revision.number() < kept.revision())
                .findFirst()
                .orElseThrow(() -> new InputFault("There is no change to take back.", List.of()));
        goBack(asked.id(), kept.revision(), before.number());
        request.redirect(backTo(request, "/cases/" + asked.id()), HttpStatus.SEE_OTHER);
    }

    private void text(Context request) {
        var kept = desk.casebook().open(new Asked(request).id());
        List<CasefileFault> faults =
                desk.parse(kept.content().casefile()).answer(accepted -> List.of(), refused -> refused.faults());
        pages.show(
                request, "text.jte", Map.of("kept", kept, "text", kept.content().casefile(), "faults", faults));
    }

    private void saveText(Context request) throws StaleRevision {
        var asked = new Asked(request);
        String text = asked.form("text").orElse("").replace("\r\n", "\n").stripLeading();
        var kept = desk.casebook().open(asked.id());
        var outcome = desk.parse(text);
        List<CasefileFault> faults = outcome.answer(accepted -> List.of(), refused -> refused.faults());
        if (!faults.isEmpty()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            pages.show(request, "text.jte", Map.of("kept", kept, "text", text, "faults", faults));
            return;
        }
        String title = outcome.answer(
                accepted ->
                        Desk.title(accepted.casefile()).orElse(kept.content().title()),
                refused -> kept.content().title());
        desk.save(asked.id(), asked.revision(), content -> content.withCasefile(title, text), "casefile as text");
        request.redirect("/cases/" + asked.id(), HttpStatus.SEE_OTHER);
    }
}
