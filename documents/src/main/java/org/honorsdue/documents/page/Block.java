package org.honorsdue.documents.page;

import java.util.List;

/** What a document is made of. */
public sealed interface Block {
    /** @param level 1 for a part, 2 for a section within it */
    record Heading(int level, String text) implements Block {}

    record Paragraph(String text) implements Block {}

    /** A paragraph in small, quiet type: citations, provenance. */
    record Fine(String text) implements Block {}

    /** Words set off because the reader must not miss them. */
    record Warning(String text) implements Block {}

    /** Characters as typed on the paper, in the typewriter face. */
    record Typed(String lead, String text) implements Block {}

    /** @param numbered whether the items are steps to be taken in order */
    record Points(List<String> items, boolean numbered) implements Block {
        public Points {
            items = List.copyOf(items);
        }
    }

    /** @param header one cell a column; every row has as many */
    record Table(List<String> header, List<List<String>> rows) implements Block {
        public Table {
            header = List.copyOf(header);
            rows = rows.stream().<List<String>>map(List::copyOf).toList();
            for (var row : rows) {
                if (row.size() != header.size()) {
                    throw new IllegalArgumentException(
                            "A row of %d cells under a header of %d.".formatted(row.size(), header.size()));
                }
            }
        }
    }

    /** Lines to be filled in by hand, each with its caption. */
    record Blanks(List<String> captions) implements Block {
        public Blanks {
            captions = List.copyOf(captions);
        }
    }

    /**
     * A drawing.
     *
     * @param svg a whole {@code svg} element with its {@code alt}
     * @param words what it shows, for a reader who cannot see it
     */
    record Drawing(String svg, String words) implements Block {}

    /** Lines that stay as they are: an address, a signature. */
    record Lines(List<String> lines) implements Block {
        public Lines {
            lines = List.copyOf(lines);
        }
    }

    record NewSheet() implements Block {}
}
