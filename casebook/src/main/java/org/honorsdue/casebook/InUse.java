package org.honorsdue.casebook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The mark beside a casebook file that somebody works in it. Several rooms may share a casebook, so the mark is shared;
 * only who puts another file in its place needs it alone. The operating system takes it off a process that dies.
 */
final class InUse implements AutoCloseable {
    private final FileChannel mark;

    private InUse(FileChannel mark) {
        this.mark = mark;
    }

    private static FileChannel open(Path casebook) throws IOException {
        return FileChannel.open(
                casebook.resolveSibling(casebook.getFileName() + ".in-use"),
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE);
    }

    /** Marks the casebook as worked in until closed. */
    static InUse shared(Path casebook) throws IOException {
        var mark = open(casebook);
        try {
            mark.tryLock(0, 1, true);
        } catch (OverlappingFileLockException thisProcessHasIt) {
            // Another casebook of this process on the same file holds the mark already.
        }
        return new InUse(mark);
    }

    /** Whether nobody works in the casebook at this moment. */
    static boolean isFree(Path casebook) throws IOException {
        try (var mark = open(casebook);
                var alone = mark.tryLock(0, 1, false)) {
            return alone != null;
        } catch (OverlappingFileLockException thisProcessHasIt) {
            return false;
        }
    }

    @Override
    public void close() {
        try {
            mark.close();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("The mark of the casebook could not be taken off.", e);
        }
    }
}
