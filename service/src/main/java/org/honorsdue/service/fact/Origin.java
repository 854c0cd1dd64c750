package org.honorsdue.service.fact;

import java.util.Optional;
import org.honorsdue.service.paper.Entry;

/** Where a fact comes from: characters on a paper, or a piece of evidence. */
public sealed interface Origin {
    /** The characters themselves, or the evidence in its own words. */
    String text();

    /**
     * Characters of an entry.
     *
     * @param paper number of the paper in the casefile, from 1
     * @param start first character within the entry's text, from 0
     * @param end one past the last character
     */
    record OnPaper(int paper, Entry entry, int start, int end, String text) implements Origin {
        public OnPaper {
            if (paper < 1 || start < 0 || end < start) {
                throw new IllegalArgumentException(
                        "No such place on a paper: paper %d, characters %d to %d.".formatted(paper, start, end));
            }
        }
    }

    /**
     * A piece of evidence.
     *
     * @param item number of the evidence in the casefile, from 1
     */
    record InEvidence(int item, String kind, String text, Optional<String> source) implements Origin {}

    /** Stated in the head of the casefile ({@code soldier:}). */
    record Stated(String text) implements Origin {}
}
