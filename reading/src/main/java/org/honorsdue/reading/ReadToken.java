package org.honorsdue.reading;

import java.util.List;
import org.honorsdue.service.fact.Basis.Certainty;

/**
 * One token of an entry as it was read.
 *
 * @param start first character within the entry's text, from 0
 * @param end one past the last character
 * @param text the characters themselves
 * @param meaning in plain words
 * @param certainty how surely it was read
 * @param alternatives other meanings that the characters may have
 * @param note what was put right or what leaves it in doubt; else empty
 */
public record ReadToken(
        int start, int end, String text, String meaning, Certainty certainty, List<String> alternatives, String note) {
    public ReadToken {
        alternatives = List.copyOf(alternatives);
    }
}
