package org.honorsdue.casebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Puts a backup back in place, after looking whether it is whole. */
public final class Backup {
    private Backup() {}

    /** The backup was not restored, and why. */
    public static final class Damaged extends Exception {
        private static final long serialVersionUID = 1L;

        Damaged(String why) {
            super("This backup was not restored: " + why + " The casebook you have was left as it is.");
        }
    }

    /**
     * Puts a backup in the place of a casebook that is not open. The casebook it replaces is kept beside it, with
     * {@code .before-restore} added to its name.
     *
     * @throws Damaged when the backup is not a whole casebook, or somebody works in the one it would replace; nothing
     *     is changed
     */
    public static void restore(Path backup, Path casebook) throws IOException, Damaged {
        check(backup);
        Files.createDirectories(casebook.toAbsolutePath().getParent());
        if (!InUse.isFree(casebook.toAbsolutePath())) {
            throw new Damaged("the casebook is open. Close the reading room that has it and try again.");
        }
        Path aside = casebook.resolveSibling(casebook.getFileName() + ".part");
        Files.copy(backup, aside, StandardCopyOption.REPLACE_EXISTING);
        for (String suffix : List.of("", "-wal", "-shm")) {
            Path old = casebook.resolveSibling(casebook.getFileName() + suffix);
            if (Files.exists(old)) {
                Files.move(
                        old,
                        casebook.resolveSibling(casebook.getFileName() + ".before-restore" + suffix),
                        StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.move(aside, casebook, StandardCopyOption.ATOMIC_MOVE);
    }

    private static void check(Path backup) throws Damaged {
        if (!Files.isRegularFile(backup)) {
            throw new Damaged("there is no file " + backup + ".");
        }
        try {
            var looking = new SQLiteConfig();
            looking.setReadOnly(true);
            var source = new SQLiteDataSource(looking);
            source.setUrl("jdbc:sqlite:" + backup.toAbsolutePath());
            Jdbi.create(source).useHandle(handle -> {
                var faults = handle.createQuery("pragma integrity_check")
                        .mapTo(String.class)
                        .list();
                if (!faults.equals(List.of("ok"))) {
                    throw new IllegalStateException("the database in it is damaged (" + faults.get(0) + ").");
                }
                handle.createQuery("select count(*) from case_revision")
                        .mapTo(Integer.class)
                        .one();
            });
        } catch (IllegalStateException e) {
            throw new Damaged(String.valueOf(e.getMessage()));
        } catch (JdbiException e) {
            throw new Damaged("it is not a casebook, or it breaks off.");
        }
    }
}
