package org.honorsdue.documents.pdf;

/** The sheets people print on. */
public enum Sheet {
    LETTER("8.5in 11in"),
    A4("210mm 297mm");

    private final String css;

    Sheet(String css) {
        this.css = css;
    }

    /** Width and height as a CSS page size. */
    public String css() {
        return css;
    }
}
