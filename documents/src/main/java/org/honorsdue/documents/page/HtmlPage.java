package org.honorsdue.documents.page;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.honorsdue.documents.findings.FindingsJson;
import org.honorsdue.documents.pdf.Sheet;

/** A document as XHTML, for a browser and for the press alike. */
public final class HtmlPage {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    // The press reads CSS 2.1 with paged media; the browser takes the same rules.
    private static final String STYLE = """
            @page { size: %s; margin: 0.9in 1in 0.95in 1in;
              @bottom-left { content: "%s"; font: 8.5pt Book, BookMore; color: #555; }
              @bottom-right { content: counter(page) " / " counter(pages); font: 8.5pt Book, BookMore; color: #555; } }
            html { font-family: Book, BookMore, "Source Serif 4", Georgia, serif; font-size: 10.8pt; line-height: 1.42; color: #1d262e; }
            body { margin: 0 auto; max-width: 6.7in; word-wrap: break-word; overflow-wrap: anywhere; }
            header { border-bottom: 0.75pt solid #847a62; margin-bottom: 14pt; padding-bottom: 6pt; }
            h1 { font-size: 19pt; line-height: 1.15; font-weight: 600; margin: 0; }
            .subtitle { font-style: italic; color: #444e57; margin: 3pt 0 0 0; }
            h2 { font-size: 12.5pt; font-weight: 600; margin: 15pt 0 3pt 0; color: #8a2a24; page-break-after: avoid; }
            h3 { font-size: 10.8pt; font-weight: 600; margin: 9pt 0 1pt 0; page-break-after: avoid; }
            p { margin: 3pt 0 5pt 0; orphans: 2; widows: 2; }
            .fine { font-size: 8.8pt; color: #444e57; font-style: italic; line-height: 1.32; margin: 0 0 3pt 0; }
            .warning { border-left: 2.2pt solid #8a2a24; padding-left: 8pt; margin: 8pt 0; }
            .typed { font-family: Typewriter, BookMore, "Courier Prime", monospace; font-size: 9.8pt; margin: 1pt 0 4pt 0; }
            .typed .lead { font-family: Book, BookMore, serif; font-size: 8.8pt; color: #444e57; }
            ul, ol { margin: 2pt 0 6pt 0; padding-left: 16pt; } li { margin: 2pt 0; }
            table { border-collapse: collapse; width: 100%%; margin: 5pt 0 8pt 0; -fs-table-paginate: paginate; }
            tr { page-break-inside: avoid; }
            th { text-align: left; font-weight: 600; font-size: 8.8pt; color: #444e57; border-bottom: 0.75pt solid #847a62; padding: 2pt 8pt 2pt 0; }
            td { vertical-align: top; border-bottom: 0.4pt solid #cfc6b0; padding: 3pt 8pt 3pt 0; }
            .blank { border-bottom: 0.5pt solid #555; height: 17pt; margin: 0; } .caption { font-size: 8.2pt; color: #444e57; margin: 1pt 0 4pt 0; }
            .drawing { margin: 8pt 0 10pt 0; text-align: center; } .lines { margin: 8pt 0; line-height: 1.3; }
            .advice { border-top: 0.75pt solid #847a62; margin-top: 16pt; padding-top: 5pt; font-size: 8.8pt; color: #444e57; }
            .new-sheet { page-break-before: always; }
            """;

    private final Sheet sheet;

    public HtmlPage(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The whole document, well-formed. The advice stands once, at its end. */
    public String write(Page page) {
        var html = new StringBuilder(8192);
        html.append(
                        "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\" xml:lang=\"en\">\n<head>\n")
                .append("<meta charset=\"utf-8\"/>\n<title>")
                .append(escape(page.title()))
                .append("</title>\n<style>\n")
                .append(STYLE.formatted(sheet.css(), cssString(page.title())))
                .append("</style>\n</head>\n<body>\n<header>\n<h1>")
                .append(escape(page.title()))
                .append("</h1>\n<p class=\"subtitle\">")
                .append(escape(page.subtitle().isBlank() ? "" : page.subtitle() + " · "))
                .append(DAY.format(page.dated()))
                .append("</p>\n</header>\n<main>\n");
        for (var block : page.blocks()) {
            write(block, html);
        }
        html.append("</main>\n<p class=\"advice\">")
                .append(escape(FindingsJson.ADVICE))
                .append("</p>\n</body>\n</html>\n");
        return html.toString();
    }

    private static void write(Block block, StringBuilder html) {
        if (block instanceof Block.Heading heading) {
            int level = heading.level() + 1;
            html.append("<h%d>%s</h%d>%n"
                    .formatted(level, escape(heading.text()), level)
                    .replace("\r\n", "\n"));
        } else if (block instanceof Block.Paragraph paragraph) {
            paragraph("", paragraph.text(), html);
        } else if (block instanceof Block.Fine fine) {
            paragraph(" class=\"fine\"", fine.text(), html);
        } else if (block instanceof Block.Warning warning) {
            paragraph(" class=\"warning\"", warning.text(), html);
        } else if (block instanceof Block.Typed typed) {
            html.append("<p class=\"typed\"><span class=\"lead\">")
                    .append(escape(typed.lead()))
                    .append("</span> ")
                    .append(escape(typed.text()))
                    .append("</p>\n");
        } else if (block instanceof Block.Points points) {
            String tag = points.numbered() ? "ol" : "ul";
            html.append('<').append(tag).append(">\n");
            points.items()
                    .forEach(item -> html.append("<li>").append(escape(item)).append("</li>\n"));
            html.append("</").append(tag).append(">\n");
        } else if (block instanceof Block.Table table) {
            table(table, html);
        } else if (block instanceof Block.Blanks blanks) {
            blanks.captions()
                    .forEach(caption -> html.append("<p class=\"blank\">\u00a0</p>\n<p class=\"caption\">")
                            .append(escape(caption))
                            .append("</p>\n"));
        } else if (block instanceof Block.Drawing drawing) {
            html.append("<div class=\"drawing\">").append(drawing.svg()).append("</div>\n");
        } else if (block instanceof Block.Lines lines) {
            html.append("<p class=\"lines\">");
            html.append(String.join(
                    "<br/>", lines.lines().stream().map(HtmlPage::escape).toList()));
            html.append("</p>\n");
        } else if (block instanceof Block.NewSheet) {
            html.append("<div class=\"new-sheet\"></div>\n");
        }
    }

    private static void paragraph(String attributes, String text, StringBuilder html) {
        html.append("<p").append(attributes).append('>').append(escape(text)).append("</p>\n");
    }

    private static void table(Block.Table table, StringBuilder html) {
        html.append("<table>\n<thead><tr>");
        table.header()
                .forEach(cell ->
                        html.append("<th scope=\"col\">").append(escape(cell)).append("</th>"));
        html.append("</tr></thead>\n<tbody>\n");
        for (var row : table.rows()) {
            html.append("<tr>");
            row.forEach(cell -> html.append("<td>").append(escape(cell)).append("</td>"));
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n");
    }

    /** Text as XML character data; what XML cannot hold becomes the replacement character. */
    static String escape(String text) {
        var out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> {
                    boolean allowed = point == '\t'
                            || point == '\n'
                            || point == '\r'
                            || (point >= 0x20 && point <= 0xD7FF)
                            || (point >= 0xE000 && point <= 0xFFFD)
                            || point >= 0x10000;
                    out.appendCodePoint(allowed ? point : 0xFFFD);
                }
            }
        });
        return out.toString();
    }

    /** Text inside a CSS string inside a style element: letters and plain punctuation only. */
    private static String cssString(String text) {
        return text.replaceAll("[^\\p{L}\\p{N} .,:;()'-]", " ").replace("'", "\u2019");
    }
}
