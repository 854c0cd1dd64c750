package org.honorsdue.workbench;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.honorsdue.casebook.CaseExport;
import org.honorsdue.casebook.CaseQuery;
import org.honorsdue.casebook.KeptCase;
import org.honorsdue.casebook.SearchTerm;
import org.honorsdue.casebook.Stage;
import org.honorsdue.reading.casefile.CasefileFile;
import org.honorsdue.reading.casefile.CasefileText;
import org.honorsdue.scanning.recognition.LanguageData;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.paper.Paper;

/** The casebook itself: the list, the search, opening, taking in and giving out a case. */
public final class CasebookPages {
    private static final int PAGE = 100;

    private final Desk desk;
    private final Pages pages;
    private final ScanDesk scans;

    CasebookPages(Desk desk, Pages pages, ScanDesk scans) {
        this.desk = desk;
        this.pages = pages;
        this.scans = scans;
    }

    void install(JavalinConfig config) {
        config.routes.get("/", this::list);
        config.routes.get("/new", this::form);
        config.routes.post("/cases", this::create);
        config.routes.post("/cases/files", this::bring);
        config.routes.post("/cases/{id}/take-off", request -> {
            desk.casebook().setRemoved(new Asked(request).id(), true);
            request.redirect("/", HttpStatus.SEE_OTHER);
        });
        config.routes.post("/cases/{id}/put-back", request -> {
            String id = new Asked(request).id();
            desk.casebook().setRemoved(id, false);
            request.redirect("/cases/" + id, HttpStatus.SEE_OTHER);
        });
        config.routes.get("/cases/{id}/export", this::export);
        config.routes.get("/backup", this::backup);
    }

    private void list(Context request) {
        var query = query(new Asked(request));
        var cases = desk.casebook().list(query);
        boolean firstRun = cases.isEmpty()
                && desk.casebook().count(CaseQuery.all()) == 0
                && desk.casebook().count(new CaseQuery("", Optional.empty(), Optional.empty(), true, 0, 1)) == 0;
        pages.show(
                request,
                "casebook.jte",
                Map.of(
                        "query",
                        query,
                        "cases",
                        cases,
                        "found",
                        desk.casebook().count(query),
                        "firstRun",
                        firstRun,
                        "copies",
                        desk.casebook().isFile()));
    }

    static CaseQuery query(Asked asked) {
        return new CaseQuery(
                asked.query("words").orElse(""),
                asked.query("in").map(name -> Asked.choice(SearchTerm.Field.values(), name)),
                asked.query("stage").map(name -> Asked.choice(Stage.values(), name)),
                asked.query("removed").isPresent(),
                asked.query("from").map(Asked::count).orElse(0),
                PAGE);
    }

    /** The address of another part of the same list. */
    public static String address(CaseQuery query, int from) {
        var address = new StringBuilder("/?from=").append(Math.max(0, from));
        address.append("&words=").append(URLEncoder.encode(query.words(), StandardCharsets.UTF_8));
        query.field().ifPresent(field -> address.append("&in=").append(field));
        query.stage().ifPresent(stage -> address.append("&stage=").append(stage));
        return address.append(query.removed() ? "&removed=yes" : "").toString();
    }

    private void form(Context request) {
        boolean canScan = LanguageData.find().isPresent();
        pages.show(
                request, "new.jte", Map.of("canScan", canScan, "howToScan", canScan ? "" : LanguageData.HOW_TO_GET_IT));
    }

    private void create(Context request) {
        var asked = new Asked(request);
        List<Paper> papers =
                asked.form("form").map(FolderPages::emptyPaper).stream().toList();
        var casefile = new Casefile(asked.form("name").map(String::strip), Optional.empty(), papers, List.of());
        var kept = desk.open(casefile, desk.readable(CasefileText.write(casefile)), "");
        request.redirect("/cases/" + kept.id(), HttpStatus.SEE_OTHER);
    }

    private void bring(Context request) throws IOException {
        var uploads = request.uploadedFiles("files").stream()
                .filter(file -> file.size() > 0)
                .toList();
        if (uploads.isEmpty()) {
            throw new InputFault("No file came with this. Choose one, or type the paper in.", List.of());
        }
        var opened = new ArrayList<KeptCase>();
        for (var upload : uploads) {
            opened.add(bring(upload));
        }
        request.redirect(opened.size() == 1 ? "/cases/" + opened.get(0).id() : "/", HttpStatus.SEE_OTHER);
    }

    /** What a file is, is seen from its first characters, never from its name. */
    private KeptCase bring(UploadedFile upload) throws IOException {
        String name = plainName(upload.filename());
        byte[] content;
        try (var stream = upload.content()) {
            content = stream.readAllBytes();
        }
        if (PictureKind.of(content).isPresent()) {
            return pictured(name, content);
        }
        if (looksExported(content)) {
            return taken(name, new String(content, StandardCharsets.UTF_8));
        }
        return CasefileFile.read(content, desk.reference())
                .answer(
                        accepted -> desk.open(accepted.casefile(), new String(content, StandardCharsets.UTF_8), ""),
                        refused -> {
                            throw new InputFault(name + " was not taken in.", refused.faults());
                        });
    }

    private static boolean looksExported(byte[] content) {
        String head = new String(content, 0, Math.min(content.length, 200), StandardCharsets.UTF_8);
        return head.contains("\"format\"") && head.contains("honors-due-case");
    }

    private KeptCase taken(String name, String file) {
        try {
            var kept = desk.casebook().importCase(file, Set.of(), desk.who());
            desk.casebook().reindex(kept.id(), desk.terms(kept.content()));
            return kept;
        } catch (CaseExport.Damaged damaged) {
            throw new InputFault(name + ": " + damaged.getMessage(), List.of());
        }
    }

    private KeptCase pictured(String name, byte[] content) {
        var casefile = new Casefile(
                Optional.empty(), Optional.empty(), List.of(FolderPages.emptyPaper("WD AGO 53-55")), List.of());
        var kept = desk.open(casefile, CasefileText.write(casefile), "");
        desk.casebook()
                .attach(kept.id(), name, PictureKind.of(content).orElseThrow().mediaType(), content);
        scans.begin(kept.id(), name, content);
        return kept;
    }

    private void export(Context request) {
        String id = new Asked(request).id();
        var kept = desk.casebook().open(id);
        request.contentType("application/json")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"" + fileName(kept.content().title()) + ".honors-case.json\"")
                .result(desk.casebook().export(id));
    }

    private void backup(Context request) throws IOException {
        if (!desk.casebook().isFile()) {
            throw new InputFault(
                    "This casebook is on a PostgreSQL server; back it up with the server's own tools.", List.of());
        }
        Path copy = Files.createTempFile("honors-casebook", ".db");
        try {
            desk.casebook().backUp(copy);
            request.contentType("application/vnd.sqlite3")
                    .header("Content-Disposition", "attachment; filename=\"casebook-" + desk.today() + ".db\"")
                    .result(Files.readAllBytes(copy));
        } finally {
            Files.deleteIfExists(copy);
        }
    }

    /** The last part of a file's name, without what could mislead a reader or a file system. */
    static String plainName(String given) {
        String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
        String plain = last.replaceAll("[\\p{Cntrl}\\p{Cf}<>:\"|?*]", "_").strip();
        if (plain.isEmpty()) {
            return "file";
        }
        return plain.length() > 200 ? plain.substring(0, 200) : plain;
    }

    /** A name for a file, made from a title: letters, digits and dashes only. */
    static String fileName(String title) {
        var name = new StringBuilder();
        for (char letter : title.toLowerCase(Locale.ROOT).toCharArray()) {
            boolean plain = letter < 128 && Character.isLetterOrDigit(letter);
            if (plain) {
                name.append(letter);
            } else if (name.length() > 0 && name.charAt(name.length() - 1) != '-') {
                name.append('-');
            }
        }
        String shortened = name.substring(0, Math.min(name.length(), 60));
        return shortened.isBlank() ? "case" : shortened;
    }
}
