package org.honorsdue.insignia.print;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.honorsdue.insignia.drawing.Svg;

/** Turns a drawing into dots. */
public final class Png {
    static {
        Faces.register();
    }

    private Png() {}

    /** PNG on a clear ground, so many dots wide; the height follows. */
    public static byte[] ofWidth(Svg drawing, int dots) {
        var out = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture(drawing, dots, new Color(0, 0, 0, 0)), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException("The picture could not be made in memory.", e);
        }
        return out.toByteArray();
    }

    /** PNG with so many dots to the inch. */
    public static byte[] atResolution(Svg drawing, int dotsPerInch) {
        return ofWidth(drawing, (int) Math.round(drawing.width() * dotsPerInch));
    }

    /** The dots themselves, on a ground. */
    public static BufferedImage picture(Svg drawing, int width, Color ground) {
        if (width < 1 || width > 20_000) {
            throw new IllegalArgumentException("A picture is 1 to 20000 dots wide, not %d.".formatted(width));
        }
        int height = (int) Math.max(1, Math.round(width * drawing.height() / drawing.width()));
        var picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        var pen = picture.createGraphics();
        pen.setColor(ground);
        pen.fillRect(0, 0, width, height);
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        read(drawing).render(null, pen, new ViewBox(0, 0, width, height));
        pen.dispose();
        return picture;
    }

    private static SVGDocument read(Svg drawing) {
        var text = new ByteArrayInputStream(drawing.text().getBytes(StandardCharsets.UTF_8));
        SVGDocument document = new SVGLoader().load(text, null, LoaderContext.createDefault());
        if (document == null) {
            throw new IllegalStateException("The drawing \"%s\" is not readable as SVG.".formatted(drawing.title()));
        }
        return document;
    }
}
