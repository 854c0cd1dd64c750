package org.honorsdue.scanning;

import java.time.Duration;

/**
 * What a file may ask of this machine.
 *
 * @param fileBytes a larger file is refused unread
 * @param pixels a picture with more is decoded coarser, so that no more than these are held
 * @param refusedPixels a picture that claims more than these is refused before anything is allocated
 * @param pages of a PDF or TIFF, further ones are left and named
 * @param timePerPage after it the page is given up and the next one begun
 */
public record ScanLimits(long fileBytes, long pixels, long refusedPixels, int pages, Duration timePerPage) {
    /** For a person's own pictures: 100 MB, 24 million pixels held, 300 million refused, 50 pages, a minute each. */
    public static final ScanLimits USUAL =
            new ScanLimits(100_000_000, 24_000_000, 300_000_000, 50, Duration.ofSeconds(60));
}
