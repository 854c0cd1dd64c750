package org.honorsdue.insignia.drawing;

/**
 * A drawing as SVG text: true size in inches, with a title, a description, and the title again as {@code alt}, which
 * accessible PDF asks for.
 *
 * @param width in inches
 * @param height in inches
 */
public record Svg(String text, String title, String description, double width, double height) {

    /** Writes a drawing. The same drawing and words give the same bytes. */
    public static Svg of(Drawing drawing, String title, String description) {
        if (title.isBlank()) {
            throw new IllegalArgumentException("A drawing needs a title for those who cannot see it.");
        }
        return new Svg(
                new SvgWriter(drawing, title, description).write(),
                title,
                description,
                drawing.width(),
                drawing.height());
    }
}
