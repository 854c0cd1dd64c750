package org.honorsdue.documents;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.honorsdue.documents.page.HtmlPage;
import org.honorsdue.documents.page.Page;
import org.honorsdue.documents.page.TextPage;
import org.honorsdue.documents.pdf.Press;
import org.honorsdue.documents.pdf.Sheet;

/** The forms in which a document leaves the desk. */
public enum Output {
    /** Tagged PDF (PDF/UA-1), faces embedded. */
    PDF("pdf", "pdf") {
        @Override
        public byte[] of(Page page, Sheet sheet) {
            return new Press().print(new HtmlPage(sheet).write(page), page.dated());
        }
    },
    /** One XHTML file with its style in it, UTF-8. */
    HTML("html", "html") {
        @Override
        public byte[] of(Page page, Sheet sheet) {
            return new HtmlPage(sheet).write(page).getBytes(StandardCharsets.UTF_8);
        }
    },
    /** Plain text, UTF-8, 78 characters wide; the sheet does not matter to it. */
    TEXT("text", "txt") {
        @Override
        public byte[] of(Page page, Sheet sheet) {
            return new TextPage().write(page).getBytes(StandardCharsets.UTF_8);
        }
    };

    private final String id;
    private final String ending;

    Output(String id, String ending) {
        this.id = id;
        this.ending = ending;
    }

    /** The same document and sheet always give the same bytes. */
    public abstract byte[] of(Page page, Sheet sheet);

    /** {@code family-summary.pdf}. */
    public String fileName(Page page) {
        return page.name() + "." + ending;
    }

    /** The word that names it on the command line. */
    public String id() {
        return id;
    }

    public static Optional<Output> ofId(String id) {
        return Arrays.stream(values()).filter(output -> output.id.equals(id)).findFirst();
    }
}
