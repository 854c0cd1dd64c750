package org.honorsdue.documents.page;

import java.util.List;
import java.util.Optional;

/** What a document is made of. */
public sealed interface Block {
    /** @param level 0 for the head of a letter, 1 for a part, 2 for a section within it */
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

    /** Boxes to be ticked by hand. */
    record Checks(List<String> items) implements Block {
        public Checks {
            items = List.copyOf(items);
        }
    }

    /**
     * @param header one cell a column; every row has as many
     * @param shares how the width is shared among the columns, in parts; the columns keep it whatever stands in them
     */
    record Table(List<String> header, List<Integer> shares, List<List<String>> rows) implements Block {
        public Table {
            header = List.copyOf(header);
            shares = List.copyOf(shares);
            rows = rows.stream().<List<String>>map(List::copyOf).toList();
            if (shares.size() != header.size() || shares.stream().anyMatch(share -> share < 1)) {
                throw new IllegalArgumentException(
                        "%d shares of the width for %d columns: each column needs one of at least 1."
                                .formatted(shares.size(), header.size()));
            }
            for (var row : rows) {
                if (row.size() != header.size()) {
                    throw new IllegalArgumentException(
                            "A row of %d cells under a header of %d.".formatted(row.size(), header.size()));
                }
            }
        }
    }

    /** Captions and what belongs to each: the particulars of a person, the sections of a form. */
    record Particulars(List<Particular> rows) implements Block {
        public Particulars {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One line of particulars.
     *
     * @param value empty when it is to be written in by hand
     * @param typed whether the value stands so on the paper, letter by letter
     */
    record Particular(String caption, String value, boolean typed) {}

    /** Numbers that sum a case up, side by side. */
    record Figures(List<Figure> figures) implements Block {
        public Figures {
            figures = List.copyOf(figures);
        }
    }

    record Figure(long number, String caption) {}

    /**
     * One award in words.
     *
     * @param name with its devices
     * @param aside a few words after the name; may be empty
     * @param meaning what the award is for; may be empty
     * @param notes what holds for this soldier, each its own paragraph
     * @param ribbon a small drawing of it, when there is one
     */
    record AwardEntry(String name, String aside, String meaning, List<String> notes, Optional<Drawing> ribbon)
            implements Block {
        public AwardEntry {
            notes = List.copyOf(notes);
        }
    }

    /**
     * An entry as typed and, under it, how each token of it was read.
     *
     * @param caption box and caption
     * @param typed letter by letter; empty when nothing stands there
     * @param state what to say of the entry as a whole, as in {@code left blank}; may be empty
     */
    record Gloss(String caption, String typed, String state, List<Token> tokens) implements Block {
        public Gloss {
            tokens = List.copyOf(tokens);
        }
    }

    /** @param note what was put right or stays in doubt; may be empty */
    record Token(String typed, String meaning, String note) {}

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
