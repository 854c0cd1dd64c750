package org.honorsdue.documents.page;

import org.honorsdue.documents.pdf.Sheet;

/**
 * How a document looks: paper, one ink, one accent that stays legible in black and white. The press reads CSS 2.1 with
 * paged media; a browser takes the same rules and those for the screen besides.
 */
final class Style {
    private static final String PRINT = """
            @page { size: %s; margin: %s;
              @bottom-left { content: "%s"; font: 8.3pt Book, BookMore; color: #595f63; }
              @bottom-right { content: counter(page) " / " counter(pages); font: 8.3pt Book, BookMore; color: #595f63; } }
            html { font-family: Book, BookMore, "Source Serif 4", Georgia, serif; font-size: 10.6pt; line-height: 1.4; color: #1d262e; }
            body { margin: 0 auto; max-width: 6.9in; word-wrap: break-word; overflow-wrap: anywhere; }
            header { border-bottom: 0.8pt solid #1d262e; margin: 0 0 13pt 0; padding: 0 0 7pt 0; }
            h1 { font-size: 19pt; line-height: 1.15; font-weight: 600; margin: 0; }
            .subtitle, .dated { font-style: italic; color: #444e57; margin: 3pt 0 0 0; }
            h2 { font-size: 12.6pt; line-height: 1.25; font-weight: 600; margin: 16pt 0 4pt 0; color: #7f231e; page-break-after: avoid; }
            h3 { font-size: 10.9pt; line-height: 1.3; font-weight: 600; margin: 10pt 0 2pt 0; page-break-after: avoid; }
            p { margin: 3pt 0 6pt 0; orphans: 2; widows: 2; }
            .fine { font-size: 8.9pt; color: #444e57; font-style: italic; line-height: 1.33; margin: 1pt 0 4pt 0; }
            .warning { border-left: 2.4pt solid #7f231e; padding: 1pt 0 1pt 8pt; margin: 7pt 0; page-break-inside: avoid; }
            .typed { font-family: Typewriter, Book, BookMore, "Courier Prime", monospace; font-size: 9.6pt; }
            p.typed { margin: 1pt 0 4pt 0; }
            .typed .lead { font-family: Book, BookMore, "Source Serif 4", Georgia, serif; font-size: 8.9pt; color: #444e57; }
            ul, ol { margin: 2pt 0 7pt 0; padding: 0 0 0 15pt; } li { margin: 0 0 3pt 0; }
            ul.checks { list-style: none; padding: 0; } ul.checks li { padding-left: 17pt; margin-bottom: 4pt; }
            .box { display: inline-block; width: 7.4pt; height: 7.4pt; border: 0.8pt solid #1d262e; margin: 3pt 0 0 -17pt; float: left; font-size: 5pt; line-height: 7pt; }
            table { border-collapse: collapse; table-layout: fixed; width: 100%%; margin: 5pt 0 9pt 0; -fs-table-paginate: paginate; line-height: 1.33; }
            .whole { white-space: nowrap; }
            tr { page-break-inside: avoid; }
            th { text-align: left; vertical-align: bottom; font-weight: 600; font-size: 8.7pt; color: #444e57; border-bottom: 0.8pt solid #1d262e; padding: 2pt 9pt 2pt 0; }
            td { vertical-align: top; border-bottom: 0.4pt solid #b9b09a; padding: 3.2pt 9pt 3.2pt 0; font-size: 9.7pt; word-wrap: break-word; }
            .particulars th { width: 32%%; vertical-align: top; border-bottom: 0.4pt solid #b9b09a; padding: 3.2pt 9pt 3.2pt 0; line-height: 1.45; }
            .particulars td { font-size: 10.2pt; } .particulars td.typed { font-size: 9.6pt; }
            td.fill { height: 15pt; border-bottom: 0.8pt solid #595f63; }
            .figures { text-align: center; margin: 8pt 0 10pt 0; padding: 6pt 0 5pt 0; border-top: 0.4pt solid #b9b09a; border-bottom: 0.4pt solid #b9b09a; }
            .figure { display: inline-block; vertical-align: top; text-align: center; }
            .figure .number { font-size: 23pt; line-height: 1; margin: 0; color: #7f231e; }
            .figure .caption { font-size: 9pt; line-height: 1.25; margin: 2pt 4pt 0 4pt; color: #444e57; }
            .award { margin: 0 0 6pt 0; page-break-inside: avoid; } .award p { margin: 0; }
            .award .ribbon { float: left; width: 58pt; padding-top: 3pt; } .ribbons .words, .award .ribbon + .words { margin-left: 66pt; }
            .award .name { line-height: 1.3; } .award strong { font-weight: 600; }
            .aside { color: #444e57; font-style: italic; font-size: 9.6pt; }
            .meaning { font-style: italic; color: #333d45; line-height: 1.33; }
            .award .note { line-height: 1.36; }
            .gloss { margin: 0 0 6pt 0; } .gloss p.typed { margin: 0; padding: 1.5pt 0 2pt 0; border-top: 0.4pt solid #b9b09a; page-break-after: avoid; font-size: 10pt; line-height: 1.3; }
            .tokens { margin: 1pt 0 3pt 14pt; width: 95%%; line-height: 1.25; } .tokens th { font-family: Typewriter, Book, BookMore, "Courier Prime", monospace; width: 34%%; font-weight: 400; font-size: 8.8pt; color: #1d262e; vertical-align: top; border: none; padding: 1pt 8pt 1pt 0; } .tokens td { border: none; font-size: 9.3pt; padding: 1pt 0; }
            .tokens .aside { font-size: 8.9pt; }
            .blank { border-bottom: 0.8pt solid #595f63; height: 19pt; line-height: 1; margin: 0; width: 3.6in; page-break-after: avoid; }
            p.caption { font-size: 8.4pt; color: #444e57; margin: 1pt 0 3pt 0; }
            .drawing svg { display: block; margin: 0 auto; } .drawing { margin: 6pt 0 10pt 0; text-align: center; page-break-inside: avoid; }
            .lines { margin: 0 0 11pt 0; line-height: 1.32; }
            .advice { border-top: 0.4pt solid #b9b09a; margin: 18pt 0 0 0; padding: 5pt 0 0 0; font-size: 8.7pt; line-height: 1.35; color: #444e57; page-break-inside: avoid; }
            .new-sheet { page-break-before: always; }
            .letter h1 { font-size: 12pt; margin: 3pt 0 9pt 0; line-height: 1.3; }
            .letter p { margin: 0 0 7pt 0; } .letter p.fine, .letter p.caption { margin: 1pt 0 4pt 0; } .letter p.blank { margin: 0; } .letter p.lines { margin: 0 0 13pt 0; }
            .keepsake main { font-size: 10.2pt; line-height: 1.33; } .keepsake p { margin: 2pt 0 4pt 0; } .keepsake .award { margin-bottom: 5pt; } .keepsake .award p { margin: 0; } .keepsake .figure p { margin-top: 0; margin-bottom: 0; }
            .keepsake header { text-align: center; border-bottom: none; margin: 0 0 6pt 0; padding: 0; }
            .keepsake h1 { font-size: 27pt; font-weight: 400; line-height: 1.1; }
            .keepsake .subtitle { font-size: 11.4pt; } .keepsake .dated { display: none; }
            .keepsake .particulars { margin: 3pt 0 4pt 0; } .keepsake .particulars th { width: 36%%; border: none; font-weight: 400; font-size: 9.7pt; line-height: 1.25; padding: 1.2pt 10pt 1.6pt 0; }
            .keepsake .particulars td { border: none; font-size: 9.8pt; line-height: 1.25; padding: 1.2pt 0; }
            .keepsake h2 { border-bottom: 0.4pt solid #b9b09a; padding-bottom: 1.5pt; margin-top: 10pt; }
            """;

    private static final String SCREEN = """
            @media screen {
            html { background: #f3eee1; font-size: 17px; } body { background: #fdfbf5; padding: 2.2rem 2rem; margin: 0 auto; max-width: 44rem; }
            table, td { font-size: 0.93rem; } .fine, .advice, .caption, .aside { font-size: 0.85rem; } h1 { font-size: 1.9rem; } h2 { font-size: 1.25rem; }
            svg { max-width: 100%; height: auto; } .award .ribbon svg { width: 58pt; }
            }
            """;

    private Style() {}

    static String of(Sheet sheet, Page.Kind kind, String running) {
        String margin = switch (kind) {
            case KEEPSAKE -> "0.6in 0.9in 0.7in 0.9in";
            case LETTER -> "0.8in 1.05in 0.8in 1.05in";
            case SHEET -> "0.85in 0.9in 0.9in 0.9in";
        };
        return PRINT.formatted(sheet.css(), margin, running) + SCREEN;
    }
}
