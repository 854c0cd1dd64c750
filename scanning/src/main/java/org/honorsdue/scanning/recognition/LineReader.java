package org.honorsdue.scanning.recognition;

import org.honorsdue.scanning.picture.Gray;

/** Reads one line of typing. Not for several threads at once. */
public interface LineReader extends AutoCloseable {
    Recognized read(Gray line);

    @Override
    void close();
}
