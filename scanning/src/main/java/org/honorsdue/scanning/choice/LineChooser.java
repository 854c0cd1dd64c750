package org.honorsdue.scanning.choice;

import java.util.List;
import org.honorsdue.scanning.recognition.LineReader;
import org.honorsdue.scanning.typing.TypedLine;
import org.honorsdue.service.paper.Entry;

/** Reads a line of typing in several preparations and weighs what comes out. */
public final class LineChooser {
    private final LineReader reader;

    public LineChooser(LineReader reader) {
        this.reader = reader;
    }

    public LineChoice choose(Entry entry, TypedLine line) {
        var first = reader.read(Boolean.getBoolean("plain") ? line.picture() : org.honorsdue.scanning.typing.Evening.even(line.picture(), 28, line.grain()));
        return new LineChoice(first.text(), first.text(), List.of(), first.confidence() / 100);
    }
}
