package org.honorsdue.documents.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A document.
 *
 * @param name of its file, without ending: {@code proof-annex}
 * @param title as printed at its head
 * @param dated the day it bears; never the clock's
 */
public record Page(String name, String title, String subtitle, LocalDate dated, List<Block> blocks) {
    public Page {
        blocks = List.copyOf(blocks);
    }

    public static Builder of(String name, String title, String subtitle, LocalDate dated) {
        return new Builder(name, title, subtitle, dated);
    }

    /** Puts a document together, block by block. */
    public static final class Builder {
        private final String name;
        private final String title;
        private final String subtitle;
        private final LocalDate dated;
        private final List<Block> blocks = new ArrayList<>();

        private Builder(String name, String title, String subtitle, LocalDate dated) {
            this.name = name;
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

        public Page page() {
            return new Page(name, title, subtitle, dated, blocks);
        }
    }
}
