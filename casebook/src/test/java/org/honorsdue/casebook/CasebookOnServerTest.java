package org.honorsdue.casebook;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** The same promises on a real PostgreSQL server, started for this test. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CasebookOnServerTest extends CasebookContract {
    private static EmbeddedPostgres server;
    private static Casebook casebook;
    private static final TickingClock SHARED = new TickingClock();

    @BeforeAll
    static void start() throws IOException {
        server = EmbeddedPostgres.start();
        casebook = Casebook.onServer(server.getJdbcUrl("postgres", "postgres"), "postgres", "postgres", SHARED);
    }

    @AfterAll
    static void stop() throws IOException {
        casebook.close();
        server.close();
    }

    @Override
    Casebook casebook() {
        return casebook;
    }

    @Override
    TickingClock clock() {
        return SHARED;
    }

    @Test
    void a_backup_is_left_to_the_server() {
        assertThatThrownBy(() -> casebook.backUp(Path.of("backup.db")))
                .isInstanceOf(UnsupportedOperationException.class)
                .hasMessage("This casebook is on a PostgreSQL server; back it up with the server's own tools.");
    }
}
