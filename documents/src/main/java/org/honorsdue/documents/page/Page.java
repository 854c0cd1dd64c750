package org.honorsdue.documents.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A document.
 *
 * @param name of its file, without ending: {@code proof-annex}
 * @param title as printed at its head and kept in the properties of a PDF
 * @param subtitle whom or what it concerns
 * @param dated the day it bears; never the clock's
 */
public record Page(String name, Kind kind, String title, String subtitle, LocalDate dated, List<Block> blocks) {
    public Page {
        blocks = List.copyOf(blocks);
    }

    /** What a document is for; it decides how its head is set. */
    public enum Kind {
        /** Something to keep: the title in the middle of the sheet. */
        KEEPSAKE,
        /** Goes into an envelope: the letter itself is all there is, its head among the blocks. */
        LETTER,
        /** A list or a proof to work with. */
        SHEET
    }

    public static Builder of(String name, Kind kind, String title, String subtitle, LocalDate dated) {
        return new Builder(name, kind, title, subtitle, dated);
    }

    /** The same document with other blocks. */
    public Page withBlocks(List<Block> others) {
        return new Page(name, kind, title, subtitle, dated, others);
    }

    /** Puts a document together, block by block. */
    public static final class Builder {
        private final String name;
        private final Kind kind;
        private final String title;
        private final String subtitle;
        private final LocalDate dated;
        private final List<Block> blocks = new ArrayList<>();

        private Builder(String name, Kind kind, String title, String subtitle, LocalDate dated) {
            this.name = name;
            this.kind = kind;
            this.title = title;
            this.subtitle = subtitle;
            this.dated = dated;
        }

        public Builder add(Block block) {
            blocks.add(block);
            return this;
        }

        public Builder part(String text) {
            return add(new Block.Heading(1, text));
        }

        public Builder section(String text) {
            return add(new Block.Heading(2, text));
        }

        public Builder say(String text) {
            return add(new Block.Paragraph(text));
        }

        public Builder fine(String text) {
            return add(new Block.Fine(text));
        }

        public Builder points(List<String> items) {
            return items.isEmpty() ? this : add(new Block.Points(items, false));
        }

        public Builder steps(List<String> items) {
            return items.isEmpty() ? this : add(new Block.Points(items, true));
        }

        public Builder table(List<String> header, List<Integer> shares, List<List<String>> rows) {
            return rows.isEmpty() ? this : add(new Block.Table(header, shares, rows));
        }

        public Page page() {
            return new Page(name, kind, title, subtitle, dated, blocks);
        }
    }
}
