package org.honorsdue.documents.page;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.honorsdue.documents.findings.FindingsJson;
import org.honorsdue.documents.pdf.Sheet;

/** A document as XHTML, for a browser and for the press alike. */
public final class HtmlPage {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private static final Pattern FRACTION = Pattern.compile("[(]?(?:\\d+[ \u00a0])?\\d+/\\d+[)]?");

    private final Sheet sheet;

    public HtmlPage(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The whole document, well-formed. The advice stands once, at its end. */
    public String write(Page page) {
        var html = new StringBuilder(8192);
        html.append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\" xml:lang=\"en\">\n")
                .append("<head>\n<meta charset=\"utf-8\"/>\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>")
                .append(escape(title(page)))
                .append("</title>\n<style>\n")
                .append(Style.of(sheet, page.kind(), cssString(title(page))))
                .append("</style>\n</head>\n<body class=\"")
                .append(page.kind().name().toLowerCase(Locale.ROOT))
                .append("\">\n");
        head(page, html);
        html.append("<main>\n");
        for (var block : page.blocks()) {
            write(block, html);
        }
        html.append("</main>\n<p class=\"advice\">")
                .append(escape(FindingsJson.ADVICE))
                .append("</p>\n</body>\n</html>\n");
        return html.toString();
    }

    private static String title(Page page) {
        return page.kind() == Page.Kind.KEEPSAKE || page.subtitle().isBlank()
                ? page.title()
                : page.title() + " \u00b7 " + page.subtitle();
    }

    private static void head(Page page, StringBuilder html) {
        if (page.kind() == Page.Kind.LETTER) {
            return;
        }
        html.append("<header>\n<h1>").append(escape(page.title())).append("</h1>\n<p class=\"subtitle\">");
        if (!page.subtitle().isBlank()) {
            html.append(escape(page.subtitle()));
            html.append(page.kind() == Page.Kind.KEEPSAKE ? "</p>\n<p class=\"dated\">" : " \u00b7 ");
        }
        html.append(DAY.format(page.dated())).append("</p>\n</header>\n");
    }

    private static void write(Block block, StringBuilder html) {
        if (block instanceof Block.Heading heading) {
            String tag = "h" + (heading.level() + 1);
            element(tag, "", heading.text(), html);
        } else if (block instanceof Block.Paragraph paragraph) {
            element("p", "", paragraph.text(), html);
        } else if (block instanceof Block.Fine fine) {
            element("p", "fine", fine.text(), html);
        } else if (block instanceof Block.Warning warning) {
            element("p", "warning", warning.text(), html);
        } else if (block instanceof Block.Typed typed) {
            html.append("<p class=\"typed\"><span class=\"lead\">")
                    .append(escape(typed.lead()))
                    .append("</span> ")
                    .append(escape(typed.text()))
                    .append("</p>\n");
        } else if (block instanceof Block.Points points) {
            list(points.numbered() ? "ol" : "ul", "", "", points.items(), html);
        } else if (block instanceof Block.Checks checks) {
            list("ul", "checks", "<span class=\"box\">\u00a0</span>", checks.items(), html);
        } else if (block instanceof Block.Table table) {
            table(table, html);
        } else if (block instanceof Block.Particulars particulars) {
            particulars(particulars, html);
        } else if (block instanceof Block.Figures figures) {
            figures(figures, html);
        } else if (block instanceof Block.AwardEntry award) {
            award(award, html);
        } else if (block instanceof Block.Gloss gloss) {
            gloss(gloss, html);
        } else if (block instanceof Block.Blanks blanks) {
            blanks.captions().forEach(caption -> {
                element("p", "blank", "\u00a0", html);
                element("p", "caption", caption, html);
            });
        } else if (block instanceof Block.Drawing drawing) {
            html.append("<div class=\"drawing\">").append(drawing.svg()).append("</div>\n");
        } else if (block instanceof Block.Lines lines) {
            html.append("<p class=\"lines\">")
                    .append(lines.lines().stream().map(HtmlPage::escape).collect(Collectors.joining("<br/>")))
                    .append("</p>\n");
        } else if (block instanceof Block.NewSheet) {
            html.append("<div class=\"new-sheet\"></div>\n");
        }
    }

    private static void element(String tag, String style, String text, StringBuilder html) {
        html.append('<').append(tag);
        if (!style.isEmpty()) {
            html.append(" class=\"").append(style).append('"');
        }
        html.append('>').append(escape(text)).append("</").append(tag).append(">\n");
    }

    private static void list(String tag, String style, String mark, List<String> items, StringBuilder html) {
        html.append('<').append(tag);
        if (!style.isEmpty()) {
            html.append(" class=\"").append(style).append('"');
        }
        html.append(">\n");
        items.forEach(
                item -> html.append("<li>").append(mark).append(escape(item)).append("</li>\n"));
        html.append("</").append(tag).append(">\n");
    }

    private static void table(Block.Table table, StringBuilder html) {
        int parts = table.shares().stream().mapToInt(Integer::intValue).sum();
        html.append("<table>\n<thead><tr>");
        for (int i = 0; i < table.header().size(); i++) {
            html.append("<th scope=\"col\" style=\"width: ")
                    .append(table.shares().get(i) * 100 / parts)
                    .append("%\">")
                    .append(escape(table.header().get(i)))
                    .append("</th>");
        }
        html.append("</tr></thead>\n<tbody>\n");
        for (var row : table.rows()) {
            html.append("<tr>");
            row.forEach(
                    cell -> html.append("<td>").append(unbroken(escape(cell))).append("</td>"));
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n");
    }

    /** Keeps a fraction of an inch on one line, with the inches before it. */
    private static String unbroken(String html) {
        return FRACTION.matcher(html).replaceAll("<span class=\"whole\">$0</span>");
    }

    private static void particulars(Block.Particulars particulars, StringBuilder html) {
        html.append("<table class=\"particulars\">\n<tbody>\n");
        for (var row : particulars.rows()) {
            html.append("<tr><th scope=\"row\">").append(escape(row.caption())).append("</th><td");
            if (row.value().isBlank()) {
                html.append(" class=\"fill\">\u00a0");
            } else {
                html.append(row.typed() ? " class=\"typed\">" : ">").append(escape(row.value()));
            }
            html.append("</td></tr>\n");
        }
        html.append("</tbody>\n</table>\n");
    }

    private static void figures(Block.Figures figures, StringBuilder html) {
        html.append("<div class=\"figures\">\n");
        int share = 96 / Math.max(1, figures.figures().size());
        for (var figure : figures.figures()) {
            html.append("<div class=\"figure\" style=\"width: ")
                    .append(share)
                    .append("%\"><p class=\"number\">")
                    .append(figure.number())
                    .append("</p><p class=\"caption\">")
                    .append(escape(figure.caption()))
                    .append("</p></div>\n");
        }
        html.append("</div>\n");
    }

    private static void award(Block.AwardEntry award, StringBuilder html) {
        html.append("<div class=\"award\">\n");
        award.ribbon()
                .ifPresent(ribbon -> html.append("<div class=\"ribbon\">")
                        .append(ribbon.svg())
                        .append("</div>\n"));
        html.append("<div class=\"words\"><p class=\"name\"><strong>")
                .append(escape(award.name()))
                .append("</strong>");
        if (!award.aside().isEmpty()) {
            html.append(" <span class=\"aside\">").append(escape(award.aside())).append("</span>");
        }
        html.append("</p>\n");
        if (!award.meaning().isEmpty()) {
            element("p", "meaning", award.meaning(), html);
        }
        award.notes().forEach(note -> element("p", "note", note, html));
        html.append("</div>\n</div>\n");
    }

    private static void gloss(Block.Gloss gloss, StringBuilder html) {
        html.append("<div class=\"gloss\">\n<p class=\"typed\"><span class=\"lead\">")
                .append(escape(gloss.caption()))
                .append("</span><br/>");
        if (!gloss.typed().isEmpty()) {
            html.append(escape(gloss.typed()).replace("\n", "<br/>"));
        }
        if (!gloss.state().isEmpty()) {
            html.append(gloss.typed().isEmpty() ? "" : " ")
                    .append("<span class=\"lead\">")
                    .append(escape(gloss.state()))
                    .append("</span>");
        }
        html.append("</p>\n");
        if (!gloss.tokens().isEmpty()) {
            html.append("<table class=\"tokens\">\n<tbody>\n");
            for (var token : gloss.tokens()) {
                html.append("<tr><th scope=\"row\">")
                        .append(escape(token.typed()))
                        .append("</th><td>")
                        .append(escape(token.meaning()));
                if (!token.note().isEmpty()) {
                    html.append(" <span class=\"aside\">")
                            .append(escape(token.note()))
                            .append("</span>");
                }
                html.append("</td></tr>\n");
            }
            html.append("</tbody>\n</table>\n");
        }
        html.append("</div>\n");
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
        return text.replaceAll("[^\\p{L}\\p{N} .,:;()\u00b7'\u2019-]", " ").replace("'", "\u2019");
    }
}
