package org.honorsdue.scanning.picture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The kinds of file that can be looked at, told by their first bytes and not by their name. */
public enum PictureFile {
    JPEG,
    PNG,
    TIFF,
    GIF,
    BMP,
    PDF,
    /** A picture of a telephone or of the web that Java cannot open by itself. */
    HEIF_OR_WEBP,
    /** Nothing that can be looked at here. */
    UNKNOWN;

    /** How far into a file its kind may show. */
    private static final int HEAD = 1024;

    public static PictureFile of(Path file) throws IOException {
        try (InputStream stream = Files.newInputStream(file)) {
            return of(stream.readNBytes(HEAD));
        }
    }

    static PictureFile of(byte[] head) {
        var text = new String(head, StandardCharsets.ISO_8859_1);
        if (text.startsWith("\u00ff\u00d8\u00ff")) {
            return JPEG;
        }
        if (text.startsWith("\u0089PNG")) {
            return PNG;
        }
        if (text.startsWith("II*\0") || text.startsWith("MM\0*")) {
            return TIFF;
        }
        if (text.startsWith("GIF8")) {
            return GIF;
        }
        if (text.startsWith("BM")) {
            return BMP;
        }
        if (text.startsWith("RIFF") && text.startsWith("WEBP", 8)
                || text.startsWith("ftyphei", 4)
                || text.startsWith("ftypmif1", 4)) {
            return HEIF_OR_WEBP;
        }
        // A PDF may begin with a little dirt before its mark.
        return text.contains("%PDF-") ? PDF : UNKNOWN;
    }

    /** The name that Java's picture readers know it by. */
    String format() {
        return name().toLowerCase(Locale.ROOT);
    }
}
