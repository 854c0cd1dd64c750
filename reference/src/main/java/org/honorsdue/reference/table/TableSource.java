package org.honorsdue.reference.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where tables lie: in the program itself, or in a folder that somebody edits. */
@FunctionalInterface
public interface TableSource {
    /**
     * Opens a table.
     *
     * @param path folder and file name under the root of the tables, as in {@code history/campaigns.csv}
     * @return empty when there is no such table
     * @throws IOException when it is there and cannot be read
     */
    Optional<InputStream> open(String path) throws IOException;

    /** The tables that stand beside a class of the program, in its package and the packages under it. */
    static TableSource beside(Class<?> neighbour) {
        return path -> Optional.ofNullable(neighbour.getResourceAsStream(path));
    }

    /** The tables in a folder. */
    static TableSource folder(Path folder) {
        return path -> {
            Path table = folder.resolve(path);
            return Files.isRegularFile(table) ? Optional.of(Files.newInputStream(table)) : Optional.empty();
        };
    }
}
