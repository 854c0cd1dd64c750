package org.honorsdue.documents.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Text set in a column of given width, with a hanging indent. Widths count characters. */
public final class Column {
    private static final int NARROWEST = 40;
    private static final int WIDEST = 100;

    private final int width;
    private final StringBuilder text = new StringBuilder();

    /** @param width of the terminal; lines never get wider than is pleasant to read, nor narrower than 40. */
    public Column(int width) {
        this.width = Math.max(NARROWEST, Math.min(width, WIDEST));
    }

    public Column line(String line) {
        text.append(line).append('\n');
        return this;
    }

    public Column gap() {
        if (text.length() > 0) {
            text.append('\n');
        }
        return this;
    }

    /** A paragraph: the first line after {@code lead}, the others indented to the lead's length. */
    public Column paragraph(String lead, String words, UnaryOperator<String> ink) {
        if (lead.length() > width / 2) {
            return paragraph("", lead + words, ink);
        }
        String indent = " ".repeat(lead.length());
        var lines = wrap(words, width - lead.length());
        for (int i = 0; i < lines.size(); i++) {
            text.append(i == 0 ? lead : indent).append(ink.apply(lines.get(i))).append('\n');
        }
        return this;
    }

    public Column paragraph(String lead, String words) {
        return paragraph(lead, words, UnaryOperator.identity());
    }

    /** Breaks at spaces; a word longer than the column is cut where the column ends. */
    static List<String> wrap(String words, int width) {
        int room = Math.max(8, width);
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (String word : words.strip().split("\\s+")) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > room) {
                int cut = Character.isHighSurrogate(rest.charAt(room - 1)) ? room - 1 : room;
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            if (line.length() > 0) {
                line.append(' ');
            }
            line.append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
