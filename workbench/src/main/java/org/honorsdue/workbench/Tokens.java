package org.honorsdue.workbench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.honorsdue.reading.EntryReading;
import org.honorsdue.reading.ReadToken;
import org.honorsdue.service.fact.Basis.Certainty;

/** The reading of an entry as it is shown: what was read and what was not, in the order of the text. */
public final class Tokens {
    private static final Set<String> DULL = Set.of("kept as typed", "name");

    private Tokens() {}

    /**
     * One token.
     *
     * @param look {@code plain}, {@code corrected}, {@code doubtful} or {@code unread}
     */
    public record Token(
            int start, int end, String chars, String means, String look, String note, List<String> alternatives) {}

    public static List<Token> of(EntryReading reading) {
        var tokens = new ArrayList<Token>();
        for (var token : reading.tokens()) {
            if (saysNothing(token)) {
                continue;
            }
            tokens.add(new Token(
                    token.start(),
                    token.end(),
                    token.text(),
                    token.meaning(),
                    look(token.certainty()),
                    token.note(),
                    token.alternatives()));
        }
        for (var unread : reading.unread()) {
            tokens.add(new Token(unread.start(), unread.end(), unread.text(), "not read", "unread", "", List.of()));
        }
        tokens.sort(Comparator.comparingInt(Token::start));
        return tokens;
    }

    /** Read plainly, and the meaning adds nothing to the characters: a name, a number, a letter. */
    private static boolean saysNothing(ReadToken token) {
        boolean plain = token.certainty() == Certainty.PLAIN
                && token.note().isEmpty()
                && token.alternatives().isEmpty();
        boolean isSmall = token.text().length() <= 3 || token.text().chars().anyMatch(Character::isDigit);
        return plain
                && (DULL.contains(token.meaning()) || isSmall && token.meaning().equalsIgnoreCase(token.text()));
    }

    private static String look(Certainty certainty) {
        return switch (certainty) {
            case PLAIN -> "plain";
            case CORRECTED -> "corrected";
            case DOUBTFUL -> "doubtful";
        };
    }
}
