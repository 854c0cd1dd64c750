package org.honorsdue.scanning.recognition;

import java.util.List;

/**
 * What a recognition engine made of one line.
 *
 * @param glyphs letter by letter, without the spaces
 */
public record Recognized(List<Glyph> glyphs) {
    public Recognized {
        glyphs = List.copyOf(glyphs);
    }

    /**
     * One letter.
     *
     * @param confidence 0 to 100, as the engine has it
     * @param spaceBefore whether a space stands before it
     * @param left first pixel column within the line's picture
     * @param right one past the last
     */
    public record Glyph(String letter, double confidence, boolean spaceBefore, int left, int right) {}

    public String text() {
        var text = new StringBuilder();
        for (var glyph : glyphs) {
            if (glyph.spaceBefore() && text.length() > 0) {
                text.append(' ');
            }
            text.append(glyph.letter());
        }
        return text.toString();
    }

    /** The mean over the letters; 0 for none. */
    public double confidence() {
        return glyphs.stream().mapToDouble(Glyph::confidence).average().orElse(0);
    }
}
