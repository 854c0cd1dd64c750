package org.honorsdue.reading.unit;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.honorsdue.reference.unit.Ordinal;
import org.honorsdue.reference.unit.UnitKind;

/**
 * A number with the words after it.
 *
 * @param named the proper name it bears instead of a number, as of a hospital; empty as a rule
 * @param kinds the kinds the words may mean, likeliest first; empty when none is known by them
 * @param broken the words as typed when something unread stands between them, else empty
 */
record Designation(int number, String named, List<Word> words, List<UnitKind> kinds, boolean corrected, String broken) {
    private static final Set<Word> BRACKETS_AFTER = EnumSet.of(Word.COMPANY, Word.BATTALION, Word.REGIMENT);

    /** Words of one title between which "and" stood. */
    private static final Set<List<Word>> AND = Set.of(
            List.of(Word.FUMIGATION, Word.BATH),
            List.of(Word.STERILIZATION, Word.BATH),
            List.of(Word.BOAT, Word.SHORE),
            List.of(Word.SUPPLY, Word.MAINTENANCE),
            List.of(Word.MAINTENANCE, Word.SUPPLY),
            List.of(Word.CONSTRUCTION, Word.REPAIR),
            List.of(Word.MAINTENANCE, Word.REPAIR),
            List.of(Word.LANGUAGE, Word.INTELLIGENCE));

    /** The designation in full, in the words typed: {@code 391st Armored Field Artillery Battalion}. */
    String text() {
        if (!broken.isEmpty()) {
            return numberText() + " " + broken;
        }
        var text = new StringBuilder(numberText());
        List<Word> telling = Kinds.telling(words);
        if (!named.isEmpty() && telling.get(0).role() == Word.Role.NAME) {
            telling = telling.subList(1, telling.size());
        }
        int sizeAt = lastSize(telling);
        for (int i = 0; i < telling.size(); i++) {
            if (i > 0 && AND.contains(List.of(telling.get(i - 1), telling.get(i)))) {
                text.append(" and");
            }
            boolean after = sizeAt >= 0 && i > sizeAt && sizeAt > 0;
            text.append(after && i == sizeAt + 1 ? " (" : " ")
                    .append(telling.get(i).title())
                    .append(after && i == telling.size() - 1 ? ")" : "");
        }
        boolean sized = telling.stream().anyMatch(word -> word.role() == Word.Role.SIZE);
        if (kinds.size() == 1 && (!sized || kinds.get(0) == UnitKind.ARMY_AIR_FORCES_BASE_UNIT)) {
            return numberText() + " " + kinds.get(0).title();
        }
        return text.toString();
    }

    /** Where company, battalion or regiment stands; what follows it was written in brackets: Company (Aviation). */
    private static int lastSize(List<Word> telling) {
        for (int i = telling.size() - 1; i > 0; i--) {
            if (BRACKETS_AFTER.contains(telling.get(i))) {
                return telling.subList(i + 1, telling.size()).stream().noneMatch(word -> word.role() == Word.Role.SIZE)
                        ? i
                        : -1;
            }
        }
        return -1;
    }

    private String numberText() {
        if (!named.isEmpty()) {
            return named;
        }
        boolean command =
                words.contains(Word.COMMAND) && (!words.contains(Word.SERVICE) || words.contains(Word.AIR_FORCE));
        boolean roman = words.contains(Word.CORPS) || words.contains(Word.BOMBER_COMMAND) || command;
        return roman ? NumberWords.toRoman(number) : Ordinal.text(number);
    }

    /** A battalion or squadron of a regiment rather than a unit of its own: {@code 3rd Bn}. */
    boolean isBattalionOfRegiment() {
        List<Word> telling = Kinds.telling(words);
        return number <= 4
                && telling.size() == 1
                && (telling.get(0) == Word.BATTALION || telling.get(0) == Word.SQUADRON);
    }
}
