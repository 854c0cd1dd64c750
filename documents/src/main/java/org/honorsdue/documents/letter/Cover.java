package org.honorsdue.documents.letter;

import java.util.List;
import java.util.function.UnaryOperator;
import org.honorsdue.documents.page.Block;
import org.honorsdue.documents.page.Page;

/** Lays the masking over a finished document, so that no block can let something through by another road. */
final class Cover {
    private final UnaryOperator<String> words;

    Cover(UnaryOperator<String> words) {
        this.words = words;
    }

    Page over(Page page) {
        return new Page(
                page.name(),
                page.kind(),
                words.apply(page.title()),
                words.apply(page.subtitle()),
                page.dated(),
                page.blocks().stream().map(this::over).toList());
    }

    private Block over(Block block) {
        if (block instanceof Block.Heading heading) {
            return new Block.Heading(heading.level(), words.apply(heading.text()));
        } else if (block instanceof Block.Paragraph paragraph) {
            return new Block.Paragraph(words.apply(paragraph.text()));
        } else if (block instanceof Block.Fine fine) {
            return new Block.Fine(words.apply(fine.text()));
        } else if (block instanceof Block.Warning warning) {
            return new Block.Warning(words.apply(warning.text()));
        } else if (block instanceof Block.Typed typed) {
            return new Block.Typed(words.apply(typed.lead()), words.apply(typed.text()));
        } else if (block instanceof Block.Points points) {
            return new Block.Points(over(points.items()), points.numbered());
        } else if (block instanceof Block.Checks checks) {
            return new Block.Checks(over(checks.items()));
        } else if (block instanceof Block.Table table) {
            return new Block.Table(
                    over(table.header()),
                    table.shares(),
                    table.rows().stream().map(this::over).toList());
        } else if (block instanceof Block.Particulars particulars) {
            return new Block.Particulars(particulars.rows().stream()
                    .map(row -> new Block.Particular(words.apply(row.caption()), words.apply(row.value()), row.typed()))
                    .toList());
        } else if (block instanceof Block.AwardEntry award) {
            return new Block.AwardEntry(
                    words.apply(award.name()),
                    words.apply(award.aside()),
                    words.apply(award.meaning()),
                    over(award.notes()),
                    award.ribbon());
        } else if (block instanceof Block.Gloss gloss) {
            return new Block.Gloss(
                    words.apply(gloss.caption()),
                    words.apply(gloss.typed()),
                    words.apply(gloss.state()),
                    gloss.tokens().stream()
                            .map(token -> new Block.Token(
                                    words.apply(token.typed()),
                                    words.apply(token.meaning()),
                                    words.apply(token.note())))
                            .toList());
        } else if (block instanceof Block.Drawing drawing) {
            return new Block.Drawing(drawing.svg(), words.apply(drawing.words()));
        } else if (block instanceof Block.Lines lines) {
            return new Block.Lines(over(lines.lines()));
        }
        // Numbers and lines to be filled in carry nothing of the papers.
        return block;
    }

    private List<String> over(List<String> texts) {
        return texts.stream().map(words).toList();
    }
}
