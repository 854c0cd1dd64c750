package org.honorsdue.documents.letter;

import java.util.Locale;
import java.util.Optional;
import org.honorsdue.service.Sex;

/**
 * The soldier as sentences need him or her.
 *
 * @param listed last name first, as offices file it: {@code Fairweather, Orrin T}
 * @param full in the order in which it is spoken: {@code Orrin T. Fairweather}
 * @param he the soldier as the subject of a sentence
 * @param his what belongs to the soldier
 * @param him the soldier as an object
 */
record Person(String listed, String full, String he, String his, String him) {
    private static final String UNKNOWN = "the soldier";

    static Person of(Optional<String> name, Optional<Sex> sex) {
        String listed =
                name.map(String::strip).filter(words -> !words.isEmpty()).orElse(UNKNOWN);
        String full = name.isPresent() ? spoken(listed) : "The soldier";
        return sex.map(known -> known == Sex.FEMALE
                        ? new Person(listed, full, "she", "her", "her")
                        : new Person(listed, full, "he", "his", "him"))
                .orElseGet(() -> new Person(listed, full, UNKNOWN, "the soldier\u2019s", UNKNOWN));
    }

    /** At the head of a sentence. */
    String subject() {
        return first(he);
    }

    /** At the head of a sentence. */
    String possessive() {
        return first(his);
    }

    private static String first(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    // A name without a comma may have its parts in any order, so it stays as it is.
    private static String spoken(String listed) {
        int comma = listed.indexOf(',');
        if (comma < 0) {
            return listed;
        }
        String given = listed.substring(comma + 1).strip();
        String last = listed.substring(0, comma).strip();
        if (given.matches(".* \\p{Lu}")) {
            given += ".";
        }
        return given.isEmpty() ? last : given + " " + last;
    }
}
