package org.honorsdue.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;

/** Writes a file whole or not at all: aside first, then renamed over the old one. */
final class OutputFile {
    private OutputFile() {}

    static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    static void write(Path file, byte[] content) throws IOException {
        Path target = file.toAbsolutePath();
        Path folder = Objects.requireNonNull(target.getParent(), "a file has a folder");
        Files.createDirectories(folder);
        // Not createTempFile: that would keep the file from everybody but its writer.
        Path aside = folder.resolve(
                target.getFileName() + ".part" + ProcessHandle.current().pid());
        try {
            Files.write(aside, content);
            Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(aside);
        }
    }
}
