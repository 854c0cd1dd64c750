package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.honorsdue.casebook.Attachment;
import org.honorsdue.casebook.KeptCase;
import org.honorsdue.reading.EntryReading;
import org.honorsdue.scanning.ScanLimits;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.paper.Entry;
import org.honorsdue.service.paper.Paper;
import org.honorsdue.service.paper.Typed;

/** The reading desk: the picture, the entries and what they are read as while they are typed. */
final class DeskPages {
    private static final int MOST_PICTURES = 40;

    private final Desk desk;
    private final Pages pages;
    private final ScanDesk scans;

    DeskPages(Desk desk, Pages pages, ScanDesk scans) {
        this.desk = desk;
        this.pages = pages;
        this.scans = scans;
    }

    void install(JavalinConfig config) {
        config.routes.get("/cases/{id}", this::show);
        config.routes.post("/cases/{id}/look", this::look);
        config.routes.post("/cases/{id}/papers", this::save);
        config.routes.post("/cases/{id}/papers/add", this::addPaper);
        config.routes.post("/cases/{id}/papers/{number}/take-out", this::takeOut);
        config.routes.post("/cases/{id}/pictures", this::attach);
        config.routes.get("/cases/{id}/pictures/{picture}", this::picture);
        config.routes.post("/cases/{id}/pictures/{picture}/take-out", request -> {
            desk.casebook().removeAttachment(new Asked(request).id(), request.pathParam("picture"));
            request.redirect("/cases/" + new Asked(request).id(), HttpStatus.SEE_OTHER);
        });
        config.routes.get("/cases/{id}/scan", this::progress);
        config.routes.post("/cases/{id}/papers/{number}/seen", this::seen);
    }

    private void show(Context request) {
        String id = new Asked(request).id();
        var study = desk.study(id, desk.today());
        var attachments = desk.casebook().attachments(id);
        var pictures = attachments.stream()
                .filter(attachment -> isPicture(attachment.mediaType()))
                .sorted((a, b) ->
                        Boolean.compare(b.name().contains(" upright"), a.name().contains(" upright")))
                .toList();
        var parameters = new HashMap<String, Object>();
        parameters.put("study", study);
        parameters.put("sheets", sheets(study, attachments));
        parameters.put("pictures", pictures);
        parameters.put("scan", scans.progress(id));
        parameters.put("tour", Tour.at(study.casefile(), "desk"));
        scans.forget(id);
        pages.show(request, "desk.jte", parameters);
    }

    private List<Sheet> sheets(Study study, List<Attachment> attachments) {
        var reviews = new HashMap<Integer, Review>();
        reviews(study.kept().id(), attachments).values().forEach(review -> reviews.put(review.paper(), review));
        var sheets = new ArrayList<Sheet>();
        for (int i = 0; i < study.casefile().papers().size(); i++) {
            var paper = study.casefile().papers().get(i);
            var lines = new ArrayList<Sheet.Line>();
            for (var entry : BoxOrder.of(paper)) {
                var item = Optional.ofNullable(reviews.get(i + 1))
                        .map(review -> review.items().get(entry));
                lines.add(new Sheet.Line(
                        entry,
                        BoxOrder.number(paper.form(), entry),
                        BoxOrder.weighty(entry),
                        paper.entry(entry),
                        reading(paper, entry),
                        item));
            }
            sheets.add(new Sheet(
                    i + 1, paper, lines, Optional.ofNullable(reviews.get(i + 1)).map(Review::picture)));
        }
        return sheets;
    }

    /** What the readings of pictures left to look at, in the order in which they were made. */
    private Map<Attachment, Review> reviews(String caseId, List<Attachment> attachments) {
        var reviews = new LinkedHashMap<Attachment, Review>();
        for (var attachment : attachments) {
            if (attachment.mediaType().equals(Review.MEDIA_TYPE)) {
                desk.casebook()
                        .attachmentContent(caseId, attachment.id())
                        .flatMap(Review::read)
                        .ifPresent(review -> reviews.put(attachment, review));
            }
        }
        return reviews;
    }

    /** Keeps that a person found an entry right as the machine read it. The mark is not the casefile's: it changes no word. */
    private synchronized void seen(Context request) {
        var asked = new Asked(request);
        int number = Asked.count(request.pathParam("number"));
        var entry = asked.form("entry")
                .flatMap(Entry::ofKey)
                .orElseThrow(() -> new InputFault("The page named no entry. Load it again.", List.of()));
        reviews(asked.id(), desk.casebook().attachments(asked.id())).forEach((attachment, review) -> {
            if (review.paper() == number) {
                desk.casebook()
                        .rewrite(asked.id(), attachment, review.withSeen(entry).write());
            }
        });
        request.status(HttpStatus.NO_CONTENT);
    }

    private Optional<EntryReading> reading(Paper paper, Entry entry) {
        return paper.entry(entry) instanceof Typed.Text text
                ? Optional.of(desk.reader().entries().read(entry, text.text()))
                : Optional.empty();
    }

    /** What the desk looks like now, read and examined, and not kept. */
    private void look(Context request) {
        long begun = System.nanoTime();
        String id = new Asked(request).id();
        var kept = desk.casebook().open(id);
        var state = DeskState.read(request.body());
        var casefile = state.casefile(desk.casefile(kept).evidence());
        var study = desk.study(kept, casefile, desk.today());
        var answer = new HashMap<String, Object>();
        var readings = new HashMap<String, String>();
        for (var place : state.touched()) {
            var paper = casefile.papers().get(place.paper() - 1);
            readings.put(
                    place.paper() + "-" + place.entry().key(),
                    reading(paper, place.entry()).map(this::html).orElse(""));
        }
        answer.put("readings", readings);
        answer.put("margin", pages.text("margin.jte", Map.of("study", study)));
        answer.put("micros", (System.nanoTime() - begun) / 1000);
        request.json(answer);
    }

    private String html(EntryReading reading) {
        return pages.text("reading.jte", Map.of("reading", reading));
    }

    private void save(Context request) {
        String id = new Asked(request).id();
        var kept = desk.casebook().open(id);
        var state = DeskState.read(request.body());
        var saved = desk.save(
                id, state.revision(), state.casefile(desk.casefile(kept).evidence()), "typed on the desk");
        request.json(
                Map.of("revision", saved.revision(), "title", saved.content().title()));
    }

    private void addPaper(Context request) {
        var asked = new Asked(request);
        change(asked, asked.revision(), "paper added", casefile -> {
            var papers = new ArrayList<>(casefile.papers());
            papers.add(FolderPages.emptyPaper(asked.form("form").orElse("WD AGO 53-55")));
            return new Casefile(casefile.name(), casefile.sex(), papers, casefile.evidence());
        });
        request.redirect("/cases/" + asked.id() + "#papers-end", HttpStatus.SEE_OTHER);
    }

    private void takeOut(Context request) {
        var asked = new Asked(request);
        int number = Asked.count(request.pathParam("number"));
        change(asked, asked.revision(), "paper taken out", casefile -> {
            if (number < 1 || number > casefile.papers().size()) {
                throw new InputFault("This case has no paper " + number + ".", List.of());
            }
            var papers = new ArrayList<>(casefile.papers());
            papers.remove(number - 1);
            return new Casefile(casefile.name(), casefile.sex(), papers, casefile.evidence());
        });
        request.redirect("/cases/" + asked.id(), HttpStatus.SEE_OTHER);
    }

    private KeptCase change(
            Asked asked, int startedFrom, String what, java.util.function.UnaryOperator<Casefile> change) {
        var kept = desk.casebook().open(asked.id());
        return desk.save(asked.id(), startedFrom, change.apply(desk.casefile(kept)), what);
    }

    private void attach(Context request) throws IOException {
        String id = new Asked(request).id();
        if (desk.casebook().attachments(id).size() >= MOST_PICTURES) {
            throw new InputFault("A case keeps at most %d pictures.".formatted(MOST_PICTURES), List.of());
        }
        var upload = Optional.ofNullable(request.uploadedFile("picture"))
                .filter(file -> file.size() > 0)
                .orElseThrow(() -> new InputFault("No picture came with this.", List.of()));
        byte[] content;
        try (var stream = upload.content()) {
            content = stream.readAllBytes();
        }
        String name = CasebookPages.plainName(upload.filename());
        var kind = PictureKind.of(content)
                .orElseThrow(() -> new InputFault(
                        name + " is no picture that is known here. JPEG, PNG, TIFF, GIF, WebP and PDF are.",
                        List.of()));
        desk.casebook().attach(id, name, kind.mediaType(), content);
        if (Optional.ofNullable(request.formParam("read")).isPresent()) {
            scans.begin(id, name, content);
        }
        request.redirect("/cases/" + id, HttpStatus.SEE_OTHER);
    }

    private static boolean isPicture(String mediaType) {
        for (var kind : PictureKind.values()) {
            if (kind.mediaType().equals(mediaType)) {
                return true;
            }
        }
        return false;
    }

    /** A picture as a browser can show it. What it is, is seen from its bytes; nothing else is ever sent as a page. */
    private void picture(Context request) throws IOException {
        byte[] content = desk.casebook()
                .attachmentContent(new Asked(request).id(), request.pathParam("picture"))
                .orElseThrow(() -> new NotFoundResponse("This case has no such picture."));
        var kind = PictureKind.of(content).orElseThrow(() -> new NotFoundResponse("This is no picture."));
        request.header("Cache-Control", "private, max-age=86400");
        if (kind.shownByBrowsers()) {
            request.contentType(kind.mediaType()).result(content);
            return;
        }
        int page = new Asked(request).query("page").map(Asked::count).orElse(1);
        request.contentType("image/png").result(drawn(content, page));
    }

    private static byte[] drawn(byte[] content, int page) throws IOException {
        var file = Files.createTempFile("honors-picture", ".bin");
        try {
            Files.write(file, content);
            var limits = ScanLimits.USUAL;
            var opened = org.honorsdue.scanning.picture.Pages.open(
                    file, limits.fileBytes(), limits.pixels(), limits.refusedPixels());
            if (opened instanceof org.honorsdue.scanning.picture.Pages.Opened.Ready ready) {
                try (var sheets = ready.pages()) {
                    if (page >= 1
                            && page <= sheets.count()
                            && sheets.page(page - 1)
                                    instanceof org.honorsdue.scanning.picture.Pages.Page.Picture picture) {
                        return ScanDesk.png(picture.gray().picture());
                    }
                }
            }
            throw new NotFoundResponse("This picture cannot be opened; it may be broken.");
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private void progress(Context request) {
        String id = new Asked(request).id();
        var progress = scans.progress(id);
        if (progress.map(ScanDesk.Progress::done).orElse(true)) {
            // Done: the whole page shows what was read.
            request.header("HX-Refresh", "true").status(HttpStatus.NO_CONTENT);
            return;
        }
        pages.show(request, "scan.jte", Map.of("id", id, "progress", progress.orElseThrow()));
    }
}
