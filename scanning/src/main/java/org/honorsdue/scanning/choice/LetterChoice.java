package org.honorsdue.scanning.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.honorsdue.scanning.recognition.GlyphNet;

/**
 * Chooses the letters of a line from its {@link Ballot} by what can stand in the entry. Where the kind of entry would
 * have it otherwise than the ballot alone, the difference is taken only if the ballot is nearly undecided.
 */
final class LetterChoice {
    /** How much less the pictures may speak for a known word, for each letter changed, and once for a whole date. */
    private static final double WORD_GIVES_WAY = 3.2;

    /** A longer word is the less likely to be one letter off another by chance. */
    private static final double LONGER_WORD = 0.9;

    private static final double PATTERN_GIVES_WAY = 7;

    /** What it costs to call a place dirt that stands beside a whole date: one that looks so, one that looks typed. */
    private static final double DIRT = 0.4;

    private static final double LETTER = 5;

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

    private final List<GlyphNet.Seen> seen;
    private final PageType type;
    private final double[] ink;
    private final Ballot ballot;
    private final PeriodWords words;
    private final int[] letters;
    private final boolean[] weighed;
    private final boolean[] dropped;
    private double[] dirtCosts = new double[0];
    private boolean debris;
    private final List<Word> doubts = new ArrayList<>();

    /** A run of letters that could be read in another way. */
    private record Word(int from, int[] letters, double behind) {}

    LetterChoice(Ballot ballot, PeriodWords words, List<GlyphNet.Seen> seen, PageType type, double[] ink) {
        this.seen = seen;
        this.type = type;
        this.ink = ink;
        this.ballot = ballot;
        this.words = words;
        this.letters = new int[ballot.places()];
        this.weighed = new boolean[ballot.places()];
        this.dropped = new boolean[ballot.places()];
        for (int i = 0; i < letters.length; i++) {
            letters[i] = ballot.best(i);
        }
    }

    LineChoice choose(EntryKind kind, String raw) {
        if (kind == EntryKind.WORDS || kind == EntryKind.NAMES) {
            debris(true); // elsewhere the pattern says what belongs to the entry
        }
        switch (kind) {
            case DATE -> date();
            case COUNT -> {
                debris(false);
                only(FIGURES + " ");
            }
            case MONEY -> moneyOrNone();
            case PAY -> amongOrClean(List.of("100", "200", "300"));
            case HEIGHT -> amongOrClean(HEIGHTS);
            case WEIGHT -> {
                debris(false);
                words();
            }
            case SERIAL_NUMBER -> serialNumber();
            case NAMES, WORDS -> words();
        }
        double confidence = 1;
        for (int i = 0; i < letters.length; i++) {
            if (dropped[i]) {
                continue;
            }
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

    /**
     * One of a few texts, wherever it stands in the line; all else is dirt.
     *
     * @return whether it was taken
     */
    private boolean among(List<String> options, double givesWay) {
        var best = letters;
        double least = Double.POSITIVE_INFINITY;
        for (var option : options) {
            for (int from = 0; from + option.length() <= letters.length; from++) {
                var reading = new int[option.length()];
                for (int k = 0; k < reading.length; k++) {
                    reading[k] = GlyphNet.LETTERS.indexOf(option.charAt(k));
                }
                double behind = behind(from, reading) + outside(from, from + reading.length - 1);
                if (behind < least) {
                    least = behind;
                    best = new int[letters.length];
                    System.arraycopy(reading, 0, best, from, reading.length);
                }
            }
        }
        offer(0, best, givesWay, least);
        return least < givesWay;
    }

    private void amongOrClean(List<String> options) {
        if (!among(options, PATTERN_GIVES_WAY * 1.6)) {
            debris(true);
        }
    }

    /**
     * Takes away groups of marks at either end that are no typing: the rim of a stamp, a fold, the rest of a rule. The
     * line is called doubtful for it, and the reading with them stays among the alternatives.
     *
     * @param words whether words stand here; elsewhere the pattern of the entry says what an unsure letter is
     */
    private void debris(boolean words) {
        var whole = letters.clone();
        double usual = usualInk();
        for (boolean atEnd : new boolean[] {false, true}) {
            int step = atEnd ? -1 : 1;
            int at = atEnd ? letters.length - 1 : 0;
            while (at >= 0 && at < letters.length) {
                int begun = at;
                while (within(begun) && letters[begun] == 0) {
                    begun += step;
                }
                int end = begun;
                while (within(end) && letters[end] != 0) {
                    end += step;
                }
                if (begun == end) {
                    break;
                }
                var group = group(Math.min(begun, end - step), Math.max(begun, end - step), usual);
                if (!(words ? group.foreign() : group.strange())
                        && !(words && group.unsure() && inked(end, step) >= 3)) {
                    trim(begun, step, usual);
                    break;
                }
                for (int i = begun; i != end; i += step) {
                    letters[i] = 0;
                }
                at = end;
            }
        }
        if (!Arrays.equals(whole, letters)) {
            debris = true;
            for (int i = 0; i < letters.length; i++) {
                dropped[i] = whole[i] != letters[i];
            }
            doubts.add(new Word(0, whole, 0));
        }
    }

    /** The outermost letters of the outermost group may be dirt that touches it. */
    private void trim(int from, int step, double usual) {
        for (int i = from; within(i + 2 * step) && letters[i] != 0 && letters[i + step] != 0; i += step) {
            if (!group(i, i, usual).blot()) {
                break;
            }
            letters[i] = 0;
        }
    }

    private boolean within(int place) {
        return place >= 0 && place < letters.length;
    }

    private double usualInk() {
        var inked = IntStream.range(0, letters.length)
                .filter(i -> letters[i] != 0)
                .mapToDouble(i -> ink[i])
                .sorted()
                .toArray();
        return inked.length == 0 ? 1 : Math.max(1, inked[inked.length / 2]);
    }

    /**
     * Letters without a space between them, in the mean.
     *
     * @param sure how likely the letters are
     * @param agreed how many of the engines saw the same
     * @param like how like the page's own letters they are; empty if the page has not shown these
     * @param dark their ink beside that of the line
     */
    private record Group(int letters, double sure, double agreed, OptionalDouble like, double dark) {
        /** By the measure of tuning pages: of 15,499 groups of typing 41 would be taken for dirt, of 246 of dirt 193. */
        boolean foreign() {
            if (grain()) {
                return true;
            }
            if (like.isEmpty()) {
                return agreed < 0.5 && sure < 0.95;
            }
            double own = like.getAsDouble();
            boolean unlike = own < (letters == 1 ? 0.72 : 0.78);
            return unlike && agreed <= (letters == 1 ? 0.5 : 0.67) || letters >= 3 && own < 0.68;
        }

        /** The same, for a single letter only where it is plainer; a figure may stand alone. */
        boolean strange() {
            return letters == 1 ? grain() || blot() : foreign();
        }

        /** Like no letter of the page, and no engine saw it. */
        boolean blot() {
            return agreed == 0 && (like.isPresent() ? like.getAsDouble() < 0.6 : sure < 0.6);
        }

        private boolean grain() {
            return dark < 0.3 && (agreed == 0 || like.orElse(0) < 0.7);
        }

        /** Nobody would take it for dirt. */
        boolean typed() {
            return like.orElse(0) >= 0.82 && agreed >= 0.5;
        }

        boolean unsure() {
            return sure < (letters <= 2 ? 0.5 : 0.6);
        }
    }

    private Group group(int from, int to, double usual) {
        double sure = 0;
        double agreed = 0;
        double dark = 0;
        double like = 0;
        int known = 0;
        for (int i = from; i <= to; i++) {
            sure += ballot.likelihood(i, letters[i]);
            agreed += ballot.agreement(i, letters[i]);
            dark += ink[i] / usual;
            var own = type.likeness(seen.get(i), letters[i]);
            if (own.isPresent()) {
                like += own.getAsDouble();
                known++;
            }
        }
        int count = to - from + 1;
        return new Group(
                count,
                sure / count,
                agreed / count,
                known == 0 ? OptionalDouble.empty() : OptionalDouble.of(like / known),
                dark / count);
    }

    private int inked(int from, int step) {
        int inked = 0;
        for (int i = from; within(i); i += step) {
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
        offer(from, reading, givesWay, behind(from, reading));
    }

    private void offer(int from, int[] reading, double givesWay, double behind) {
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
        if (!among(List.of("NONE", "None", "none"), PATTERN_GIVES_WAY)) {
            debris(false);
            only(FIGURES + "$. ");
        }
    }

    private void serialNumber() {
        debris(false);
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
        double least = Double.POSITIVE_INFINITY;
        // The first or last place may be dirt, and a stamp may reach into the box on either side.
        for (int from = Math.max(0, first - 1); from <= last; from++) {
            for (int dayLength = 1; dayLength <= 2; dayLength++) {
                for (var month : MONTHS) {
                    for (int yearLength : new int[] {1, 2, 4}) {
                        int to = from + dayLength + month.length() + yearLength + 1;
                        if (to > Math.min(last + 1, letters.length - 1)) {
                            continue;
                        }
                        var reading = day(from, dayLength, month, yearLength);
                        double behind = behind(from, reading) + outside(from, to);
                        if (behind < least) {
                            least = behind;
                            best = new int[letters.length];
                            System.arraycopy(reading, 0, best, from, reading.length);
                        }
                    }
                }
            }
        }
        if (best == null) {
            debris(true);
            words();
            return;
        }
        offer(0, best, PATTERN_GIVES_WAY + 3, least);
        if (least >= PATTERN_GIVES_WAY + 3) {
            debris(true);
        }
    }

    /** What it costs to call everything outside these places dirt. */
    private double outside(int from, int to) {
        double sum = 0;
        for (int i = 0; i < letters.length; i++) {
            if (i < from || i > to) {
                sum += asDirt()[i];
            }
        }
        return sum;
    }

    /** For each place what it costs to call it dirt; nothing where nothing stands. */
    private double[] asDirt() {
        if (dirtCosts.length == 0) {
            dirtCosts = new double[letters.length];
            double usual = usualInk();
            for (int begun = 0; begun < letters.length; begun++) {
                int end = begun;
                while (within(end) && letters[end] != 0) {
                    end++;
                }
                if (end > begun) {
                    var group = group(begun, end - 1, usual);
                    for (int i = begun; i < end; i++) {
                        boolean dirt = group.foreign() || group(i, i, usual).foreign();
                        double typed = group.typed() ? LETTER : LETTER / (end - begun);
                        double lost = ballot.score[i][letters[i]] - ballot.score[i][0];
                        dirtCosts[i] = Math.min(lost, dirt ? DIRT : typed);
                    }
                }
                begun = end;
            }
        }
        return dirtCosts;
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
        if (yearLength == 1) {
            reading[at] = best(from + at, FIGURES); // 1908 was typed 8 by some
            return reading;
        }
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
                offer(from, best, (WORD_GIVES_WAY + LONGER_WORD * Math.min(4, Math.max(0, length - 4))) * changed);
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
            if (letters[from + k] == 0 && reading[k] != 0) {
                lost *= 2; // no pattern puts a letter on plain paper
            }
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
