package org.honorsdue.documents.findings;

/** How emphasis is put on a line of text: with terminal escapes, or not at all. */
public enum Ink {
    /** Plain characters: for a pipe, a file, or a reader who asked for no colour. */
    PLAIN("", "", "", "", ""),
    /** Bold, dim and two colours, by the ANSI escapes every terminal knows. */
    TERMINAL("\u001b[1m", "\u001b[2m", "\u001b[36m", "\u001b[33m", "\u001b[0m");

    private final String bold;
    private final String dim;
    private final String heading;
    private final String doubt;
    private final String end;

    Ink(String bold, String dim, String heading, String doubt, String end) {
        this.bold = bold;
        this.dim = dim;
        this.heading = heading;
        this.doubt = doubt;
        this.end = end;
    }

    public String bold(String text) {
        return bold + text + end;
    }

    public String dim(String text) {
        return dim + text + end;
    }

    public String heading(String text) {
        return heading + text + end;
    }

    public String doubt(String text) {
        return doubt + text + end;
    }
}
