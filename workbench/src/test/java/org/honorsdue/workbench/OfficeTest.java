package org.honorsdue.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.time.Clock;
import org.honorsdue.casebook.Casebook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Two reading rooms on one casebook, kept by a real PostgreSQL server that is started for this test. */
@DisplayName("An office that shares a casebook")
@DisplayNameGeneration(ReplaceUnderscores.class)
class OfficeTest {
    private static Casebook casebook(EmbeddedPostgres server) {
        return Casebook.onServer(
                server.getJdbcUrl("postgres", "postgres"), "postgres", "postgres", Clock.systemDefaultZone());
    }

    @Test
    void works_on_the_same_cases_and_the_second_saver_is_told() throws IOException {
        try (var server = EmbeddedPostgres.start();
                var here = Room.on(casebook(server));
                var there = Room.on(casebook(server))) {
            String folder = here.tour("Fairweather");
            assertThat(there.get("/").body()).contains("Fairweather");
            String form = "application/x-www-form-urlencoded";
            assertThat(there.post(folder + "/notes", form, "revision=1&notes=seen+there")
                            .statusCode())
                    .isEqualTo(303);
            var second = here.post(folder + "/notes", form, "revision=1&notes=seen+here");
            assertThat(second.statusCode()).isEqualTo(409);
            assertThat(here.get(folder + "/notes").body())
                    .contains("seen there")
                    .doesNotContain("seen here");
        }
    }

    @Test
    void is_sent_to_the_server_for_a_copy_of_the_whole() throws IOException {
        try (var server = EmbeddedPostgres.start();
                var room = Room.on(casebook(server))) {
            room.tour("Fairweather");
            assertThat(room.get("/").body()).doesNotContain("/backup");
            var answer = room.get("/backup");
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).contains("own tools");
        }
    }
}
