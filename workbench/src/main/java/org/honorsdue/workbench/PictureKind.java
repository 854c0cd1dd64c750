package org.honorsdue.workbench;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The kinds of picture that are taken in, told by their first bytes. */
enum PictureKind {
    JPEG("image/jpeg", true),
    PNG("image/png", true),
    GIF("image/gif", true),
    WEBP("image/webp", true),
    TIFF("image/tiff", false),
    PDF("application/pdf", false);

    private final String mediaType;
    private final boolean shownByBrowsers;

    PictureKind(String mediaType, boolean shownByBrowsers) {
        this.mediaType = mediaType;
        this.shownByBrowsers = shownByBrowsers;
    }

    String mediaType() {
        return mediaType;
    }

    /** Whether a browser shows it as it is; the others are drawn anew, page by page. */
    boolean shownByBrowsers() {
        return shownByBrowsers;
    }

    static Optional<PictureKind> of(byte[] content) {
        if (content.length < 12) {
            return Optional.empty();
        }
        if ((content[0] & 255) == 0xFF && (content[1] & 255) == 0xD8 && (content[2] & 255) == 0xFF) {
            return Optional.of(JPEG);
        }
        String head = new String(content, 0, 12, StandardCharsets.ISO_8859_1);
        if (head.startsWith("\u0089PNG\r\n")) {
            return Optional.of(PNG);
        }
        if (head.startsWith("GIF8")) {
            return Optional.of(GIF);
        }
        if (head.startsWith("RIFF") && head.endsWith("WEBP")) {
            return Optional.of(WEBP);
        }
        if (head.startsWith("II*\0") || head.startsWith("MM\0*")) {
            return Optional.of(TIFF);
        }
        return head.startsWith("%PDF") ? Optional.of(PDF) : Optional.empty();
    }
}
