package org.honorsdue.documents.pdf;

import java.util.Arrays;
import java.util.Optional;

/** The sheets people print on. */
public enum Sheet {
    LETTER("letter", "8.5in 11in"),
    A4("a4", "210mm 297mm");

    private final String id;
    private final String css;

    Sheet(String id, String css) {
        this.id = id;
        this.css = css;
    }

    /** The word that names it on the command line. */
    public String id() {
        return id;
    }

    public static Optional<Sheet> ofId(String id) {
        return Arrays.stream(values()).filter(sheet -> sheet.id.equals(id)).findFirst();
    }

    /** Width and height as a CSS page size. */
    public String css() {
        return css;
    }
}
