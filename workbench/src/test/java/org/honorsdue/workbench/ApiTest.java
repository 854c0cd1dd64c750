package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.honorsdue.documents.pdf.Sheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("The interface for programs")
@DisplayNameGeneration(ReplaceUnderscores.class)
class ApiTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(text, e);
        }
    }

    private static String demo(String name) throws IOException {
        try (var stream = Workbench.class.getResourceAsStream("demo/" + name + ".yaml")) {
            return new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void papers_are_made_for_the_sheet_that_was_asked_for() {
        try (var room = Room.open()) {
            String folder = room.tour("Fairweather");
            room.post(folder + "/letters", "application/x-www-form-urlencoded", "paper=records-request&sheet=a4");
            String page = room.get(folder + "/letters").body();
            var kept = java.util.regex.Pattern.compile(folder + "/letters/[0-9a-f-]+")
                    .matcher(page);
            assertThat(kept.find()).isTrue();
            assertThat(room.get(kept.group()).body()).contains("size: " + Sheet.A4.css());
        }
    }

    @Test
    void keeps_a_case_saves_it_refuses_a_stale_save_and_goes_back() throws IOException {
        try (var room = Room.open()) {
            var made = room.post(
                    "/api/cases",
                    "application/json",
                    JSON.createObjectNode().put("casefile", demo("fairweather")).toString());
            assertThat(made.statusCode()).isEqualTo(201);
            String address = made.headers().firstValue("Location").orElseThrow();
            int revision = json(made.body()).path("revision").asInt();
            var change = JSON.createObjectNode()
                    .put("revision", revision)
                    .put("notes", "asked the family")
                    .put("stage", "examined");
            assertThat(put(room, address, change.toString()).path("stage").asText())
                    .isEqualTo("examined");
            assertThat(put(room, address, change.put("notes", "too late").toString())
                            .path("says")
                            .asText())
                    .contains("changed elsewhere");
            assertThat(json(room.get(address).body()).path("notes").asText()).isEqualTo("asked the family");
            int now = json(room.get(address).body()).path("revision").asInt();
            var back = room.post(
                    address + "/restore",
                    "application/json",
                    JSON.createObjectNode()
                            .put("revision", now)
                            .put("to", revision)
                            .toString());
            assertThat(json(back.body()).path("notes").asText()).isEmpty();
            assertThat(json(room.get(address + "/history").body()).path("revisions"))
                    .hasSize(3);
        }
    }

    private static JsonNode put(Room room, String address, String body) {
        return json(room.send(HttpRequest.newBuilder(URI.create(room.address(address)))
                        .header("X-Honors-Client", "program")
                        .PUT(HttpRequest.BodyPublishers.ofString(body)))
                .body());
    }

    @Test
    void examines_without_keeping_and_decodes_a_line() throws IOException {
        try (var room = Room.open()) {
            var findings = json(room.post("/api/examine?as_of=1945-11-11", "application/yaml", demo("fairweather"))
                    .body());
            assertThat(findings.path("as_of").asText()).isEqualTo("1945-11-11");
            assertThat(findings.path("findings").size()).isGreaterThan(3);
            assertThat(json(room.get("/api/cases").body()).path("found").asInt())
                    .isZero();
            var tokens = json(room.post(
                            "/api/decode",
                            "application/json",
                            "{\"text\":\"EAMET Rib w/3 Br Stars\",\"entry\":\"decorations_and_citations\"}")
                    .body());
            assertThat(tokens.path("tokens").toString()).contains("EAME Campaign Medal");
        }
    }

    @Test
    void is_described_path_by_path_and_every_described_path_is_there() {
        try (var room = Room.open()) {
            var described = json(room.get("/api/openapi.json").body());
            assertThat(described.path("openapi").asText()).startsWith("3.1");
            var paths = described.path("paths");
            assertThat(paths.size()).isEqualTo(10);
            for (var path : paths.properties()) {
                for (var operation : path.getValue().properties()) {
                    if (operation.getKey().equals("parameters")) {
                        continue;
                    }
                    String address = path.getKey().replace("{id}", "none");
                    var request = HttpRequest.newBuilder(URI.create(room.address(address)))
                            .header("X-Honors-Client", "program")
                            .method(
                                    operation.getKey().toUpperCase(java.util.Locale.ROOT),
                                    operation.getKey().equals("get")
                                            ? HttpRequest.BodyPublishers.noBody()
                                            : HttpRequest.BodyPublishers.ofString("{\"revision\":1}"));
                    var answer = room.send(request);
                    boolean known = operation.getValue().path("responses").has(String.valueOf(answer.statusCode()));
                    assertThat(known)
                            .as("%s %s answered %d", operation.getKey(), path.getKey(), answer.statusCode())
                            .isTrue();
                }
            }
        }
    }
}
