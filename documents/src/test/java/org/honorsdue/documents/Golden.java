package org.honorsdue.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts that were read and found good, kept as files. {@code -Dhonors.golden=write} writes them anew: read the
 * difference before you keep it.
 */
public final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/org/honorsdue/documents/golden");

    private Golden() {}

    public static void assertSame(String file, String text) {
        var path = FOLDER.resolve(file);
        try {
            if ("write".equals(System.getProperty("honors.golden"))) {
                Files.createDirectories(path.getParent());
                Files.writeString(path, text);
            }
            assertThat(text)
                    .as(
                            "%s differs; if the new text is the better one, run the tests once with -Dhonors.golden=write",
                            path)
                    .isEqualTo(Files.readString(path));
        } catch (IOException e) {
            throw new UncheckedIOException("No golden text yet: run the tests once with -Dhonors.golden=write.", e);
        }
    }
}
