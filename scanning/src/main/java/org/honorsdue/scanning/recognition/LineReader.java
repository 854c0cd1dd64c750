package org.honorsdue.scanning.recognition;

import org.honorsdue.scanning.picture.Gray;

/** Reads one line of typing. Not for several threads at once. */
public interface LineReader extends AutoCloseable {
    Recognized read(Gray line);

    /** All words of a whole page in any order; only to tell what kind of page it is. */
    String words(Gray page);

    @Override
    void close();
}
