package org.honorsdue.reading.unit;

import java.util.List;
import org.honorsdue.reference.unit.Ordinal;
import org.honorsdue.reference.unit.UnitKind;

/**
 * A number with the words after it.
 *
 * @param kinds the kinds the words may mean, likeliest first; empty when none is known by them
 * @param broken whether something unread stands between its words
 */
record Designation(int number, List<Word> words, List<UnitKind> kinds, boolean corrected, boolean broken) {
    /** The designation in full: {@code 391st Armored Field Artillery Battalion}. */
    String text() {
        if (!kinds.isEmpty() && kinds.size() == 1) {
            return Ordinal.text(number) + " " + kinds.get(0).title();
        }
        var text = new StringBuilder(Ordinal.text(number));
        words.stream()
                .filter(word -> word.role() != Word.Role.NOISE)
                .forEach(word -> text.append(' ').append(word.title()));
        return text.toString();
    }

    /** A battalion or squadron of a regiment rather than a unit of its own: {@code 3rd Bn}. */
    boolean isBattalionOfRegiment() {
        return number <= 4
                && words.size() == 1
                && (words.get(0) == Word.BATTALION || words.get(0) == Word.SQUADRON);
    }
}
