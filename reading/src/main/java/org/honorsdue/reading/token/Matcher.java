package org.honorsdue.reading.token;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.honorsdue.reading.token.Vocabulary.Known;
import org.jspecify.annotations.Nullable;

/** Finds the longest phrase that begins at a word. One for each text; not thread-safe. */
final class Matcher {
    /** Marks that part two items: no phrase runs across them, but for a campaign named with a comma. */
    private static final int PARTING = Words.SEMICOLON | Words.COLON;

    private final Lexicon lexicon;
    private final PhraseTable phrases;
    private final Words words;

    private int end;
    private int bestTo;
    private Sense @Nullable [] bestSenses;
    /** Further meanings of the same words, as they come from other ideas of them. */
    private final List<Sense[]> equals = new ArrayList<>(2);

    private int bestCorrections;
    private @Nullable String bestNote;

    Matcher(Lexicon lexicon, Words words) {
        this.lexicon = lexicon;
        this.words = words;
        phrases = lexicon.phrases();
    }

    /** The longest phrase as it is known. */
    Optional<Match> longest(int from) {
        return within(from, words.count());
    }

    /** The longest phrase that ends no later than a place. */
    Optional<Match> within(int from, int last) {
        end = last;
        bestTo = from;
        bestSenses = null;
        equals.clear();
        walk(PhraseTable.ROOT, from, from, false);
        Sense[] senses = bestSenses;
        if (senses == null) {
            return Optional.empty();
        }
        return Optional.of(new Match(bestTo, equals.isEmpty() ? senses : merged(senses), null));
    }

    private Sense[] merged(Sense[] first) {
        var all = new ArrayList<Sense>(List.of(first));
        for (Sense[] more : equals) {
            for (Sense sense : more) {
                if (!all.contains(sense)) {
                    all.add(sense);
                }
            }
        }
        return all.toArray(Sense[]::new);
    }

    private void walk(int node, int from, int word, boolean comma) {
        if (word >= end) {
            return;
        }
        if (word > from) {
            int gap = words.gap(word);
            if ((gap & PARTING) != 0) {
                return;
            }
            comma |= (gap & Words.COMMA) != 0;
        }
        Known known = words.known(word);
        if (known != null) {
            follow(node, from, known, word + 1, comma);
        }
        if (words.isLetters(word) && words.length(word) == 1) {
            initials(node, from, word, comma);
        }
    }

    private void follow(int node, int from, Known known, int next, boolean comma) {
        for (int idea : known.ideas()) {
            int below = phrases.step(node, idea);
            if (below >= 0) {
                Sense[] senses = phrases.senses(below);
                if (senses != null && next >= bestTo && (!comma || senses[0].kind() == SenseKind.CAMPAIGN)) {
                    if (next > bestTo) {
                        bestTo = next;
                        bestSenses = senses;
                        equals.clear();
                    } else if (senses != bestSenses) {
                        equals.add(senses);
                    }
                }
                walk(below, from, next, comma);
            }
        }
    }

    /** Letters typed apart, {@code E.A.M.E.} or {@code E A M E}, read as one word. */
    private void initials(int node, int from, int word, boolean comma) {
        var together = new char[8];
        together[0] = words.upper(words.start(word));
        int length = 1;
        for (int i = word + 1; i < end && length < together.length; i++) {
            if (!words.isLetters(i) || words.length(i) != 1 || (words.gap(i) & ~(Words.SPACE | Words.PERIOD)) != 0) {
                break;
            }
            together[length++] = words.upper(words.start(i));
            Known known = lexicon.vocabulary().find(together, 0, length);
            if (known != null) {
                follow(node, from, known, i + 1, comma);
            }
        }
    }

    /**
     * The longest phrase when words that are not known may be misspellings or abbreviations of known ones.
     *
     * @param beyond only phrases that end after this word count
     */
    Optional<Match> loosely(int from, int beyond) {
        bestTo = beyond;
        bestSenses = null;
        bestCorrections = Integer.MAX_VALUE;
        bestNote = null;
        guess(PhraseTable.ROOT, from, from, 0, null);
        return bestSenses == null ? Optional.empty() : Optional.of(new Match(bestTo, bestSenses, bestNote));
    }

    private void guess(int node, int from, int word, int corrections, @Nullable String note) {
        if (word >= words.count()
                || word > from && (words.gap(word) & (PARTING | Words.COMMA)) != 0
                || word - from > 8) {
            return;
        }
        Known known = words.known(word);
        boolean goesOn = false;
        if (known != null) {
            for (int idea : known.ideas()) {
                int below = phrases.step(node, idea);
                if (below >= 0) {
                    goesOn = true;
                    take(below, word + 1, corrections, note);
                    guess(below, from, word + 1, corrections, note);
                }
            }
        }
        boolean mayBeWrong = known == null || word > from && !goesOn && words.length(word) >= 5;
        if (mayBeWrong && corrections < 2 && words.isLetters(word) && words.length(word) >= 3) {
            correct(node, from, word, corrections, note);
        }
    }

    private void correct(int node, int from, int word, int corrections, @Nullable String note) {
        String typed = words.plain(word);
        if (node == PhraseTable.ROOT) {
            for (var near : Spelling.near(typed, lexicon.vocabulary())) {
                for (int idea : near.ideas()) {
                    int below = phrases.step(node, idea);
                    if (below >= 0) {
                        String name = lexicon.idea(idea);
                        String how = note(note, words.word(word), name.startsWith("=") ? name.substring(1) : name);
                        take(below, word + 1, corrections + 1, how);
                        guess(below, from, word + 1, corrections + 1, how);
                    }
                }
            }
            if (typed.length() <= 4) {
                shortWord(from, word, typed, corrections, note);
            }
            return;
        }
        for (int idea : phrases.children(node)) {
            String meant = Spelling.meant(typed, lexicon, idea);
            if (!meant.isEmpty()) {
                int below = phrases.step(node, idea);
                String how = note(note, words.word(word), meant);
                take(below, word + 1, corrections + 1, how);
                guess(below, from, word + 1, corrections + 1, how);
            }
        }
    }

    /**
     * A short word that nobody listed, read only when the next word as it is known makes the phrase: {@code Prp Heart},
     * {@code EANE Theater Ribbon}.
     */
    private void shortWord(int from, int word, String typed, int corrections, @Nullable String note) {
        for (Lexicon.Opening opening : lexicon.openings()) {
            if (Spelling.isShortMeant(typed, opening.capitals())) {
                onlyExactly(
                        opening.node(),
                        word + 1,
                        from,
                        corrections + 1,
                        note(note, words.word(word), opening.capitals()));
            }
        }
    }

    private void onlyExactly(int node, int word, int from, int corrections, String note) {
        if (word >= words.count() || (words.gap(word) & (PARTING | Words.COMMA)) != 0 || words.length(word) < 3) {
            return;
        }
        Known known = words.known(word);
        if (known == null) {
            return;
        }
        for (int idea : known.ideas()) {
            int below = phrases.step(node, idea);
            if (below >= 0) {
                take(below, word + 1, corrections, note);
                guess(below, from, word + 1, corrections, note);
            }
        }
    }

    private static String note(@Nullable String before, String typed, String meant) {
        String now = "\"" + typed + "\" read as " + meant.toLowerCase(java.util.Locale.ROOT);
        return before == null ? now : before + "; " + now;
    }

    private void take(int node, int to, int corrections, @Nullable String note) {
        Sense[] senses = phrases.senses(node);
        if (senses == null || corrections == 0) {
            return;
        }
        SenseKind kind = senses[0].kind();
        boolean worth = kind != SenseKind.LINK && kind != SenseKind.WORD && kind != SenseKind.NOTHING;
        if (worth && (to > bestTo || to == bestTo && corrections < bestCorrections)) {
            bestTo = to;
            bestSenses = senses;
            bestCorrections = corrections;
            bestNote = note;
        }
    }
}
