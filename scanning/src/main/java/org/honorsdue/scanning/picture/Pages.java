package org.honorsdue.scanning.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The pages of one file, opened without reading any of them yet. */
public interface Pages extends AutoCloseable {
    /** What became of opening a file. */
    sealed interface Opened {
        record Ready(Pages pages) implements Opened {}

        /** @param says what is wrong with it and what to do */
        record Refused(String says) implements Opened {}
    }

    /** What became of one page. */
    sealed interface Page {
        /** @param remarks what was done to it on the way in */
        record Picture(Gray gray, List<String> remarks) implements Page {}

        /** @param says what is wrong with it and what to do */
        record Unreadable(String says) implements Page {}
    }

    int count();

    /** @param index from 0 */
    Page page(int index);

    @Override
    void close();

    /**
     * Looks at the first bytes and the header only.
     *
     * @param fileBytes a larger file is refused unread
     * @param pixels a picture with more is decoded coarser
     * @param refusedPixels a picture that claims more is refused before anything is allocated
     */
    static Opened open(Path file, long fileBytes, long pixels, long refusedPixels) {
        var name = file.getFileName().toString();
        try {
            if (!Files.isRegularFile(file)) {
                return new Opened.Refused(name + ": there is no such file. Check the name.");
            }
            long size = Files.size(file);
            if (size > fileBytes) {
                return new Opened.Refused(
                        "%s: %,d bytes are more than the %,d that are taken. Save the picture smaller."
                                .formatted(name, size, fileBytes));
            }
            var kind = PictureFile.of(file);
            return switch (kind) {
                case PDF -> PdfPages.open(file, name, pixels, refusedPixels);
                case UNKNOWN ->
                    new Opened.Refused(name + ": this is no picture. JPEG, PNG, TIFF, GIF, BMP and PDF can be read.");
                case HEIF_OR_WEBP ->
                    new Opened.Refused(
                            name + ": pictures of this kind (HEIC, WebP) cannot be opened. Save it as JPEG or PNG.");
                default -> ImagePages.open(file, name, kind, pixels, refusedPixels);
            };
        } catch (IOException e) {
            return new Opened.Refused(name + ": the file cannot be read (" + e.getMessage() + ").");
        }
    }
}
