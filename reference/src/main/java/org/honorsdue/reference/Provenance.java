package org.honorsdue.reference;

import java.util.Objects;

/** Where a table row comes from: the publication by name (never a web address) and the grade of verification. */
public record Provenance(String source, Grade grade) {
    public Provenance {
        Objects.requireNonNull(grade, "grade");
        if (source.isBlank()) {
            throw new IllegalArgumentException("A row needs a source. Name the publication, or write 'memory'.");
        }
    }
}
