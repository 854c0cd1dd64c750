package org.honorsdue.scanning.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.honorsdue.scanning.recognition.GlyphNet;

/**
 * Chooses the letters of a line from its {@link Ballot} by what can stand in the entry. Where the kind of entry would
 * have it otherwise than the ballot alone, the difference is taken only if the ballot is nearly undecided.
 */
final class LetterChoice {
    /** How much less the pictures may speak for a known word, for each letter changed, and once for a whole date. */
    private static final double WORD_GIVES_WAY = 3.2;

    private static final double PATTERN_GIVES_WAY = 7;

    private static final String[] MONTHS = {
        "JAN",
        "FEB",
        "MAR",
        "APR",
        "MAY",
        "JUN",
        "JUL",
        "AUG",
        "SEP",
        "OCT",
        "NOV",
        "DEC",
        "SEPT",
        "JUNE",
        "JULY",
        "MARCH",
        "APRIL",
        "JANUARY",
        "FEBRUARY",
        "AUGUST",
        "SEPTEMBER",
        "OCTOBER",
        "NOVEMBER",
        "DECEMBER"
    };

    /** Letters and figures that one key served for, or that worn type does not tell apart. */
    private static final List<String> LOOK_ALIKES = List.of("1lI", "0Oo", "5S", "8B", "2Z");

    private static final double LOOK_ALIKE = 0.3;

    private static final List<String> HEIGHTS = heights();

    private static final String FIGURES = "0123456789";

    private final Ballot ballot;
    private final PeriodWords words;
    private final int[] letters;
    private final boolean[] weighed;
    private boolean debris;
    private final List<Word> doubts = new ArrayList<>();

    /** A run of letters that could be read in another way. */
    private record Word(int from, int[] letters, double behind) {}

    LetterChoice(Ballot ballot, PeriodWords words) {
        this.ballot = ballot;
        this.words = words;
        this.letters = new int[ballot.places()];
        this.weighed = new boolean[ballot.places()];
        for (int i = 0; i < letters.length; i++) {
            letters[i] = ballot.best(i);
        }
    }

    LineChoice choose(EntryKind kind, String raw) {
        if (kind == EntryKind.WORDS || kind == EntryKind.NAMES) {
            debris(); // elsewhere the pattern of the entry says what belongs to it
        }
        switch (kind) {
            case DATE -> date();
            case COUNT -> only(FIGURES + " ");
            case MONEY -> moneyOrNone();
            case PAY -> among(List.of("100", "200", "300"));
            case HEIGHT -> among(HEIGHTS);
            case WEIGHT -> words();
            case SERIAL_NUMBER -> serialNumber();
            case NAMES, WORDS -> words();
        }
        double confidence = 1;
        for (int i = 0; i < letters.length; i++) {
            double own = ballot.likelihood(i, letters[i]);
            confidence *= Math.min(0.9995, weighed[i] ? Math.max(own, 0.5) : own);
        }
        return new LineChoice(text(letters), raw, alternatives(), debris ? 0.7 * confidence : confidence, clearness());
    }

    private static List<String> heights() {
        var heights = new ArrayList<String>();
        for (int feet = 4; feet <= 6; feet++) {
            for (int inches = 0; inches < 12; inches++) {
                heights.add("%d'%d\"".formatted(feet, inches));
                heights.add("%d' %d\"".formatted(feet, inches));
                heights.add("%d'%d".formatted(feet, inches));
            }
        }
        return heights;
    }

    /** One of a few texts, wherever it stands in the line; all else is empty. */
    private void among(List<String> options) {
        int[] best = null;
        double least = Double.POSITIVE_INFINITY;
        for (var option : options) {
            for (int from = 0; from + option.length() <= letters.length; from++) {
                var reading = new int[letters.length];
                for (int k = 0; k < option.length(); k++) {
                    reading[from + k] = GlyphNet.LETTERS.indexOf(option.charAt(k));
                }
                double behind = behind(0, reading);
                if (behind < least) {
                    least = behind;
                    best = reading;
                }
            }
        }
        if (best != null) {
            offer(0, best, PATTERN_GIVES_WAY * 1.6);
        }
    }

    /**
     * Takes away groups of marks at either end that could not be read with any certainty: the rim of a stamp, a fold,
     * the rest of a rule. The line is called doubtful for it.
     */
    private void debris() {
        for (boolean atEnd : new boolean[] {false, true}) {
            int at = atEnd ? letters.length - 1 : 0;
            int step = atEnd ? -1 : 1;
            while (at >= 0 && at < letters.length) {
                int begun = at;
                while (begun >= 0 && begun < letters.length && letters[begun] == 0) {
                    begun += step;
                }
                int end = begun;
                double sure = 0;
                int count = 0;
                while (end >= 0 && end < letters.length && letters[end] != 0) {
                    sure += ballot.likelihood(end, letters[end]);
                    count++;
                    end += step;
                }
                boolean unsure = count > 0 && sure / count < (count <= 2 ? 0.5 : 0.6);
                if (!unsure || inked(end, step) < 3) {
                    break;
                }
                for (int i = begun; i != end; i += step) {
                    letters[i] = 0;
                }
                debris = true;
                at = end;
            }
        }
    }

    private int inked(int from, int step) {
        int inked = 0;
        for (int i = from; i >= 0 && i < letters.length; i += step) {
            inked += letters[i] != 0 ? 1 : 0;
        }
        return inked;
    }

    /** The mean likelihood of the letters, whatever was chosen; near 1 for clear typing. */
    private double clearness() {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < letters.length; i++) {
            int best = ballot.best(i);
            if (best != 0) {
                sum += ballot.likelihood(i, best);
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    private static String text(int[] letters) {
        var text = new StringBuilder();
        for (int letter : letters) {
            text.append(GlyphNet.LETTERS.charAt(letter));
        }
        return text.toString().replaceAll(" +", " ").strip();
    }

    private List<LineChoice.Alternative> alternatives() {
        var others = new ArrayList<LineChoice.Alternative>();
        var own = text(letters);
        for (var doubt : doubts) {
            var changed = letters.clone();
            System.arraycopy(doubt.letters, 0, changed, doubt.from, doubt.letters.length);
            add(others, changed, own);
        }
        // The next likeliest letter at the least certain places.
        var places = new ArrayList<Integer>();
        for (int i = 0; i < letters.length; i++) {
            if (lead(i) < 4) {
                places.add(i);
            }
        }
        places.sort(Comparator.comparingDouble(this::lead));
        for (int place : places.subList(0, Math.min(4, places.size()))) {
            var changed = letters.clone();
            changed[place] = second(place);
            add(others, changed, own);
        }
        others.sort(Comparator.comparingDouble(LineChoice.Alternative::behind));
        return others;
    }

    private double lead(int place) {
        return ballot.score[place][letters[place]] - ballot.score[place][second(place)];
    }

    private void add(List<LineChoice.Alternative> others, int[] changed, String own) {
        var text = text(changed);
        boolean known = others.stream().anyMatch(other -> other.text().equals(text));
        if (!text.isEmpty() && !text.equals(own) && !known) {
            others.add(new LineChoice.Alternative(text, behind(0, changed)));
        }
    }

    private int second(int place) {
        int second = -1;
        for (int c = 0; c < Ballot.LETTERS; c++) {
            if (c != letters[place] && (second < 0 || ballot.score[place][c] > ballot.score[place][second])) {
                second = c;
            }
        }
        return second;
    }

    /** Takes that reading of a stretch if the pictures speak nearly as well for it. */
    private void offer(int from, int[] reading, double givesWay) {
        double behind = behind(from, reading);
        boolean differs = false;
        for (int k = 0; k < reading.length; k++) {
            differs |= reading[k] != letters[from + k];
        }
        if (!differs) {
            Arrays.fill(weighed, from, from + reading.length, true);
        } else if (behind < givesWay) {
            doubts.add(new Word(from, Arrays.copyOfRange(letters, from, from + reading.length), behind));
            System.arraycopy(reading, 0, letters, from, reading.length);
            Arrays.fill(weighed, from, from + reading.length, true);
        } else if (behind < givesWay * 1.7) {
            doubts.add(new Word(from, reading, behind));
        }
    }

    private void only(String allowed) {
        var reading = new int[letters.length];
        for (int i = 0; i < letters.length; i++) {
            reading[i] = best(i, allowed);
        }
        offer(0, reading, PATTERN_GIVES_WAY);
    }

    private int best(int place, String allowed) {
        int best = -1;
        for (int k = 0; k < allowed.length(); k++) {
            int c = GlyphNet.LETTERS.indexOf(allowed.charAt(k));
            if (best < 0 || ballot.score[place][c] > ballot.score[place][best]) {
                best = c;
            }
        }
        return best;
    }

    private void moneyOrNone() {
        if (letters().matches("(?i)[^0-9]*N[^0-9]*E[^0-9]*")) {
            words();
        } else {
            only(FIGURES + "$. ");
        }
    }

    private String letters() {
        return text(letters);
    }

    private void serialNumber() {
        int first = first();
        if (first < 0) {
            return;
        }
        var reading = letters.clone();
        boolean letterFirst = first + 1 < letters.length && GlyphNet.LETTERS.charAt(letters[first + 1]) == '-';
        for (int i = first; i <= last(); i++) {
            reading[i] = letterFirst && i == first ? best(i, "ONLWRMTV") : best(i, FIGURES + " -");
        }
        offer(0, reading, PATTERN_GIVES_WAY);
    }

    private int first() {
        for (int i = 0; i < letters.length; i++) {
            if (letters[i] != 0) {
                return i;
            }
        }
        return -1;
    }

    private int last() {
        for (int i = letters.length - 1; i >= 0; i--) {
            if (letters[i] != 0) {
                return i;
            }
        }
        return -1;
    }

    /** A day as clerks typed it: 5 JAN 43, 15 Sept 1945. */
    private void date() {
        int first = first();
        int last = last();
        if (first < 0) {
            return;
        }
        int[] best = null;
        double most = Double.NEGATIVE_INFINITY;
        int bestFrom = 0;
        // The first or last place may be dirt, so neighbours of the found ends are tried as well.
        for (int from = Math.max(0, first - 1); from <= Math.min(first + 1, last); from++) {
            for (int to = Math.max(from, last - 1); to <= Math.min(last + 1, letters.length - 1); to++) {
                for (int dayLength = 1; dayLength <= 2; dayLength++) {
                    for (var month : MONTHS) {
                        for (int yearLength : new int[] {2, 4}) {
                            if (dayLength + 1 + month.length() + 1 + yearLength != to - from + 1) {
                                continue;
                            }
                            var reading = day(from, dayLength, month, yearLength);
                            double sum = ends(from, to);
                            for (int k = 0; k < reading.length; k++) {
                                sum += ballot.score[from + k][reading[k]];
                            }
                            if (sum > most) {
                                most = sum;
                                best = reading;
                                bestFrom = from;
                            }
                        }
                    }
                }
            }
        }
        if (best == null) {
            words();
            return;
        }
        var whole = new int[letters.length];
        System.arraycopy(best, 0, whole, bestFrom, best.length);
        offer(0, whole, PATTERN_GIVES_WAY + 3);
    }

    /** What it costs to call everything outside these places empty. */
    private double ends(int from, int to) {
        double sum = 0;
        for (int i = 0; i < letters.length; i++) {
            if (i < from || i > to) {
                sum += ballot.score[i][0];
            }
        }
        return sum;
    }

    private int[] day(int from, int dayLength, String month, int yearLength) {
        var reading = new int[dayLength + 1 + month.length() + 1 + yearLength];
        int at = 0;
        if (dayLength == 2) {
            reading[at] = best(from, "123");
            reading[at + 1] = best(from + 1, GlyphNet.LETTERS.charAt(reading[at]) == '3' ? "01" : FIGURES);
            at += 2;
        } else {
            reading[at] = best(from, "123456789");
            at++;
        }
        at++;
        var monthLetters = cased(from + at, month);
        System.arraycopy(monthLetters, 0, reading, at, monthLetters.length);
        at += month.length() + 1;
        if (yearLength == 4) {
            reading[at] = GlyphNet.LETTERS.indexOf('1');
            reading[at + 1] = best(from + at + 1, "89");
            at += 2;
        }
        reading[at] = best(from + at, FIGURES);
        reading[at + 1] = best(from + at + 1, FIGURES);
        return reading;
    }

    /** The word in the case that the pictures speak for: all capitals, first capital, none. */
    private int[] cased(int from, String word) {
        int[] best = new int[word.length()];
        double most = Double.NEGATIVE_INFINITY;
        var lower = word.toLowerCase(Locale.ROOT);
        for (var variant : new String[] {word, word.charAt(0) + lower.substring(1), lower}) {
            double sum = 0;
            var reading = new int[word.length()];
            for (int k = 0; k < reading.length; k++) {
                reading[k] = GlyphNet.LETTERS.indexOf(variant.charAt(k));
                sum += ballot.score[from + k][reading[k]];
            }
            if (sum > most) {
                most = sum;
                best = reading;
            }
        }
        return best;
    }

    /** Word by word: known words, ordinals, figures. */
    private void words() {
        int from = 0;
        while (from < letters.length) {
            if (!partOfWord(from)) {
                from++;
                continue;
            }
            int to = from;
            while (to + 1 < letters.length && partOfWord(to + 1)) {
                to++;
            }
            word(from, to);
            from = to + 1;
        }
    }

    /** Anything but a space, and the marks that stand between words. */
    private boolean partOfWord(int place) {
        char letter = GlyphNet.LETTERS.charAt(letters[place]);
        return letter != ' ' && letter != '/' && letter != '(' && letter != ')' && letter != ';' && letter != ':';
    }

    private void word(int from, int to) {
        int length = to - from + 1;
        int figures = 0;
        int capitals = 0;
        for (int i = from; i <= to; i++) {
            char letter = GlyphNet.LETTERS.charAt(letters[i]);
            figures += Character.isDigit(letter) ? 1 : 0;
            capitals += Character.isLetter(letter) && !likeFigure(letter) ? 1 : 0;
        }
        if (figures > 0 && figures > capitals) {
            number(from, to);
            return;
        }
        // A full stop or comma at the end belongs to the sentence.
        char end = GlyphNet.LETTERS.charAt(letters[to]);
        int wordLength = (end == '.' || end == ',') && length > 2 ? length - 1 : length;
        var text = text(Arrays.copyOfRange(letters, from, from + wordLength));
        if (words.has(text)) {
            Arrays.fill(weighed, from, from + wordLength, true);
            return;
        }
        int[] best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (int shorter = 0; shorter <= length - wordLength + (wordLength == length ? 1 : 0); shorter++) {
            for (var word : words.ofLength(length - shorter)) {
                var reading = cased(from, word);
                double sum = -behind(from, reading);
                if (shorter == 1) {
                    int stop = best(to, ".,");
                    sum += ballot.score[to][stop] - ballot.score[to][letters[to]];
                    reading = Arrays.copyOf(reading, length);
                    reading[length - 1] = stop;
                }
                if (sum > most) {
                    most = sum;
                    best = reading;
                }
            }
        }
        if (best != null && length >= 2) {
            int changed = 0;
            for (int k = 0; k < best.length; k++) {
                changed += best[k] != letters[from + k] ? 1 : 0;
            }
            // A short word gives way only where one letter is in doubt.
            boolean few = changed * 3 <= length || changed == 1;
            if (few) {
                offer(from, best, WORD_GIVES_WAY * changed);
            }
        }
    }

    /** Mostly figures: 999TH, 615-365, 43, 3-16.10. */
    private void number(int from, int to) {
        int length = to - from + 1;
        var plain = new int[length];
        for (int k = 0; k < length; k++) {
            plain[k] = best(from + k, FIGURES + ".,-");
        }
        double behindPlain = behind(from, plain);
        double behindOrdinal = Double.POSITIVE_INFINITY;
        int[] ordinal = plain;
        for (var ending : new String[] {"TH", "ST", "ND", "RD", "D"}) {
            if (length > ending.length()) {
                var reading = plain.clone();
                var cased = cased(to - ending.length() + 1, ending);
                System.arraycopy(cased, 0, reading, length - ending.length(), ending.length());
                double behind = behind(from, reading);
                if (behind < behindOrdinal) {
                    behindOrdinal = behind;
                    ordinal = reading;
                }
            }
        }
        offer(from, behindOrdinal < behindPlain ? ordinal : plain, WORD_GIVES_WAY * 1.5);
    }

    private double behind(int from, int[] reading) {
        double behind = 0;
        for (int k = 0; k < reading.length; k++) {
            double lost = ballot.score[from + k][letters[from + k]] - ballot.score[from + k][reading[k]];
            // Many machines had one key for both; what the picture says between them weighs little.
            behind += alike(letters[from + k], reading[k]) ? LOOK_ALIKE * lost : lost;
        }
        return behind;
    }

    private static boolean alike(int one, int other) {
        for (var set : LOOK_ALIKES) {
            if (set.indexOf(GlyphNet.LETTERS.charAt(one)) >= 0 && set.indexOf(GlyphNet.LETTERS.charAt(other)) >= 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean likeFigure(char letter) {
        return "OoIlSBZ".indexOf(letter) >= 0;
    }
}
