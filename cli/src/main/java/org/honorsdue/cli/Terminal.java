package org.honorsdue.cli;

import org.honorsdue.documents.findings.Ink;

/** What the terminal can show. */
final class Terminal {
    private static final int USUAL_WIDTH = 80;

    private Terminal() {}

    /** Colour only on a terminal, and never where the reader asked for none (NO_COLOR). */
    static Ink ink() {
        boolean terminal = System.console() != null && !"dumb".equals(System.getenv("TERM"));
        return terminal && System.getenv("NO_COLOR") == null ? Ink.TERMINAL : Ink.PLAIN;
    }

    /** Columns of the terminal, as the calling script measured them; 80 when nobody knows. */
    static int width() {
        String columns = System.getenv("COLUMNS");
        if (columns == null || !columns.strip().matches("[0-9]{1,4}")) {
            return USUAL_WIDTH;
        }
        return Integer.parseInt(columns.strip());
    }
}
