package org.honorsdue.documents.page;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.honorsdue.documents.findings.Column;
import org.honorsdue.documents.findings.FindingsJson;

/** A document as plain text, 78 characters wide. */
public final class TextPage {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final int WIDTH = 78;

    public String write(Page page) {
        var text = new Column(WIDTH);
        text.line(page.title().toUpperCase(Locale.ROOT));
        text.line((page.subtitle().isBlank() ? "" : page.subtitle() + ", ") + DAY.format(page.dated()));
        for (var block : page.blocks()) {
            write(block, text);
        }
        text.gap().paragraph("", FindingsJson.ADVICE);
        return text.toString();
    }

    private static void write(Block block, Column text) {
        if (block instanceof Block.Heading heading) {
            text.gap().line(heading.level() == 1 ? heading.text().toUpperCase(Locale.ROOT) : heading.text());
        } else if (block instanceof Block.Paragraph paragraph) {
            text.gap().paragraph("", paragraph.text());
        } else if (block instanceof Block.Fine fine) {
            text.paragraph("  ", fine.text());
        } else if (block instanceof Block.Warning warning) {
            text.gap().paragraph("! ", warning.text());
        } else if (block instanceof Block.Typed typed) {
            text.paragraph("  " + typed.lead() + " ", typed.text());
        } else if (block instanceof Block.Points points) {
            text.gap();
            for (int i = 0; i < points.items().size(); i++) {
                text.paragraph(
                        points.numbered() ? "  " + (i + 1) + ". " : "  - ",
                        points.items().get(i));
            }
        } else if (block instanceof Block.Table table) {
            text.gap();
            for (var row : table.rows()) {
                for (int i = 0; i < row.size(); i++) {
                    if (!row.get(i).isBlank()) {
                        String caption = table.header().get(i);
                        text.paragraph(
                                i == 0 ? "  " : "      ", (caption.isBlank() ? "" : caption + ": ") + row.get(i));
                    }
                }
            }
        } else if (block instanceof Block.Blanks blanks) {
            text.gap();
            blanks.captions().forEach(caption -> text.line("  " + caption + ": ____________________________"));
        } else if (block instanceof Block.Drawing drawing) {
            text.gap().paragraph("  [drawing] ", drawing.words());
        } else if (block instanceof Block.Lines lines) {
            text.gap();
            lines.lines().forEach(text::line);
        } else if (block instanceof Block.NewSheet) {
            text.gap();
        }
    }
}
