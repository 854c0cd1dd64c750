package org.honorsdue.workbench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.honorsdue.casebook.CaseContent;
import org.honorsdue.casebook.CaseExport;
import org.honorsdue.casebook.KeptCase;
import org.honorsdue.casebook.Stage;
import org.honorsdue.documents.findings.FindingsJson;
import org.honorsdue.service.Casefile;
import org.honorsdue.service.paper.Entry;

/** The same operations for programs, as JSON; described in {@code /api/openapi.json}. */
final class Api {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Desk desk;

    Api(Desk desk) {
        this.desk = desk;
    }

    void install(JavalinConfig config) {
        config.routes.get(
                "/api/openapi.json",
                request -> request.contentType("application/json").result(description()));
        config.routes.get("/api/cases", this::list);
        config.routes.post("/api/cases", this::create);
        config.routes.get(
                "/api/cases/{id}", request -> show(request, desk.casebook().open(id(request))));
        config.routes.put("/api/cases/{id}", this::save);
        config.routes.delete("/api/cases/{id}", request -> {
            desk.casebook().setRemoved(id(request), true);
            request.status(HttpStatus.NO_CONTENT);
        });
        config.routes.get("/api/cases/{id}/findings", this::findings);
        config.routes.get("/api/cases/{id}/history", this::history);
        config.routes.post("/api/cases/{id}/restore", this::restore);
        config.routes.get(
                "/api/cases/{id}/export",
                request -> request.contentType("application/json")
                        .result(desk.casebook().export(id(request))));
        config.routes.post("/api/import", this::importCase);
        config.routes.post("/api/examine", this::examine);
        config.routes.post("/api/decode", this::decode);
    }

    private static String id(Context request) {
        return request.pathParam("id");
    }

    private static String description() {
        try (var stream = Api.class.getResourceAsStream("openapi.json")) {
            if (stream == null) {
                throw new IllegalStateException("The description of the interface is missing from the program.");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("A file inside the program could not be read.", e);
        }
    }

    private static JsonNode body(Context request) {
        try {
            var node = JSON.readTree(request.body());
            if (node != null && node.isObject()) {
                return node;
            }
        } catch (JsonProcessingException e) {
            throw new InputFault("The request is not JSON: " + e.getOriginalMessage(), List.of());
        }
        throw new InputFault(
                "The request is no JSON object. Send one, as the description of the interface shows.", List.of());
    }

    private void list(Context request) {
        var query = CasebookPages.query(new Asked(request));
        var answer = JSON.createObjectNode();
        answer.put("found", desk.casebook().count(query));
        var cases = answer.putArray("cases");
        for (var line : desk.casebook().list(query)) {
            cases.addObject()
                    .put("id", line.id())
                    .put("title", line.title())
                    .put("stage", line.stage().words())
                    .put("changed_at", line.changedAt().toString());
        }
        request.contentType("application/json").result(answer.toString());
    }

    private Casefile casefile(String text) {
        return desk.parse(text).answer(accepted -> accepted.casefile(), refused -> {
            throw new InputFault("This is no casefile.", refused.faults());
        });
    }

    private void create(Context request) {
        var body = body(request);
        String text = body.path("casefile").asText("");
        var kept = desk.open(casefile(text), text, body.path("notes").asText(""));
        request.status(HttpStatus.CREATED).header("Location", "/api/cases/" + kept.id());
        show(request, kept);
    }

    private static void show(Context request, KeptCase kept) {
        var node = JSON.createObjectNode();
        node.put("id", kept.id());
        node.put("revision", kept.revision());
        node.put("changed_at", kept.changedAt().toString());
        node.put("removed", kept.removed());
        content(node, kept.content());
        request.contentType("application/json").result(node.toString());
    }

    private static void content(ObjectNode node, CaseContent content) {
        node.put("title", content.title());
        node.put("stage", content.stage().words());
        node.put("casefile", content.casefile());
        node.put("notes", content.notes());
    }

    private void save(Context request) {
        var body = body(request);
        if (!body.path("revision").isInt()) {
            throw new InputFault("Name the revision that you started from, as the case gives it.", List.of());
        }
        var saved = desk.save(
                id(request), body.path("revision").asInt(), content -> changed(content, body), "by a program");
        show(request, saved);
    }

    private CaseContent changed(CaseContent content, JsonNode body) {
        String text = body.path("casefile").asText(content.casefile());
        String title = Desk.title(casefile(text)).orElse(content.title());
        var stage = body.has("stage")
                ? Stage.ofWords(body.path("stage").asText())
                        .orElseThrow(
                                () -> new InputFault("There is no such stage. The description lists them.", List.of()))
                : content.stage();
        return new CaseContent(title, stage, text, body.path("notes").asText(content.notes()), content.display());
    }

    private void findings(Context request) {
        var study = desk.study(id(request), new Asked(request).asOf(desk.today()));
        request.contentType("application/json").result(new FindingsJson(desk.reference()).write(study.findings()));
    }

    private void history(Context request) {
        desk.casebook().open(id(request));
        var answer = JSON.createObjectNode();
        var revisions = answer.putArray("revisions");
        for (var revision : desk.casebook().history(id(request))) {
            var node = revisions.addObject();
            node.put("revision", revision.number());
            node.put("made_at", revision.madeAt().toString());
            node.put("made_by", revision.madeBy());
            node.put("what", revision.what());
            content(node, revision.content());
        }
        request.contentType("application/json").result(answer.toString());
    }

    private void restore(Context request) {
        var body = body(request);
        int to = body.path("to").asInt();
        var earlier = desk.casebook().history(id(request)).stream()
                .filter(revision -> revision.number() == to)
                .findFirst()
                .orElseThrow(() -> new InputFault("This case never had a revision " + to + ".", List.of()));
        show(
                request,
                desk.casebook()
                        .restore(
                                id(request),
                                body.path("revision").asInt(),
                                to,
                                desk.terms(earlier.content()),
                                desk.who()));
    }

    private void importCase(Context request) {
        try {
            var kept = desk.casebook().importCase(request.body(), Set.of(), desk.who());
            desk.casebook().reindex(kept.id(), desk.terms(kept.content()));
            request.status(HttpStatus.CREATED).header("Location", "/api/cases/" + kept.id());
            show(request, kept);
        } catch (CaseExport.Damaged damaged) {
            throw new InputFault(String.valueOf(damaged.getMessage()), List.of());
        }
    }

    /** Examines a casefile without keeping it. */
    private void examine(Context request) {
        var facts = desk.reader().read(casefile(request.body()));
        var findings = desk.examiner().examine(facts, new Asked(request).asOf(desk.today()), Set.of());
        request.contentType("application/json").result(new FindingsJson(desk.reference()).write(findings));
    }

    private void decode(Context request) {
        var body = body(request);
        String text = body.path("text").asText("");
        var reader = desk.reader().entries();
        var reading = body.has("entry")
                ? reader.read(
                        Entry.ofKey(body.path("entry").asText())
                                .orElseThrow(() -> new InputFault("There is no such entry.", List.of())),
                        text)
                : reader.read(text);
        var answer = JSON.createObjectNode();
        var tokens = answer.putArray("tokens");
        for (var token : Tokens.of(reading)) {
            var node = tokens.addObject();
            node.put("start", token.start());
            node.put("end", token.end());
            node.put("text", token.chars());
            node.put("meaning", token.means());
            node.put("certainty", token.look());
            node.put("note", token.note());
            token.alternatives().forEach(node.putArray("alternatives")::add);
        }
        request.contentType("application/json").result(answer.toString());
    }
}
