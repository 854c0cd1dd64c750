package org.honorsdue.reading.token;

import java.util.Arrays;
import java.util.Set;
import org.honorsdue.reading.token.Vocabulary.Known;
import org.jspecify.annotations.Nullable;

/**
 * The words of a text: where each stands, what it may be, and what parts it from the word before. A word is a run of
 * letters or a run of digits; every character that is neither spacing nor punctuation belongs to exactly one word.
 */
public final class Words {
    static final int SPACE = 1;
    static final int PERIOD = 2;
    static final int COMMA = 4;
    static final int SEMICOLON = 8;
    static final int NEWLINE = 16;
    static final int SLASH = 32;
    static final int HYPHEN = 64;
    static final int OPEN = 128;
    static final int CLOSE = 256;
    static final int COLON = 512;
    static final int OTHER_MARK = 1024;

    static final byte LETTERS = 1;
    static final byte DIGITS = 2;
    static final byte SIGN = 3;

    private final String text;
    private final char[] upper;
    private int count;
    private int[] start;
    private int[] end;
    private int[] gap;
    private int[] number;
    private byte[] type;
    private boolean[] ordinal;
    private @Nullable Known[] known;
    private @Nullable String[] note;

    private Words(String text) {
        this.text = text;
        upper = new char[text.length()];
        int size = 4 + text.length() / 4;
        start = new int[size];
        end = new int[size];
        gap = new int[size];
        number = new int[size];
        type = new byte[size];
        ordinal = new boolean[size];
        known = new Known[size];
        note = new String[size];
        for (int i = 0; i < upper.length; i++) {
            char c = text.charAt(i);
            upper[i] = c < 128 ? (c >= 'a' && c <= 'z' ? (char) (c - 32) : c) : Character.toUpperCase(c);
        }
    }

    static Words of(String text, Vocabulary vocabulary) {
        var words = new Words(text);
        words.split(vocabulary);
        return words;
    }

    String text() {
        return text;
    }

    int count() {
        return count;
    }

    int start(int word) {
        return start[word];
    }

    int end(int word) {
        return end[word];
    }

    /** The marks between this word and the one before, as bits. */
    int gap(int word) {
        return word < count ? gap[word] : NEWLINE;
    }

    boolean isNumber(int word) {
        return word < count && number[word] >= 0;
    }

    /** The value of a run of digits of at most nine; -1 for anything else. */
    int number(int word) {
        return word < count ? number[word] : -1;
    }

    /** Whether digits carry st, nd, d, rd or th. */
    boolean isOrdinal(int word) {
        return word < count && ordinal[word];
    }

    boolean isLetters(int word) {
        return word < count && type[word] == LETTERS;
    }

    int length(int word) {
        return end[word] - start[word];
    }

    @Nullable
    Known known(int word) {
        return known[word];
    }

    /** What was put right while the word was split off, for the reader of the reading. */
    @Nullable
    String note(int word) {
        return note[word];
    }

    char upper(int character) {
        return upper[character];
    }

    String word(int word) {
        return text.substring(start[word], end[word]);
    }

    /** Capitals, apostrophes left out. */
    String plain(int word) {
        return plain(start[word], end[word]);
    }

    private String plain(int from, int to) {
        for (int i = from; i < to; i++) {
            if (isApostrophe(upper[i])) {
                var without = new StringBuilder();
                for (int j = from; j < to; j++) {
                    if (!isApostrophe(upper[j])) {
                        without.append(upper[j]);
                    }
                }
                return without.toString();
            }
        }
        return new String(upper, from, to - from);
    }

    boolean is(int word, String capitals) {
        if (word >= count || end[word] - start[word] != capitals.length()) {
            return false;
        }
        for (int i = 0; i < capitals.length(); i++) {
            if (upper[start[word] + i] != capitals.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isApostrophe(char c) {
        return c == '\'' || c == '\u2019';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Letters, and whatever else is neither digit, spacing nor punctuation: an unknown sign is unread, not overlooked. */
    private static boolean isLetter(char c) {
        if (c < 128) {
            return c >= 'A' && c <= 'Z';
        }
        return switch (Character.getType(c)) {
            case Character.SPACE_SEPARATOR,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.CONTROL,
                    Character.FORMAT,
                    Character.DASH_PUNCTUATION,
                    Character.START_PUNCTUATION,
                    Character.END_PUNCTUATION,
                    Character.CONNECTOR_PUNCTUATION,
                    Character.OTHER_PUNCTUATION,
                    Character.INITIAL_QUOTE_PUNCTUATION,
                    Character.FINAL_QUOTE_PUNCTUATION -> false;
            default -> true;
        };
    }

    private static int mark(char c) {
        return switch (c) {
            case ' ', '\t', '\u00a0' -> SPACE;
            case '\n', '\r' -> NEWLINE;
            case '.' -> PERIOD;
            case ',' -> COMMA;
            case ';' -> SEMICOLON;
            case '/', '\\' -> SLASH;
            case '-', '\u2013', '\u2014' -> HYPHEN;
            case '(', '[' -> OPEN;
            case ')', ']' -> CLOSE;
            case ':' -> COLON;
            default -> OTHER_MARK;
        };
    }

    private void split(Vocabulary vocabulary) {
        int marks = 0;
        int i = 0;
        while (i < upper.length) {
            char c = upper[i];
            int marksInRow = smudge(i);
            if (marksInRow > 1) {
                add(i, i + marksInRow, LETTERS, marks, null);
                marks = 0;
                i += marksInRow;
            } else if (c == '&' || c == '#' || c == '$') {
                add(i, i + 1, SIGN, marks, vocabulary.find(upper, i, i + 1));
                marks = 0;
                i++;
            } else if (isDigit(c) || isLetter(c)) {
                int to = runEnd(i);
                if (!endsOrdinal(i, to, marks, vocabulary)) {
                    run(i, to, marks, vocabulary);
                }
                marks = 0;
                i = to;
            } else {
                marks |= mark(c);
                i++;
            }
        }
    }

    /** The number of marks in a row that somebody put for what cannot be made out: {@code ####}, {@code ???}. */
    private int smudge(int from) {
        char c = upper[from];
        if (c != '#' && c != '?' && c != '*' && c != '_') {
            return 0;
        }
        int to = from;
        while (to < upper.length && upper[to] == c) {
            to++;
        }
        return to - from;
    }

    private int runEnd(int from) {
        int i = from + 1;
        while (i < upper.length) {
            char c = upper[i];
            boolean within = isDigit(c)
                    || isLetter(c)
                    || isApostrophe(c) && i + 1 < upper.length && isLetter(upper[i + 1]) && isLetter(upper[i - 1]);
            if (!within) {
                break;
            }
            i++;
        }
        return i;
    }

    /** {@code 1 st}: an ending typed apart from its number. */
    private boolean endsOrdinal(int from, int to, int marks, Vocabulary vocabulary) {
        int last = count - 1;
        if (to - from != 2 || marks != SPACE || last < 0 || type[last] != DIGITS || ordinal[last] || number[last] < 1) {
            return false;
        }
        String ending = new String(upper, from, 2);
        int tens = number[last] % 100 / 10;
        String due = tens == 1
                ? "TH"
                : switch (number[last] % 10) {
                    case 1 -> "ST";
                    case 2 -> "ND";
                    case 3 -> "RD";
                    default -> "TH";
                };
        if (!ending.equals(due) || ending.equals("TH") && number[last] > 20 || isSaint(to)) {
            return false;
        }
        end[last] = to;
        ordinal[last] = true;
        int value = number[last];
        known[last] = vocabulary.find(value + (value == 1 ? "ST" : value == 2 || value == 3 ? "D" : "TH"));
        return true;
    }

    /** {@code 1 St Lo}: a town, when a short name that is no unit follows. */
    private boolean isSaint(int to) {
        return upper.length > to + 2 && upper[to] == ' ' && (upper[to + 1] == 'L' || upper[to + 1] == 'V');
    }

    /** One run of letters and digits without anything between. */
    private void run(int from, int to, int marks, Vocabulary vocabulary) {
        boolean letters = false;
        boolean digits = false;
        boolean apostrophe = false;
        for (int i = from; i < to; i++) {
            boolean digit = isDigit(upper[i]);
            digits |= digit;
            letters |= !digit;
            apostrophe |= isApostrophe(upper[i]);
        }
        if (digits && letters && asOrdinal(from, to, marks, vocabulary)) {
            return;
        }
        Known whole = apostrophe ? vocabulary.find(plain(from, to)) : vocabulary.find(upper, from, to);
        if (whole != null || !digits || !letters) {
            add(from, to, digits && !letters ? DIGITS : LETTERS, marks, whole);
            if (whole == null && letters && !smallEll(count - 1, vocabulary)) {
                apart(count - 1, vocabulary);
            }
            return;
        }
        if (!asSlip(from, to, marks, vocabulary)) {
            parts(from, to, marks, vocabulary);
        }
    }

    private boolean asOrdinal(int from, int to, int marks, Vocabulary vocabulary) {
        int i = from;
        while (i < to && isDigit(upper[i])) {
            i++;
        }
        int suffix = to - i;
        boolean ordinalEnd = i > from
                && (suffix == 1 && upper[i] == 'D'
                        || suffix == 2
                                && (upper[i] == 'S' && upper[i + 1] == 'T'
                                        || upper[i] == 'N' && upper[i + 1] == 'D'
                                        || upper[i] == 'R' && upper[i + 1] == 'D'
                                        || upper[i] == 'T' && upper[i + 1] == 'H'));
        if (!ordinalEnd) {
            return false;
        }
        int value = value(from, i);
        String suffixMeant = value == 1 ? "ST" : value == 2 || value == 3 ? "D" : "TH";
        add(from, to, DIGITS, marks, vocabulary.find(value + suffixMeant));
        number[count - 1] = value;
        ordinal[count - 1] = true;
        return true;
    }

    /** A figure typed for a letter or a letter for a figure: {@code G00D}, {@code 2O}. */
    private boolean asSlip(int from, int to, int marks, Vocabulary vocabulary) {
        String word = plain(from, to);
        boolean parts = partsAreKnown(from, to, vocabulary) && !isNumberAfterArticle(word);
        boolean slipInside = word.indexOf('0') >= 0
                || word.length() == 3
                        && isDigit(word.charAt(1))
                        && !isDigit(word.charAt(0))
                        && !isDigit(word.charAt(2));
        if (word.length() == 2 && (word.charAt(1) == '0' || word.charAt(1) == '5')) {
            Known small = vocabulary.find(word.charAt(0) + (word.charAt(1) == '0' ? "O" : "S"));
            if (small != null && SMALL_WORDS.contains(small.spelling())) {
                add(from, to, LETTERS, marks, small);
                note[count - 1] = "read as " + small.spelling() + ": a figure typed for a letter";
                return true;
            }
        }
        if (word.length() >= (parts && !slipInside ? 4 : 3)
                && word.chars().filter(c -> c >= 'A').count() >= 2) {
            for (char one : new char[] {'I', 'L'}) {
                String asLetters = word.replace('0', 'O')
                        .replace('1', one)
                        .replace('5', 'S')
                        .replace('8', 'B');
                Known known = vocabulary.find(asLetters);
                if (known != null && asLetters.chars().allMatch(c -> c >= 'A' && c <= 'Z')) {
                    add(from, to, LETTERS, marks, known);
                    note[count - 1] = "read as " + asLetters + ": figures typed for letters";
                    return true;
                }
            }
        }
        long letters = word.chars().filter(c -> c >= 'A').count();
        if (!parts && letters >= 4 && word.length() - letters <= 2) {
            add(from, to, LETTERS, marks, null);
            return true;
        }
        int value = parts ? -1 : slipOfNumber(word);
        if (value >= 0) {
            add(from, to, DIGITS, marks, vocabulary.find(Integer.toString(value)));
            number[count - 1] = value;
            note[count - 1] = "read as " + value + ": letters typed for figures";
            return true;
        }
        return false;
    }

    private static final Set<String> SMALL_WORDS = Set.of("NO", "TO", "GO", "SO", "CO", "PO", "US");

    /** {@code AW lO7}: after the articles of war only a number can stand. */
    private boolean isNumberAfterArticle(String word) {
        return count > 0 && is(count - 1, "AW") && slipOfNumber(word) >= 0;
    }

    private boolean partsAreKnown(int from, int to, Vocabulary vocabulary) {
        int i = from;
        boolean single = false;
        while (i < to) {
            int j = partEnd(i, to);
            if (!isDigit(upper[i])) {
                if (j - i == 1 && slipDigit(upper[i]) >= 0 && upper[i] != 'B') {
                    single = true;
                } else if (vocabulary.find(upper, i, j) == null) {
                    return false;
                }
            }
            i = j;
        }
        return !single;
    }

    private int partEnd(int from, int to) {
        boolean digit = isDigit(upper[from]);
        int i = from + 1;
        while (i < to && isDigit(upper[i]) == digit) {
            i++;
        }
        return i;
    }

    /** The number that is meant when each letter looks like a figure; -1 when one does not. */
    static int slipOfNumber(String capitals) {
        if (capitals.isEmpty() || capitals.length() > 4) {
            return -1;
        }
        int value = 0;
        for (int i = 0; i < capitals.length(); i++) {
            char c = capitals.charAt(i);
            int digit = isDigit(c) ? c - '0' : slipDigit(c);
            if (digit < 0) {
                return -1;
            }
            value = value * 10 + digit;
        }
        return value;
    }

    private static int slipDigit(char c) {
        return switch (c) {
            case 'O' -> 0;
            case 'I', 'L' -> 1;
            case 'Z' -> 2;
            case 'S' -> 5;
            case 'B' -> 8;
            default -> -1;
        };
    }

    private void parts(int from, int to, int marks, Vocabulary vocabulary) {
        int i = from;
        int before = marks;
        while (i < to) {
            int j = partEnd(i, to);
            if (isDigit(upper[i]) && asOrdinal(i, to, before, vocabulary)) {
                j = to;
            } else if (isDigit(upper[i])) {
                add(i, j, DIGITS, before, vocabulary.find(upper, i, j));
            } else {
                add(i, j, LETTERS, before, vocabulary.find(upper, i, j));
                if (known[count - 1] == null) {
                    apart(count - 1, vocabulary);
                }
            }
            before = 0;
            i = j;
        }
    }

    /** Takes words typed without a blank apart: where a small letter meets a capital, or where known words meet. */
    private void apart(int word, Vocabulary vocabulary) {
        int from = start[word];
        int to = end[word];
        if (to - from < 5) {
            return;
        }
        int[] cuts = capitalCuts(from, to, vocabulary);
        boolean byCapitals = cuts.length > 0;
        if (!byCapitals && to - from >= 7 && to - from <= 80) {
            cuts = knownCuts(from, to, vocabulary);
        }
        if (cuts.length == 0) {
            return;
        }
        int marks = gap[word];
        count--;
        int i = from;
        for (int k = 0; k <= cuts.length; k++) {
            int j = k < cuts.length ? cuts[k] : to;
            add(i, j, LETTERS, k == 0 ? marks : 0, vocabulary.find(upper, i, j));
            if (!byCapitals) {
                note[count - 1] = "typed together with its neighbour";
            }
            i = j;
        }
    }

    /** A small l among capitals is a capital I: {@code RlB}. */
    private boolean smallEll(int word, Vocabulary vocabulary) {
        int from = start[word];
        int to = end[word];
        int ells = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c == 'l') {
                ells++;
            } else if (!Character.isUpperCase(c)) {
                return false;
            }
        }
        if (ells == 0 || to - from - ells < 2) {
            return false;
        }
        String meant = text.substring(from, to).replace('l', 'I');
        Known found = vocabulary.find(meant);
        if (found == null) {
            return false;
        }
        known[word] = found;
        note[word] = "read as " + meant + ": a small l typed for I";
        return true;
    }

    private static final int[] NO_CUTS = {};

    private int[] capitalCuts(int from, int to, Vocabulary vocabulary) {
        int cuts = 0;
        for (int i = from + 1; i < to; i++) {
            if (Character.isUpperCase(text.charAt(i)) && Character.isLowerCase(text.charAt(i - 1))) {
                cuts++;
            }
        }
        if (cuts == 0 || cuts > 12) {
            return NO_CUTS;
        }
        int[] found = new int[cuts];
        int k = 0;
        int last = from;
        for (int i = from + 1; i <= to; i++) {
            boolean cut = i == to || Character.isUpperCase(text.charAt(i)) && Character.isLowerCase(text.charAt(i - 1));
            if (cut) {
                if (i - last == 1 || vocabulary.find(upper, last, i) == null) {
                    return NO_CUTS;
                }
                if (i < to) {
                    found[k++] = i;
                }
                last = i;
            }
        }
        return found;
    }

    /** The fewest known words of four letters or more that make up the run; none when it cannot be done. */
    private int[] knownCuts(int from, int to, Vocabulary vocabulary) {
        int length = to - from;
        int[] parts = new int[length + 1];
        int[] back = new int[length + 1];
        Arrays.fill(parts, Integer.MAX_VALUE);
        parts[0] = 0;
        for (int i = 0; i < length; i++) {
            if (parts[i] == Integer.MAX_VALUE) {
                continue;
            }
            for (int j = i + 3; j <= Math.min(length, i + 20); j++) {
                if (parts[i] + 1 < parts[j] && joins(from + i, from + j, vocabulary)) {
                    parts[j] = parts[i] + 1;
                    back[j] = i;
                }
            }
        }
        if (parts[length] == Integer.MAX_VALUE || parts[length] < 2) {
            return NO_CUTS;
        }
        int[] cuts = new int[parts[length] - 1];
        int at = length;
        for (int k = cuts.length - 1; k >= 0; k--) {
            at = back[at];
            cuts[k] = from + at;
        }
        return cuts;
    }

    private boolean joins(int from, int to, Vocabulary vocabulary) {
        Known part = vocabulary.find(upper, from, to);
        return part != null && (to - from >= 4 || Lexicon.SHORT_PARTS.contains(part.spelling()));
    }

    private int value(int from, int to) {
        if (to - from > 9) {
            return -1;
        }
        int value = 0;
        for (int i = from; i < to; i++) {
            value = value * 10 + (upper[i] - '0');
        }
        return value;
    }

    private void add(int from, int to, byte kind, int marks, @Nullable Known word) {
        if (count == start.length) {
            int size = count * 2;
            start = Arrays.copyOf(start, size);
            end = Arrays.copyOf(end, size);
            gap = Arrays.copyOf(gap, size);
            number = Arrays.copyOf(number, size);
            type = Arrays.copyOf(type, size);
            ordinal = Arrays.copyOf(ordinal, size);
            known = Arrays.copyOf(known, size);
            note = Arrays.copyOf(note, size);
        }
        start[count] = from;
        end[count] = to;
        gap[count] = marks;
        type[count] = kind;
        number[count] = kind == DIGITS ? value(from, to) : word == null ? -1 : word.number();
        ordinal[count] = word != null && word.ordinal();
        known[count] = word;
        note[count] = null;
        count++;
    }
}
