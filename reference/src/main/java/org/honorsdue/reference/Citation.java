package org.honorsdue.reference;

import java.util.Objects;

/**
 * One place in one edition of one publication.
 *
 * <p>The edition is not decoration: 32 CFR part 578 was renumbered in 2006, so 578.46 is one medal in the 2002 edition
 * and another in the 2006 edition.
 *
 * @param publication the publication by its own name, as in {@code 32 CFR}
 * @param pinpoint section, paragraph or page within it, as in {@code 578.48(a)}; empty for the whole publication
 * @param edition year, revision or date of the edition that was used; empty only for a law that has just one
 * @param grade how far the text was verified
 */
public record Citation(String publication, String pinpoint, String edition, Grade grade) {
    public Citation {
        Objects.requireNonNull(grade, "grade");
        if (publication.isBlank()) {
            throw new IllegalArgumentException("A citation needs the name of a publication.");
        }
    }

    /** The citation as a reader expects it: {@code 32 CFR 578.48(a), 2006 edition}. */
    public String text() {
        var written = new StringBuilder(publication);
        if (!pinpoint.isBlank()) {
            written.append(' ').append(pinpoint);
        }
        if (!edition.isBlank()) {
            written.append(", ").append(edition);
        }
        return written.toString();
    }
}
