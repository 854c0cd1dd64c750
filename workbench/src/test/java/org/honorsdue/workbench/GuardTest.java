package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayName("The door of the room")
@DisplayNameGeneration(ReplaceUnderscores.class)
class GuardTest {
    private static HttpRequest.Builder posting(Room room, String path) {
        return HttpRequest.newBuilder(URI.create(room.address(path)))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("name=X&form=other"));
    }

    @Test
    void is_shut_to_pages_of_other_sites() {
        try (var room = Room.open()) {
            assertThat(room.send(posting(room, "/cases").header("Origin", "http://elsewhere.invalid"))
                            .statusCode())
                    .isEqualTo(403);
            assertThat(room.send(posting(room, "/cases").header("Sec-Fetch-Site", "cross-site"))
                            .statusCode())
                    .isEqualTo(403);
            assertThat(room.send(posting(room, "/cases")).statusCode()).isEqualTo(403);
            assertThat(room.get("/api/cases").body()).contains("\"found\":0");
            assertThat(room.send(posting(room, "/cases").header("Origin", room.address("")))
                            .statusCode())
                    .isEqualTo(303);
        }
    }

    @Test
    void says_on_every_answer_that_nothing_of_others_may_run() {
        try (var room = Room.open()) {
            for (var path : List.of("/", "/law", "/nothing-here", "/assets/desk.js", "/api/openapi.json")) {
                var answer = room.get(path).headers();
                assertThat(answer.firstValue("Content-Security-Policy").orElse(""))
                        .as(path)
                        .contains("default-src 'none'")
                        .contains("script-src 'self'")
                        .doesNotContain("unsafe-eval");
                assertThat(answer.firstValue("X-Content-Type-Options")).as(path).contains("nosniff");
            }
        }
    }

    @Test
    void lets_no_page_ask_another_host_for_anything() {
        try (var room = Room.open()) {
            String folder = room.tour("Fairweather");
            for (var path : List.of("/", folder, folder + "/findings", folder + "/rack", "/law", "/units", "/tour")) {
                room.go(path);
                @SuppressWarnings("unchecked") // the script returns a list of texts
                var asked = (List<String>)
                        room.script("return performance.getEntriesByType('resource').map(each => each.name)");
                assertThat(asked).as(path).isNotEmpty().allMatch(name -> name.startsWith(room.address("/")));
            }
        }
    }
}
