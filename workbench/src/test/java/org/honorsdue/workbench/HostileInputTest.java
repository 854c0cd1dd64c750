package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.honorsdue.service.paper.Entry;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

@DisplayName("Hostile input")
@DisplayNameGeneration(ReplaceUnderscores.class)
class HostileInputTest {
    private static final String SCRIPT =
            "\"'><img src=x onerror=window.hit=1><script>window.hit=1</script>{{7*7}}${7*7}";

    @Test
    void script_in_every_field_stays_text_on_every_page() {
        try (var room = Room.open()) {
            var yaml = new StringBuilder(
                    "soldier: { name: %s }\npapers:\n  - form: %s\n    entries:\n".formatted(quoted(), quoted()));
            for (var entry : Entry.values()) {
                yaml.append("      ")
                        .append(entry.key())
                        .append(": ")
                        .append(quoted())
                        .append('\n');
            }
            yaml.append("evidence:\n  - { kind: statement, by: %s, says: %s, source: %s }\n"
                    .formatted(quoted(), quoted(), quoted()));
            yaml.append("  - { kind: unit-assignment, unit: %s }\n  - { kind: station, place: %s }\n"
                    .formatted(quoted(), quoted()));
            var body = new com.fasterxml.jackson.databind.ObjectMapper()
                    .createObjectNode()
                    .put("casefile", yaml.toString())
                    .put("notes", SCRIPT);
            var made = room.post("/api/cases", "application/json", body.toString());
            assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
            String folder = "/cases/"
                    + made.headers().firstValue("Location").orElseThrow().substring("/api/cases/".length());
            room.post(folder + "/letters", "application/x-www-form-urlencoded", "paper=all");
            room.go(folder + "/letters");
            var letters = room.browserItself().findElements(By.cssSelector(".kept-letters h3 a")).stream()
                    .map(link -> URI(link.getDomProperty("href")))
                    .toList();
            assertThat(letters).isNotEmpty();
            var paths = new java.util.ArrayList<>(List.of(
                    "/",
                    "/?words=" + java.net.URLEncoder.encode(SCRIPT, java.nio.charset.StandardCharsets.UTF_8),
                    "/units?words=" + java.net.URLEncoder.encode(SCRIPT, java.nio.charset.StandardCharsets.UTF_8),
                    "/law?words=" + java.net.URLEncoder.encode(SCRIPT, java.nio.charset.StandardCharsets.UTF_8),
                    folder));
            for (var leaf : List.of("findings", "line", "rack", "steps", "letters", "notes", "history", "text")) {
                paths.add(folder + "/" + leaf);
            }
            paths.addAll(letters);
            for (var path : paths) {
                room.go(path);
                room.see("body");
                assertThat(room.script("return window.hit")).as(path).isNull();
                assertThat(room.script("return document.querySelectorAll('img[src=x]').length"))
                        .as(path)
                        .isEqualTo(0L);
            }
            // Typed on the desk, it is text in the live reading too.
            room.go(folder).type("#t-1-remarks", SCRIPT + " Lapel button issued");
            room.see("#r-1-remarks", "apel button");
            room.saved();
            assertThat(room.script("return window.hit")).isNull();
        }
    }

    private static String URI(String address) {
        return java.net.URI.create(String.valueOf(address)).getPath();
    }

    private static String quoted() {
        return com.fasterxml.jackson.databind.node.TextNode.valueOf(SCRIPT).toString();
    }

    @Test
    void huge_text_is_refused_in_plain_words_and_the_page_lives_on() {
        try (var room = Room.open()) {
            String folder = room.tour("Fairweather");
            room.go(folder);
            room.see("#t-1-remarks");
            room.script("const field = document.querySelector('#t-1-remarks'); field.value = 'X '.repeat(20000);"
                    + " field.dispatchEvent(new Event('input', { bubbles: true }));");
            room.see("#saved", "Not saved: This cannot be kept");
            room.type("#t-1-remarks", "Lapel button issued").saved();
            assertThat(room.post(folder + "/papers", "application/json", "Y".repeat(1_100_000))
                            .statusCode())
                    .isEqualTo(422);
            assertThat(room.post("/api/examine", "application/yaml", "a: [".repeat(200_000))
                            .statusCode())
                    .isEqualTo(422);
        }
    }

    @Test
    void a_broken_picture_is_told_and_a_file_of_another_kind_is_no_picture(@TempDir Path folder) throws IOException {
        byte[] broken = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 26, '\n', 0, 0, 0, 1, 2, 3, 4};
        Path picture = Files.write(folder.resolve("broken.png"), broken);
        Path page = Files.writeString(folder.resolve("page.png"), "<html><script>window.hit=1</script></html>");
        try (var room = Room.open()) {
            String address = room.tour("Fairweather");
            room.go(address);
            room.see("#picture-file").sendKeys(picture.toString());
            room.click("form[action$='/pictures'] button");
            room.see("#picture", "cannot be opened");
            room.see("#picture-file").sendKeys(page.toString());
            room.click("form[action$='/pictures'] button");
            assertThat(room.textOf("main")).contains("page.png is no picture");
        }
    }

    @Test
    void wrong_kinds_of_everything_get_a_page_in_the_look_of_the_room_and_never_a_stack_trace() {
        try (var room = Room.open()) {
            String folder = room.tour("Fairweather");
            for (var path : List.of(
                    "/cases/none",
                    "/cases/none/findings",
                    folder + "/letters/none",
                    folder + "/pictures/none",
                    folder + "/findings?as_of=yesterday",
                    "/?from=minus",
                    "/?stage=lost",
                    "/law/none",
                    "/assets/none.css",
                    "/assets/..%2f..%2fopenapi.json",
                    "/assets/fonts/..%5c..%5croom.css")) {
                var answer = room.get(path);
                assertThat(answer.statusCode()).as(path).isBetween(400, 422);
                assertThat(answer.body()).as(path).doesNotContain("Exception").doesNotContain("\tat ");
            }
            for (var path : List.of(folder + "/papers", folder + "/look")) {
                for (var body : List.of("", "[]", "{\"papers\":[{\"entries\":{\"none\":\"x\"}}]}", "not json")) {
                    int status = room.post(path, "application/json", body).statusCode();
                    assertThat(status).as(path + " " + body).isLessThan(500);
                }
            }
            for (var path : List.of(
                    folder + "/evidence",
                    folder + "/stage",
                    folder + "/go-back",
                    folder + "/notes",
                    folder + "/letters",
                    folder + "/evidence/99/take-out",
                    folder + "/papers/0/take-out",
                    "/cases/files")) {
                var answer =
                        room.post(path, "application/x-www-form-urlencoded", "revision=1&kind=none&stage=none&to=999");
                assertThat(answer.statusCode()).as(path).isBetween(303, 499);
            }
            assertThat(room.get("/api/cases/none").body()).contains("\"says\"");
        }
    }
}
