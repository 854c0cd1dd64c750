package org.honorsdue.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The casebook in one SQLite file. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CasebookInFileTest extends CasebookContract {
    @TempDir
    Path folder;

    private final TickingClock clock = new TickingClock();
    private Casebook casebook;

    @BeforeEach
    void open() throws IOException {
        casebook = Casebook.inFile(folder.resolve("casebook.db"), clock);
    }

    @AfterEach
    void close() {
        casebook.close();
    }

    @Override
    Casebook casebook() {
        return casebook;
    }

    @Override
    TickingClock clock() {
        return clock;
    }

    @Test
    void a_backup_taken_while_open_is_a_whole_casebook_and_can_be_put_back() throws Exception {
        var kept = casebook.create(content("A", "one"), List.of(), WHO);
        Path backup = folder.resolve("backup.db");
        casebook.backUp(backup);
        casebook.save(kept.id(), 1, content("A", "after the backup"), List.of(), WHO, "grade");
        casebook.close();
        Backup.restore(backup, folder.resolve("casebook.db"));
        open();
        assertThat(casebook.open(kept.id()).content().casefile()).isEqualTo("one");
        assertThat(folder.resolve("casebook.db.before-restore")).exists();
    }

    @Test
    void a_damaged_backup_is_refused_and_the_casebook_left_alone() throws Exception {
        for (int i = 0; i < 50; i++) {
            casebook.create(content("Man " + i, "text ".repeat(500)), List.of(), WHO);
        }
        Path backup = folder.resolve("backup.db");
        casebook.backUp(backup);
        byte[] bytes = Files.readAllBytes(backup);
        for (int i = 8192; i < 16384; i++) {
            bytes[i] = (byte) 0xA5;
        }
        Files.write(backup, bytes);
        assertThatThrownBy(() -> Backup.restore(backup, folder.resolve("casebook.db")))
                .isInstanceOf(Backup.Damaged.class)
                .hasMessageContaining("The casebook you have was left as it is.");
        assertThat(folder.resolve("casebook.db.before-restore")).doesNotExist();
        assertThat(casebook.count(CaseQuery.all())).isEqualTo(50);
    }

    @Test
    void nothing_is_put_back_while_somebody_works_in_the_casebook() throws Exception {
        var kept = casebook.create(content("A", "one"), List.of(), WHO);
        Path backup = folder.resolve("backup.db");
        casebook.backUp(backup);
        casebook.save(kept.id(), 1, content("A", "after the backup"), List.of(), WHO, "grade");
        assertThatThrownBy(() -> Backup.restore(backup, folder.resolve("casebook.db")))
                .isInstanceOf(Backup.Damaged.class)
                .hasMessageContaining("the casebook is open");
        assertThat(casebook.open(kept.id()).content().casefile()).isEqualTo("after the backup");
    }

    @Test
    void something_that_is_no_casebook_is_refused() throws Exception {
        Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear Sir");
        assertThatThrownBy(() -> Backup.restore(letter, folder.resolve("casebook.db")))
                .isInstanceOf(Backup.Damaged.class)
                .hasMessage("This backup was not restored: it is not a casebook, or it breaks off."
                        + " The casebook you have was left as it is.");
    }

    /**
     * Another process saves without pause and reports each revision once it is acknowledged; it is killed in the middle
     * of that. Every revision it reported must be there, and the file must be whole.
     */
    @Test
    void a_killed_process_loses_nothing_that_was_acknowledged() throws Exception {
        Path file = folder.resolve("killed.db");
        for (int round = 0; round < 3; round++) {
            var process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Saver.class.getName(),
                            file.toString())
                    .redirectErrorStream(true)
                    .start();
            String id = "";
            int acknowledged = 0;
            try (var out =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
                for (String line = out.readLine(); line != null; line = out.readLine()) {
                    if (line.startsWith("case ")) {
                        id = line.substring(5);
                    } else if (line.startsWith("saved ")) {
                        acknowledged = Integer.parseInt(line.substring(6));
                        if (acknowledged == 40 + round * 17) {
                            process.destroyForcibly();
                            break;
                        }
                    }
                }
            }
            process.waitFor();
            assertThat(acknowledged).isGreaterThanOrEqualTo(40);
            try (var after = Casebook.inFile(file, clock)) {
                assertThat(after.open(id).revision()).isGreaterThanOrEqualTo(acknowledged);
                after.backUp(folder.resolve("after.db"));
            }
            Backup.restore(folder.resolve("after.db"), folder.resolve("whole.db"));
        }
    }

    /** The process that is killed. */
    static final class Saver {
        private Saver() {}

        public static void main(String[] arguments) throws IOException {
            var casebook = Casebook.inFile(Path.of(arguments[0]), Clock.systemUTC());
            var kept = casebook.create(content("Killed", "revision 1"), List.of(), WHO);
            System.out.println("case " + kept.id());
            while (true) {
                var next = content("Killed", "revision " + (kept.revision() + 1));
                kept = casebook.save(
                        kept.id(), kept.revision(), next, named("Killed"), WHO, "change " + kept.revision());
                System.out.println("saved " + kept.revision());
            }
        }
    }
}
