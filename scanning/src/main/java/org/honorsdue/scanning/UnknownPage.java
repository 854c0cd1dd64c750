package org.honorsdue.scanning;

import java.util.Locale;
import java.util.regex.Pattern;
import org.honorsdue.scanning.picture.Gray;
import org.honorsdue.scanning.preparation.Polarity;
import org.honorsdue.scanning.recognition.LineReader;

/** Says what a page may be on which no form was found: the certificate side, another paper, handwriting. */
final class UnknownPage {
    private static final int LONG_SIDE = 1600;

    /** Words that stand on the certificate side and not on a page of boxes: from memory of the forms. */
    private static final Pattern CERTIFICATE =
            Pattern.compile("CERTIFY|TESTIMONIAL|HONORABLY DISCHARGED|HONEST AND FAITHFUL|AWARDED AS");

    private static final Pattern WORD = Pattern.compile("[A-Z]{3,}");

    private UnknownPage() {}

    static Notice notice(int number, LineReader reader, Gray picture) {
        var small = picture.shrunk((double) LONG_SIDE / Math.max(picture.width(), picture.height()));
        var dark = Polarity.of(small) == Polarity.LIGHT_ON_DARK ? small.inverted() : small;
        var words = reader.words(dark).toUpperCase(Locale.ROOT).replaceAll("\\s+", " ");
        if (CERTIFICATE.matcher(words).find()) {
            return new Notice(
                    Notice.Kind.NO_BOXES,
                    "Page %d: this looks like the certificate side, which has no boxes to read. Photograph the other side."
                            .formatted(number));
        }
        long count = WORD.matcher(words).results().count();
        if (count < 6) {
            return new Notice(
                    Notice.Kind.HANDWRITING,
                    "Page %d: hardly a printed or typed word was found. Handwriting cannot be read; type it in."
                            .formatted(number));
        }
        return new Notice(
                Notice.Kind.NOT_THIS_FORM,
                "Page %d: printed or typed, but no boxes of a WD AGO Form 53-55 or 53-98 were found. If it is one, photograph"
                                .formatted(number)
                        + " it flat, whole and in even light; or type it in.");
    }
}
