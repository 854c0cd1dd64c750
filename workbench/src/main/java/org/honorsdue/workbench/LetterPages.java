package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Set;
import org.honorsdue.casebook.Letter;
import org.honorsdue.casebook.Stage;
import org.honorsdue.documents.letter.Correspondence;
import org.honorsdue.documents.letter.Dossier;
import org.honorsdue.documents.letter.Masking;
import org.honorsdue.documents.letter.Relation;
import org.honorsdue.documents.page.HtmlPage;
import org.honorsdue.documents.page.Page;
import org.honorsdue.documents.pdf.Press;
import org.honorsdue.documents.pdf.Sheet;

/** The papers to send and to keep: made from the case as it stands, and kept as they were made. */
final class LetterPages {
    private static final int LONGEST_KIND = 60;

    private final Desk desk;
    private final Pages pages;

    LetterPages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void install(JavalinConfig config) {
        config.routes.get("/cases/{id}/letters", this::list);
        config.routes.post("/cases/{id}/letters", this::make);
        config.routes.get("/cases/{id}/letters/{letter}", this::show);
        config.routes.get("/cases/{id}/letters/{letter}/pdf", this::pdf);
        config.routes.post("/cases/{id}/letters/{letter}/mark", this::mark);
    }

    private void list(Context request) {
        var study = desk.study(new Asked(request).id(), desk.today());
        var parameters = new HashMap<String, Object>();
        parameters.put("study", study);
        parameters.put("papers", papers(study, Relation.NOT_STATED, Masking.SHARED));
        parameters.put("letters", desk.casebook().letters(study.kept().id()));
        parameters.put("today", desk.today());
        parameters.put("tour", Tour.at(study.casefile(), "letters"));
        pages.show(request, "letters.jte", parameters);
    }

    private List<Page> papers(Study study, Relation relation, Masking masking) {
        var dossier = Dossier.of(
                study.casefile(),
                desk.reader(),
                desk.reference(),
                desk.examiner(),
                study.findings().asOf(),
                Set.of());
        var written = dossier.from(relation).masked(masking);
        String display = study.kept().content().display();
        return Correspondence.all(
                display.isEmpty()
                        ? written
                        : written.laidOut(DisplayWish.kept(display).wish(study.facts())));
    }

    private void make(Context request) {
        var asked = new Asked(request);
        var study = desk.study(asked.id(), desk.today());
        String name = asked.form("paper").orElse("");
        var relation = asked.form("relation").flatMap(Relation::ofId).orElse(Relation.NOT_STATED);
        var masking = asked.form("private").isPresent() ? Masking.PRIVATE : Masking.SHARED;
        var sheet = asked.form("sheet").flatMap(Sheet::ofId).orElse(Sheet.LETTER);
        var wanted = papers(study, relation, masking).stream()
                .filter(page -> name.equals("all") || page.name().equals(name))
                .toList();
        if (wanted.isEmpty()) {
            throw new InputFault("There is no paper \"" + name + "\" to make for this case.", List.of());
        }
        for (var page : wanted) {
            String title = page.title();
            desk.casebook()
                    .keepLetter(
                            asked.id(),
                            title.length() > LONGEST_KIND ? title.substring(0, LONGEST_KIND) : title,
                            new HtmlPage(sheet).write(page));
        }
        request.redirect("/cases/" + asked.id() + "/letters#kept", HttpStatus.SEE_OTHER);
    }

    private Letter letter(Context request) {
        String wanted = request.pathParam("letter");
        return desk.casebook().letters(new Asked(request).id()).stream()
                .filter(letter -> letter.id().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("This case has no such letter."));
    }

    private void show(Context request) {
        request.contentType("text/html; charset=utf-8").result(letter(request).body());
    }

    private void pdf(Context request) {
        var letter = letter(request);
        var day = LocalDate.ofInstant(letter.madeAt(), ZoneId.systemDefault());
        request.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"" + CasebookPages.fileName(letter.kind()) + ".pdf\"")
                .result(new Press().print(letter.body(), day));
    }

    private void mark(Context request) {
        var asked = new Asked(request);
        var sent = asked.form("sent_on").map(Asked::day);
        var answered = asked.form("answered_on").map(Asked::day);
        var letter = letter(request);
        desk.casebook().markLetter(asked.id(), letter.id(), sent, answered);
        var kept = desk.casebook().open(asked.id());
        var stage = answered.isPresent() ? Stage.ANSWERED : sent.isPresent() ? Stage.LETTERS_OUT : Stage.READING;
        if (stage.compareTo(kept.content().stage()) > 0) {
            desk.save(asked.id(), kept.revision(), content -> content.withStage(stage), "stands at " + stage.words());
        }
        request.redirect("/cases/" + asked.id() + "/letters#kept", HttpStatus.SEE_OTHER);
    }
}
