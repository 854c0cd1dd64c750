package org.honorsdue.documents.page;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.honorsdue.documents.findings.Column;
import org.honorsdue.documents.findings.FindingsJson;

/** A document as plain text, 78 characters wide. */
public final class TextPage {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final int WIDTH = 78;
    private static final String LINE = "____________________________";

    public String write(Page page) {
        var text = new Column(WIDTH);
        if (page.kind() != Page.Kind.LETTER) {
            text.paragraph("", page.title().toUpperCase(Locale.ROOT));
            text.paragraph("", (page.subtitle().isBlank() ? "" : page.subtitle() + ", ") + DAY.format(page.dated()));
        }
        for (var block : page.blocks()) {
            write(block, text);
        }
        text.gap().line("-".repeat(WIDTH)).paragraph("", FindingsJson.ADVICE);
        return text.toString();
    }

    private static void write(Block block, Column text) {
        if (block instanceof Block.Heading heading) {
            text.gap().paragraph("", heading.level() < 2 ? heading.text().toUpperCase(Locale.ROOT) : heading.text());
        } else if (block instanceof Block.Paragraph paragraph) {
            text.gap().paragraph("", paragraph.text());
        } else if (block instanceof Block.Fine fine) {
            text.paragraph("  ", fine.text());
        } else if (block instanceof Block.Warning warning) {
            text.gap().paragraph("! ", warning.text());
        } else if (block instanceof Block.Typed typed) {
            text.paragraph("  " + typed.lead() + " ", typed.text());
        } else if (block instanceof Block.Points points) {
            points(points, text);
        } else if (block instanceof Block.Checks checks) {
            text.gap();
            checks.items().forEach(item -> text.paragraph("  [ ] ", item));
        } else if (block instanceof Block.Table table) {
            table(table, text);
        } else if (block instanceof Block.Particulars particulars) {
            text.gap();
            particulars
                    .rows()
                    .forEach(row -> text.paragraph(
                            "  " + row.caption() + ": ", row.value().isBlank() ? LINE : row.value()));
        } else if (block instanceof Block.Figures figures) {
            text.gap();
            figures.figures().forEach(figure -> text.line("%5d  %s".formatted(figure.number(), figure.caption())));
        } else if (block instanceof Block.AwardEntry award) {
            award(award, text);
        } else if (block instanceof Block.Gloss gloss) {
            gloss(gloss, text);
        } else if (block instanceof Block.Blanks blanks) {
            text.gap();
            blanks.captions().forEach(caption -> text.line("  " + caption + ": " + LINE));
        } else if (block instanceof Block.Drawing drawing) {
            text.gap().paragraph("  [drawing] ", drawing.words());
        } else if (block instanceof Block.Lines lines) {
            text.gap();
            lines.lines().forEach(line -> text.paragraph("", line));
        } else if (block instanceof Block.NewSheet) {
            text.gap().line("-".repeat(WIDTH));
        }
    }

    private static void points(Block.Points points, Column text) {
        text.gap();
        for (int i = 0; i < points.items().size(); i++) {
            text.paragraph(
                    points.numbered() ? "  " + (i + 1) + ". " : "  - ",
                    points.items().get(i));
        }
    }

    private static void table(Block.Table table, Column text) {
        text.gap();
        for (var row : table.rows()) {
            row(table.header(), row, text);
        }
    }

    /** The first cell with words opens the row, the others stand indented under it. */
    private static void row(List<String> header, List<String> row, Column text) {
        boolean opened = false;
        for (int i = 0; i < row.size(); i++) {
            if (row.get(i).isBlank()) {
                continue;
            }
            String caption = header.get(i).isBlank() ? "" : header.get(i) + ": ";
            text.paragraph(opened ? "      " : "  * ", caption + row.get(i));
            opened = true;
        }
    }

    private static void award(Block.AwardEntry award, Column text) {
        text.gap().paragraph("  ", award.name() + (award.aside().isEmpty() ? "" : " (" + award.aside() + ")"));
        if (!award.meaning().isEmpty()) {
            text.paragraph("      ", award.meaning());
        }
        award.notes().forEach(note -> text.paragraph("      ", note));
    }

    private static void gloss(Block.Gloss gloss, Column text) {
        text.gap().paragraph("", gloss.caption() + (gloss.state().isEmpty() ? "" : " (" + gloss.state() + ")"));
        gloss.typed().lines().forEach(line -> text.paragraph("  | ", line));
        for (var token : gloss.tokens()) {
            text.paragraph(
                    "      ",
                    "\u201c" + token.typed() + "\u201d  " + token.meaning()
                            + (token.note().isEmpty() ? "" : " (" + token.note() + ")"));
        }
    }
}
